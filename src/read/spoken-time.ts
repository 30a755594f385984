/**
 * Reads a time of day as people type it in a hurry: `18:40`, `1840`, `7.30`, `730p`, `7:30 pm`,
 * `7`. Without a `p` or an `a` it is on the 24-hour clock.
 * @returns `HH:MM`, or `undefined` when it is no time of day.
 */
export function spokenTime(text: string): string | undefined {
  const typed = /^(\d{1,2}?)(?:[:.h]?(\d{2}))?\s*([ap])?\.?m?\.?$/i.exec(text.trim());
  if (!typed) return undefined;
  const half = typed[3]?.toLowerCase();
  let hour = Number(typed[1]);
  const minute = Number(typed[2] ?? 0);
  if (half && (hour < 1 || hour > 12)) return undefined;
  if (half === "p" && hour < 12) hour += 12;
  if (half === "a" && hour === 12) hour = 0;
  if (hour > 23 || minute > 59) return undefined;
  return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

/**
 * Reads a duration as people type it: `1:15`, `1h15`, `90min`, `2h`, `1.25`.
 * @returns `H:MM`, or `undefined` when it is none or not in whole minutes.
 */
export function spokenDuration(text: string): string | undefined {
  const typed = text.trim().toLowerCase();
  const clock = /^(\d{1,3})(?::|h ?)([0-5]\d)(?: ?min)?$/.exec(typed);
  if (clock) return `${Number(clock[1])}:${clock[2]}`;
  const minutes = /^(\d{1,4}) ?min$/.exec(typed);
  const hours = /^(\d{1,3})(?:\.(\d{1,2}))? ?h?$/.exec(typed);
  const total = minutes
    ? Number(minutes[1])
    : hours
      ? (Number(hours[1]) * 100 + Number((hours[2] ?? "").padEnd(2, "0"))) * 0.6
      : Number.NaN;
  if (!Number.isInteger(total) || total === 0) return undefined;
  return `${Math.floor(total / 60)}:${String(total % 60).padStart(2, "0")}`;
}
