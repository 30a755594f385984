import type { HoursLedger } from "../../../compute/analysis.ts";
import type { Amendment } from "../../../model/amendment.ts";
import { daysBetween } from "../../../model/calendar.ts";
import { hoursText } from "../../format/hours.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** Hours to date as a line over the calendar. Its numbers stand in the table of months. */
export interface HoursChart {
  /** Corners in a frame of 1000 by 1000, for `polyline`. */
  readonly line: string;
  readonly months: readonly {
    readonly x: Percent;
    readonly label?: string;
    /** Near the right edge, where a label has to end instead of begin. */
    readonly late: boolean;
  }[];
  readonly levels: readonly { readonly y: Percent; readonly label: string }[];
  /** Where an amendment was made. */
  readonly revisions: readonly { readonly x: Percent; readonly y: Percent }[];
  /** For those who do not see it. */
  readonly summary: string;
}

/** The chart; `undefined` with fewer than two days. */
export function hoursChart(
  { toDate, byMonth, total }: HoursLedger,
  amendments: readonly Amendment[],
): HoursChart | undefined {
  const points = [...toDate];
  const first = points[0]?.[0];
  const last = points.at(-1)?.[0];
  if (first === undefined || last === undefined || first === last) return undefined;
  const start = `${first.slice(0, 7)}-01`;
  const span = daysBetween(start, last);
  const step = levelStep(total.build / 60);
  const top = Math.max(step, Math.ceil(total.build / 60 / step) * step) * 60;
  const x = (date: string) => (1000 * daysBetween(start, date)) / span;
  const y = (minutes: number) => 1000 - (1000 * minutes) / top;
  const months = [...byMonth.keys()];
  const every = Math.ceil(months.length / 4);

  let before = 0;
  const corners = [`0,1000`];
  for (const [date, { build }] of points) {
    corners.push(corner(x(date), y(before)), corner(x(date), y(build)));
    before = build;
  }
  return {
    line: corners.join(" "),
    months: months.map((month, index) => ({
      x: percent(x(`${month}-01`) / 10),
      ...(index % every === 0 ? { label: month } : {}),
      late: x(`${month}-01`) > 930,
    })),
    levels: Array.from({ length: top / 60 / step + 1 }, (_, index) => ({
      y: percent(100 - (100 * index * step * 60) / top),
      label: String(index * step),
    })),
    revisions: [...new Set(amendments.map(({ date }) => date))].map((date) => ({
      x: percent(x(date) / 10),
      y: percent(y(toDate.get(date)?.build ?? 0) / 10),
    })),
    summary: `Hours to date from ${first} to ${last}, rising to ${hoursText(total.build)}.`,
  };
}

// 1, 2 or 5 times a power of ten, for about four levels.
function levelStep(hours: number): number {
  const rough = Math.max(1, hours / 4);
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * ([1, 2, 5, 10].find((each) => each * power >= rough) ?? 10);
}

function corner(x: number, y: number): string {
  return `${Math.round(x)},${Math.round(y)}`;
}
