import { addDays, type CalendarDate, type CalendarMonth, type Minutes } from "../model/calendar.ts";
import type { HoursLedger } from "./analysis.ts";

/** Hours of building in one whole calendar month; 0 for a month without an entry. */
export interface WholeMonth {
  readonly month: CalendarMonth;
  readonly minutes: Minutes;
}

/** The last whole months, at most twelve. */
export interface Pace {
  /** Oldest first, without a gap; the month of the first day and one still running are not whole. */
  readonly months: readonly WholeMonth[];
  /** Of all of them. */
  readonly minutes: Minutes;
}

/** When so much of the spread has come to its end. */
export interface Reached {
  /** Whole months from the day of judgement. */
  readonly months: number;
  /** The calendar month that this comes to. */
  readonly month: CalendarMonth;
}

/** When the build may come to the hours that its builder expects, or why nothing is said. */
export type Forecast =
  | {
      readonly kind: "refused";
      readonly why:
        | "nothing expected"
        | "already there"
        | "too few months"
        | "nothing booked"
        | "too far";
    }
  | {
      readonly kind: "forecast";
      readonly expected: Minutes;
      readonly remaining: Minutes;
      /** Of a hundred ways, ten are done by then, fifty, ninety. */
      readonly tenth: Reached;
      readonly half: Reached;
      readonly ninetieth: Reached;
    };

const monthsLooked = 12;
/** With fewer whole months nothing is said. */
export const leastMonths = 6;
/** Months; what is farther off at the mean pace is not worth a date. */
const farthest = 240;
/** Into so many parts at most is what remains divided: finer than any month is known. */
const finest = 50_000;

/** The pace of the months before a day. */
export function paceOf({ byMonth }: HoursLedger, asOf: CalendarDate): Pace {
  const [first] = byMonth.keys();
  const months: WholeMonth[] = [];
  // A month is over with its last day.
  let month = monthAfter(addDays(asOf, 1).slice(0, 7), -1);
  while (first !== undefined && month > first && months.length < monthsLooked) {
    months.unshift({ month, minutes: byMonth.get(month)?.build ?? 0 });
    month = monthAfter(month, -1);
  }
  return { months, minutes: months.reduce((sum, each) => sum + each.minutes, 0) };
}

/**
 * Looks ahead by letting the last months happen again: each month to come is one of the months of
 * the pace, any of them as likely as any other and whatever came before. All ways are counted,
 * none is drawn by lot, so that the answer is always the same. Minutes are exact, or counted in
 * fifty-thousandths of what remains where that is coarser.
 *
 * @param expected Hours of building that the builder expects in all; absent: not said.
 * @param done Hours of building to date.
 */
export function forecast(
  { months, minutes }: Pace,
  done: Minutes,
  expected: Minutes | undefined,
  asOf: CalendarDate,
): Forecast {
  const refused = (why: Extract<Forecast, { kind: "refused" }>["why"]): Forecast => ({
    kind: "refused",
    why,
  });
  if (expected === undefined) return refused("nothing expected");
  const remaining = expected - done;
  if (remaining <= 0) return refused("already there");
  if (months.length < leastMonths) return refused("too few months");
  if (minutes === 0) return refused("nothing booked");
  if (remaining > (farthest * minutes) / months.length) return refused("too far");
  const by = monthsUntil(
    months.map((each) => each.minutes),
    remaining,
    [0.1, 0.5, 0.9],
  );
  const [tenth, half, ninetieth] = by.map((count) => ({
    months: count,
    month: monthAfter(asOf.slice(0, 7), count),
  }));
  if (!tenth || !half || !ninetieth) return refused("too far");
  return { kind: "forecast", expected, remaining, tenth, half, ninetieth };
}

/** For each share, in ascending order, after how many months as many of all ways have got there. */
function monthsUntil(
  steps: readonly Minutes[],
  remaining: Minutes,
  shares: readonly number[],
): number[] {
  const unit = Math.max(steps.reduce(greatestCommonDivisor, 0), remaining / finest);
  const strides = steps.map((step) => Math.round(step / unit));
  const size = Math.ceil(remaining / unit);
  // How likely it is to stand at each sum short of the end.
  let standing = new Float64Array(size);
  standing[0] = 1;
  const found: number[] = [];
  for (let month = 1; month <= 3 * farthest && found.length < shares.length; month += 1) {
    const next = new Float64Array(size);
    let short = 0;
    for (let sum = 0; sum < size; sum += 1) {
      const chance = (standing[sum] ?? 0) / strides.length;
      if (chance === 0) continue;
      for (const stride of strides) {
        if (sum + stride >= size) continue;
        next[sum + stride] = (next[sum + stride] ?? 0) + chance;
        short += chance;
      }
    }
    standing = next;
    const there = 1 - short;
    // Sums of many small chances are not exact in the last digits.
    while (there >= (shares[found.length] ?? 2) - 1e-9) found.push(month);
  }
  return found;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

function monthAfter(month: CalendarMonth, count: number): CalendarMonth {
  const index = Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1 + count;
  return `${String(Math.floor(index / 12)).padStart(4, "0")}-${String((index % 12) + 1).padStart(2, "0")}`;
}
