import type { JudgedReading } from "../../../compute/analysis.ts";
import { outcomeOf } from "../../../compute/outcome.ts";
import type { Amendment } from "../../../model/amendment.ts";
import {
  addDays,
  type CalendarDate,
  type CalendarMonth,
  daysBetween,
  monthOf,
} from "../../../model/calendar.ts";
import { inBaseUnits, type Quantity } from "../../../model/quantity.ts";
import type { Limits } from "../../../model/tolerance.ts";
import { dateText } from "../../format/dates.ts";
import { computedText } from "../../format/quantity.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** One value on the chart. */
export interface RunMark {
  readonly x: Percent;
  readonly y: Percent;
  readonly out: boolean;
  /** A later reading replaces it. */
  readonly replaced: boolean;
}

/** A value that stood in a reading before it was amended. */
export interface StruckMark {
  readonly x: Percent;
  readonly y: Percent;
  /** It lies beyond the chart and is drawn at its edge: a slip of the pen may be far off. */
  readonly beyond: boolean;
}

/** Values against one rule over the calendar. Their numbers stand in the table of readings. */
export interface RunChart {
  /** Where values are allowed, over the whole width; absent where that changes. */
  readonly band?: { readonly y: Percent; readonly height: Percent };
  /** Where values were allowed on a day, where the limits change from reading to reading. */
  readonly spans: readonly { readonly x: Percent; readonly y: Percent; readonly height: Percent }[];
  /** The limits, where all readings have the same. */
  readonly limits: readonly {
    readonly y: Percent;
    readonly text: string;
    readonly above: boolean;
  }[];
  readonly marks: readonly RunMark[];
  /** Values that were amended since, at the day of their reading. */
  readonly struck: readonly StruckMark[];
  readonly months: readonly {
    readonly x: Percent;
    readonly label?: string;
  }[];
  /** For those who do not see it. */
  readonly summary: string;
}

interface Point {
  readonly date: CalendarDate;
  readonly value: number;
  readonly quantity: Quantity;
  readonly out: boolean;
  readonly replaced: boolean;
}

/** Free height above and below what is drawn, as a part of it. */
const margin = 0.12;

/**
 * The chart of all readings against one rule.
 * @param readings Oldest first.
 * @param amended Corrections by the id of the reading corrected.
 * @returns `undefined` when they are of fewer than two days: a strip then shows as much.
 */
export function runChart(
  title: string,
  readings: readonly JudgedReading[],
  amended: ReadonlyMap<string, readonly Amendment[]> = new Map(),
): RunChart | undefined {
  const judged = readings.filter(({ values }) => values.length > 0);
  const points = judged.flatMap(pointsOf);
  const [first, last] = [judged[0]?.reading.date, judged.at(-1)?.reading.date];
  if (first === undefined || last === undefined || first === last) return undefined;
  const ends = judged.flatMap(({ limits }) => endsOf(limits));
  const standing = [...points.map(({ value }) => value), ...ends];
  const before = judged.flatMap((each) => beforeOf(each, amended));
  const [least, most] = [Math.min(...standing), Math.max(...standing)];
  const near = before.map(({ value }) => value).filter((value) => isNear(value, least, most));
  const place = scaleOf([...standing, ...near]);
  const start = `${monthOf(first)}-01`;
  const days = Math.max(1, daysBetween(start, last));
  const x = (date: CalendarDate) => percent(2 + (96 * daysBetween(start, date)) / days);
  const common = commonLimits(judged);

  return {
    ...(common ? { band: spanOf(common, place) } : {}),
    spans: common
      ? []
      : judged
          .filter(({ limits }) => endsOf(limits).length > 0)
          .map(({ reading, limits }) => ({ x: x(reading.date), ...spanOf(limits, place) })),
    limits: common ? limitLines(common, place) : [],
    marks: points.map(({ date, value, out, replaced }) => ({
      x: x(date),
      y: percent(place(value)),
      out,
      replaced,
    })),
    struck: before.map(({ date, value }) => {
      const y = place(value);
      return { x: x(date), y: percent(Math.min(98, Math.max(2, y))), beyond: y < 0 || y > 100 };
    }),
    months: monthMarks(first, last, (date) => daysBetween(start, date) / days).map(
      ({ month, labelled }) => ({ x: x(`${month}-01`), ...(labelled ? { label: month } : {}) }),
    ),
    summary: summaryOf(title, points, before.length, first, last),
  };
}

function pointsOf(judged: JudgedReading): Point[] {
  const { reading, values } = judged;
  const replaced = outcomeOf(judged) === "replaced";
  return values.map(({ value, verdict }) => ({
    date: reading.date,
    value: position(value.quantity),
    quantity: value.quantity,
    out: verdict.kind !== "within",
    replaced,
  }));
}

// The values that stood in a reading before its corrections and stand there no longer. One of
// another kind, such as a torque typed as a length, has no place on this chart.
function beforeOf(
  { reading, values }: JudgedReading,
  amended: ReadonlyMap<string, readonly Amendment[]>,
): { readonly date: CalendarDate; readonly value: number }[] {
  const dimension = values[0]?.value.quantity.unit.dimension;
  const now = new Set(values.map(({ value }) => position(value.quantity)));
  return (amended.get(reading.id) ?? [])
    .flatMap((amendment) => amendment.reading?.values ?? [])
    .filter(({ unit }) => unit.dimension === dimension)
    .map((quantity) => ({ date: reading.date, value: position(quantity) }))
    .filter(({ value }) => !now.has(value));
}

// Within as much again as the chart holds without it.
function isNear(value: number, least: number, most: number): boolean {
  const room = most - least || Math.abs(most) || 1;
  return value >= least - room && value <= most + room;
}

// The limits that all readings share, if they do.
function commonLimits(judged: readonly JudgedReading[]): Limits | undefined {
  const [first, ...rest] = judged;
  if (!first || endsOf(first.limits).length === 0) return undefined;
  const same = (a: Quantity | undefined, b: Quantity | undefined) =>
    a && b ? inBaseUnits(a).equals(inBaseUnits(b)) : a === b;
  const all = rest.every(
    ({ limits }) =>
      same(limits.lower, first.limits.lower) && same(limits.upper, first.limits.upper),
  );
  return all ? first.limits : undefined;
}

function limitLines({ lower, upper }: Limits, place: (value: number) => number) {
  return [
    ...(upper
      ? [{ y: percent(place(position(upper))), text: computedText(upper), above: true }]
      : []),
    ...(lower
      ? [{ y: percent(place(position(lower))), text: computedText(lower), above: false }]
      : []),
  ];
}

function spanOf({ lower, upper }: Limits, place: (value: number) => number) {
  const top = upper ? place(position(upper)) : 0;
  const bottom = lower ? place(position(lower)) : 100;
  return { y: percent(top), height: percent(bottom - top) };
}

// Downwards, as screens count: the highest value lies near 0.
function scaleOf(values: readonly number[]): (value: number) => number {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = (most - least || Math.abs(most) || 1) * margin;
  const [low, high] = [least - room, most + room];
  return (value) => (100 * (high - value)) / (high - low);
}

// Labels keep a distance that a narrow screen has room for, and none runs out at the right.
function monthMarks(first: CalendarDate, last: CalendarDate, at: (date: CalendarDate) => number) {
  const marks: { month: CalendarMonth; labelled: boolean }[] = [];
  let free = 0;
  for (let month = monthOf(first); month <= monthOf(last); month = monthAfter(month)) {
    const place = at(`${month}-01`);
    const labelled = place >= free && place <= 0.8;
    if (labelled) free = place + 0.25;
    marks.push({ month, labelled });
  }
  return marks;
}

// A month has no more than 31 days, and the first of the next is within 31 days of the first.
function monthAfter(month: CalendarMonth): CalendarMonth {
  return monthOf(addDays(`${month}-01`, 31));
}

function summaryOf(
  title: string,
  points: readonly Point[],
  amended: number,
  first: CalendarDate,
  last: CalendarDate,
): string {
  const byValue = points.toSorted((a, b) => a.value - b.value);
  const [least, most] = [byValue[0], byValue.at(-1)];
  const out = points.filter((point) => point.out && !point.replaced).length;
  const range =
    least && most ? `, from ${computedText(least.quantity)} to ${computedText(most.quantity)}` : "";
  return `${title}: ${points.length} values from ${dateText(first)} to ${dateText(last)}${range}; ${out === 0 ? "none" : out} outside the limits${amended === 0 ? "" : `; ${amended} amended since, drawn as ${amended === 1 ? "a cross" : "crosses"}`}.`;
}

function endsOf({ lower, upper }: Limits): number[] {
  return [lower, upper].filter((end) => end !== undefined).map(position);
}

// Only for drawing: comparisons are made exactly, elsewhere.
function position({ amount, unit }: Quantity): number {
  return amount.mul(unit.factor).add(unit.offset).valueOf();
}
