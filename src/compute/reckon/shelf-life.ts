import Fraction from "fraction.js";
import { addDays, type CalendarDate, daysBetween } from "../../model/calendar.ts";
import type { CalendarSpan } from "../../model/calendar-span.ts";
import { governs } from "./governs.ts";
import { answered, refused, sum, textPart } from "./sum.ts";

const mostPasses = 20;
const lastYear = 9999;

/**
 * When a lot expires, and how far each passed update test carries it: half of the original
 * shelf life each time. USAF TO 1-1-700, par. 12.8.
 */
export const shelfLifeSum = sum({
  name: "shelf-life",
  about: "expiry of a lot, and its extension for each update test passed",
  inputs: {
    made: {
      kind: "date",
      about: "day of manufacture",
      required: true,
      example: "2025-03-01",
    },
    life: {
      kind: "calendar span",
      about: "original shelf life",
      required: true,
      example: "9 months",
    },
    passes: {
      kind: "number",
      range: "zero or more",
      whole: true,
      about: "update tests passed; none if not given",
      example: "1",
    },
  },
  example: ["made=2025-03-01", "life=9 months", "passes=2"],
  reckon({ made, life, passes }) {
    const tests = Number((passes ?? new Fraction(0)).valueOf());
    if (tests > mostPasses)
      return refused({
        input: "passes",
        message: `${tests} passes are more than this sum looks ahead`,
        help: [`give at most ${mostPasses}`],
      });
    const expiries = Array.from({ length: tests + 1 }, (_, pass) =>
      expiryAfter(made, life, new Fraction(pass, 2).add(1)),
    );
    const last = expiries.at(-1);
    if (!last || expiries.some((expiry) => expiry === undefined))
      return refused({
        input: "life",
        message: `\`${life.typed}\` reaches beyond the year ${lastYear}`,
        help: ["give the shelf life as the maker states it, as in `9 months`"],
      });
    return answered({
      parts: [
        textPart("expiry", "good up to and including", last),
        {
          name: "expiries",
          title: "original expiry, then after each pass",
          value: { kind: "texts", texts: expiries.filter((expiry) => expiry !== undefined) },
        },
      ],
      formula:
        "expiry = made + life × (1 + passes / 2), by the calendar; half a month is half of its days, rounded down",
      source: "USAF TO 1-1-700, par. 12.8: one half of the original shelf life for each pass",
      cautions: [
        "an expired lot is not used before it has passed the update test; one that fails is never used",
        "the life holds for the unopened container stored as the maker says; TO 1-1-700 has 80 °F as the most",
        "all dates are counted from the day of manufacture, so that no rounding adds up",
        "the expiry printed on the container wins over this",
        governs,
      ],
    });
  },
});

/**
 * A date moved by a multiple of a calendar span. Months keep the day of the month, or take the
 * last day of a shorter one; a part of a month is that part of its days, rounded down.
 * @returns `undefined` beyond the year 9999.
 * @example expiryAfter("2025-03-01", nineMonths, new Fraction(3, 2)) // "2026-04-16"
 */
export function expiryAfter(
  made: CalendarDate,
  { count, of }: CalendarSpan,
  times: Fraction,
): CalendarDate | undefined {
  const total = count.mul(times);
  if (total.gt(lastYear * 366)) return undefined;
  if (of === "days") return within(() => addDays(made, Number(total.floor().valueOf())));
  const whole = total.floor();
  const start = addMonths(made, Number(whole.valueOf()));
  const end = addMonths(made, Number(whole.valueOf()) + 1);
  if (!start || !end) return undefined;
  const part = total.sub(whole).mul(daysBetween(start, end)).floor();
  return within(() => addDays(start, Number(part.valueOf())));
}

function addMonths(date: CalendarDate, months: number): CalendarDate | undefined {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number];
  const index = year * 12 + (month - 1) + months;
  const first = `${text(Math.floor(index / 12), 4)}-${text((index % 12) + 1, 2)}-01`;
  const next = `${text(Math.floor((index + 1) / 12), 4)}-${text(((index + 1) % 12) + 1, 2)}-01`;
  if (next.length > 10) return undefined;
  return addDays(first, Math.min(day, daysBetween(first, next)) - 1);
}

// Beyond the year 9999 the dates of this program, four digits long, come to an end.
function within(compute: () => CalendarDate): CalendarDate | undefined {
  const date = compute();
  return /^\d{4}-/.test(date) ? date : undefined;
}

function text(number: number, digits: number): string {
  return String(number).padStart(digits, "0");
}
