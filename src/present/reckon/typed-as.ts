/**
 * An input as a shell wants it, quoted where it has blanks or signs a shell would take.
 * @example typedAs("length", "6 in") // `length="6 in"`
 */
export function typedAs(name: string, value: string): string {
  return /^[\w.,:+-]+$/.test(value) ? `${name}=${value}` : `${name}="${value}"`;
}

/** The same for an input typed in one piece, `length=6 in`. */
export function quotedArgument(argument: string): string {
  const sign = argument.indexOf("=");
  return typedAs(argument.slice(0, sign), argument.slice(sign + 1));
}
