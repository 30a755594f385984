import Fraction from "fraction.js";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

/** A number found in a text. */
export interface Amount {
  readonly ok: true;
  readonly amount: Fraction;
  /** Where the number ends (exclusive). */
  readonly end: number;
}

const sign = "[-−+]?";
const decimal = "(?:\\d+\\.\\d+|\\.\\d+|\\d+)";
// One sign for a fraction, as phones and word processors put in place of 1/2.
const signs: Readonly<Record<string, readonly [over: bigint, under: bigint]>> = {
  "½": [1n, 2n],
  "⅓": [1n, 3n],
  "⅔": [2n, 3n],
  "¼": [1n, 4n],
  "¾": [3n, 4n],
  "⅕": [1n, 5n],
  "⅖": [2n, 5n],
  "⅗": [3n, 5n],
  "⅘": [4n, 5n],
  "⅙": [1n, 6n],
  "⅚": [5n, 6n],
  "⅛": [1n, 8n],
  "⅜": [3n, 8n],
  "⅝": [5n, 8n],
  "⅞": [7n, 8n],
};
const fractionSign = `[${Object.keys(signs).join("")}]`;
const number = new RegExp(
  `(${sign})\\s*(?:(?:(?<full>\\d+)(?:\\s*|-))?(?<one>${fractionSign})|(\\d+)(?:\\s+|-)(\\d+)\\s*[/⁄]\\s*(\\d+)|(\\d+)\\s*[/⁄]\\s*(\\d+)|(${decimal}))`,
  "uy",
);
// What turns a number into something else when it follows without an operator.
const grouped = /,(?=\d)|[\s_'’](?=\d{3}(?!\d|\s*[/⁄]))/uy;
const wholeGroups = /^[-−+]?\s*\d{1,3}(?:[,\s_'’]\d{3})+(?:\.\d+)?/u;
const exponent = /[eE][-+]?\d+/uy;
const longest = 60;

/**
 * Reads the number that starts at a place: `0.1250`, `.125`, `3/32`, `1 3/16`, `1-3/16`, `1½`,
 * with a minus of either kind. Decimals are kept exactly.
 * @returns `undefined` when no number starts there; a fault for decimal commas, thousands
 *   separators, powers of ten and fractions that cannot be.
 */
export function amountAt(text: string, offset: number): Amount | SyntaxFault | undefined {
  number.lastIndex = offset;
  const match = number.exec(text);
  if (!match) return undefined;
  const [typed, minus, , , whole, over, under, numerator, denominator, plain] = match;
  const end = offset + typed.length;

  const misread = misreadAt(text, offset, end);
  if (misread) return misread;
  if (typed.length > longest)
    return syntaxFault(`a number of at most ${longest} characters`, offset, typed.length);

  const single = signs[match.groups?.one ?? ""];
  if (single) {
    const size = new Fraction(...single).add(new Fraction(BigInt(match.groups?.full ?? 0), 1n));
    return { ok: true, amount: isMinus(minus) ? size.neg() : size, end };
  }
  const top = over ?? numerator;
  const bottom = under ?? denominator;
  if (top !== undefined && bottom !== undefined) {
    if (/^0+$/.test(bottom))
      return syntaxFault(
        "a fraction with something other than zero below the line",
        offset,
        typed.length,
      );
    if (whole !== undefined && BigInt(top) >= BigInt(bottom))
      return syntaxFault(
        "a fraction below one behind the whole number",
        offset,
        typed.length,
        "write a mixed number as in `1 3/16 in`",
      );
  }
  const size =
    top !== undefined && bottom !== undefined
      ? new Fraction(BigInt(top), BigInt(bottom)).add(new Fraction(BigInt(whole ?? 0), 1n))
      : new Fraction(plain?.startsWith(".") ? `0${plain}` : (plain ?? "0"));
  return { ok: true, amount: isMinus(minus) ? size.neg() : size, end };
}

function isMinus(sign: string | undefined): boolean {
  return sign === "-" || sign === "−";
}

function misreadAt(text: string, offset: number, end: number): SyntaxFault | undefined {
  exponent.lastIndex = end;
  const power = exponent.exec(text);
  if (power)
    return syntaxFault(
      "a number written out",
      offset,
      end + power[0].length - offset,
      "write all its digits; powers of ten are not read",
    );
  grouped.lastIndex = end;
  if (!grouped.test(text)) return undefined;

  const rest = text.slice(offset);
  const groups = wholeGroups.exec(rest)?.[0];
  const tail = /^[\d.,_'’]+/u.exec(text.slice(end))?.[0] ?? "";
  const typed = groups && groups.length > end - offset ? groups : text.slice(offset, end) + tail;
  const behind = rest.slice(typed.length).trim();
  const written = (value: string) => `\`${[value, behind].filter(Boolean).join(" ")}\``;
  if (/\.\d+,/.test(typed))
    return syntaxFault(
      "one decimal point and no comma",
      offset,
      typed.length,
      "write the digits with one decimal point and nothing else between them",
    );
  const together = typed.replace(/[,\s_'’]/gu, "");
  if (!typed.includes(",") || (typed.match(/,/g) ?? []).length > 1 || typed.includes("."))
    return syntaxFault(
      "a number without thousands separators",
      offset,
      typed.length,
      `write ${written(together)}`,
    );
  const point = typed.replace(",", ".");
  return syntaxFault(
    "a decimal point, not a comma",
    offset,
    typed.length,
    groups && !/^[-−+]?0/.test(typed)
      ? `write ${written(together)} for thousands, or ${written(point)} for a decimal`
      : `write ${written(point)}`,
  );
}
