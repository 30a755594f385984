import Fraction from "fraction.js";
import type { CalendarSpan } from "../model/calendar-span.ts";
import { amountAt } from "./amount-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

export type ParsedCalendarSpan = { readonly ok: true; readonly span: CalendarSpan } | SyntaxFault;

const names: readonly (readonly [pattern: RegExp, of: CalendarSpan["of"], each: number])[] = [
  [/^(?:d|days?)$/iu, "days", 1],
  [/^(?:wk|weeks?)$/iu, "days", 7],
  [/^(?:mo|mos|mth|months?)$/iu, "months", 1],
  [/^(?:y|yr|yrs|years?)$/iu, "months", 12],
];
const advice = "write it as the maker states it, as in `9 months`, `180 days` or `1 year`";

/**
 * Reads a stretch of the calendar: `9 months`, `180 days`, `6 weeks`, `1 1/2 years`.
 * @example parseCalendarSpan("1 year") // { ok: true, span: { count: 12, of: "months", … } }
 */
export function parseCalendarSpan(text: string): ParsedCalendarSpan {
  const start = text.length - text.trimStart().length;
  const amount = amountAt(text, start);
  if (!amount)
    return syntaxFault("a number of days, weeks, months or years", 0, text.length, advice);
  if (!amount.ok) return amount;
  if (amount.amount.lte(0))
    return syntaxFault("a number above zero", start, amount.end - start, advice);
  const name = text.slice(amount.end).trim();
  const found = names.find(([pattern]) => pattern.test(name));
  if (!found)
    return syntaxFault(
      "`days`, `weeks`, `months` or `years`",
      name ? text.indexOf(name, amount.end) : start,
      name.length || amount.end - start,
      advice,
    );
  const [, of, each] = found;
  return {
    ok: true,
    span: { typed: text.trim(), count: amount.amount.mul(new Fraction(each)), of },
  };
}
