/**
 * The field of an amendment in words.
 * @example fieldText("sessions[2].hours") // "session 2, hours"
 */
export function fieldText(field: string): string {
  return field
    .split(".")
    .map((part) => {
      const [, list, number] = /^([a-z-]+)\[(\d+)\]$/.exec(part) ?? [];
      const words = (list ?? part).replaceAll("-", " ");
      return number === undefined ? words : `${oneOf(words)} ${number}`;
    })
    .join(", ");
}

function oneOf(many: string): string {
  return many.replace(/ies$/, "y").replace(/s$/, "");
}
