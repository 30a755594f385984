import type { CalendarMonth } from "../../../model/calendar.ts";
import { daysText, monthText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Link } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** A month as a ruler: one tick per day, as tall as its hours. */
export interface MonthRuler {
  readonly month: Link;
  readonly hours: string;
  /** `12 days`. */
  readonly days: string;
  /** `top` is where the tick begins, from the upper edge; it ends on the baseline. */
  readonly ticks: readonly { readonly x: Percent; readonly top: Percent }[];
}

/** The months of a record, newest first. */
export function monthRulers(record: RecordIndex, links: Links): MonthRuler[] {
  const { hours } = record.analysis;
  return [...record.daysByMonth]
    .map(([month, days]) => ({
      month: { text: monthText(month), href: links.to(record.addresses.month(month)) },
      hours: hoursText(hours.byMonth.get(month)?.build ?? 0),
      days: daysText(days.length),
      ticks: days.map(({ date }) => ({
        x: percent(((Number(date.slice(8)) - 0.5) / lengthOf(month)) * 100),
        top: percent(
          Math.min(92, 100 - (100 * (hours.byDate.get(date)?.build ?? 0)) / record.longestDay),
        ),
      })),
    }))
    .reverse();
}

/** How many days a month has. */
export function lengthOf(month: CalendarMonth): number {
  return new Date(Date.UTC(Number(month.slice(0, 4)), Number(month.slice(5)), 0)).getUTCDate();
}
