import type { HoursLine } from "../../../compute/analysis.ts";
import { monthOf } from "../../../model/calendar.ts";
import { monthText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Mention } from "../page.ts";

/** The days of one month on which something was booked, with the hours of each. */
export interface BookedMonth {
  readonly month: string;
  readonly hours: string;
  /** The day of the month, leading to its sheet where there is one. */
  readonly days: readonly { readonly day: Mention; readonly hours: string }[];
}

/**
 * Hours of building by day and month, oldest first. The days add up to the month, the months
 * to the whole; study and shop are left out.
 */
export function bookedMonths(links: Links, lines: readonly HoursLine[]): BookedMonth[] {
  const byDate = new Map<string, number>();
  for (const { date, minutes, apart } of lines) {
    if (!apart) byDate.set(date, (byDate.get(date) ?? 0) + minutes);
  }
  const months = new Map<string, { minutes: number; days: [date: string, minutes: number][] }>();
  for (const [date, minutes] of byDate) {
    const month = months.get(monthOf(date)) ?? { minutes: 0, days: [] };
    month.minutes += minutes;
    month.days.push([date, minutes]);
    months.set(monthOf(date), month);
  }
  return [...months].map(([month, { minutes, days }]) => ({
    month: monthText(month),
    hours: hoursText(minutes),
    days: days.map(([date, booked]) => ({
      day: { ...links.day(date), text: String(Number(date.slice(8))) },
      hours: hoursText(booked),
    })),
  }));
}
