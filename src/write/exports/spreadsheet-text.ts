// Characters that make a spreadsheet take a cell for a formula, in their plain and full-width
// forms (OWASP ASVS 1.2.10), and the line feed that some programs skip.
const beginsFormula = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;

const month = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";

// What spreadsheets turn into a number, a date or a time as they open a file: `0047` loses its
// zeros, `1/8` and `3-16` become days, `10e5` a million, `1 3/16` a decimal, `MAR-14` a day.
const turned: readonly RegExp[] = [
  /^[($€£¥]?\.?\d[\d\s.,:/\-()$€£¥%]*$/,
  /^[($€£¥]?[\d.,]+\s*e\s*[+-]?\d+\)?$/i,
  /^\d[\d:.\s]*(?:am|pm|a|p)$/i,
  new RegExp(`^\\d{1,4}[\\s\\-/.,]*${month}[\\s\\-/.,\\d]*$`, "i"),
  new RegExp(`^${month}[\\s\\-/.,]*\\d[\\s\\-/.,\\d]*$`, "i"),
  /^(?:true|false)$/i,
];

/**
 * Text made safe for a spreadsheet: an apostrophe goes before anything that one would run as
 * a formula or turn into a number, a date or a time. Other text stays as it is. Text that
 * begins with an apostrophe gets another, so that taking one off gives back the text.
 *
 * @example spreadsheetText("1/8") // "'1/8"
 */
export function spreadsheetText(text: string): string {
  const plain = text.normalize("NFKC").trim();
  const risky =
    text.startsWith("'") ||
    beginsFormula.test(text) ||
    beginsFormula.test(plain) ||
    turned.some((pattern) => pattern.test(plain));
  return risky ? `'${text}` : text;
}
