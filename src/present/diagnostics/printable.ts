// C0 and C1 controls, DEL, line and paragraph separators, and the signs that turn text around
// (Unicode Standard Annex #9): a terminal would obey them instead of showing them.
const unsafe =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  /[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u2028\u2029\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]/g;

/**
 * Text that is safe to print: what a terminal would obey becomes a visible sign of the same
 * length, `␛` for escape. Tabs stay.
 */
export function printable(text: string): string {
  return text.replace(unsafe, (sign) => {
    const code = sign.charCodeAt(0);
    if (code < 0x20) return String.fromCharCode(0x2400 + code);
    return code === 0x7f ? "\u2421" : "\ufffd";
  });
}
