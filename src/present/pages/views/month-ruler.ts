import type { CalendarMonth } from "../../../model/calendar.ts";
import { daysText, monthText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Link } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** A month as a ruler: one tick per day, as tall as its hours. */
export interface MonthRuler {
  readonly month: Link;
  readonly hours: string;
  /** `12 days`. */
  readonly days: string;
  /** The ticks as one path in a frame of 310 by 100; the longest day of the record is as tall. */
  readonly ticks: string;
}

/** The months of a record, newest first. */
export function monthRulers(record: RecordIndex, links: Links): MonthRuler[] {
  const { hours } = record.analysis;
  return [...record.daysByMonth]
    .map(([month, days]) => ({
      month: { text: monthText(month), href: links.to(record.addresses.month(month)) },
      hours: hoursText(hours.byMonth.get(month)?.build ?? 0),
      days: daysText(days.length),
      ticks: days
        .map(({ date }) => {
          const x = Math.round(((Number(date.slice(8)) - 0.5) / lengthOf(month)) * 310);
          const height = (100 * (hours.byDate.get(date)?.build ?? 0)) / record.longestDay;
          return `M${x} 100v-${Math.max(8, Math.round(height))}`;
        })
        .join(""),
    }))
    .reverse();
}

/** How many days a month has. */
export function lengthOf(month: CalendarMonth): number {
  return new Date(Date.UTC(Number(month.slice(0, 4)), Number(month.slice(5)), 0)).getUTCDate();
}
