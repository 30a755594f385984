import type { HoursLine } from "../../../compute/analysis.ts";
import { monthOf } from "../../../model/calendar.ts";
import type { Session } from "../../../model/session.ts";
import { monthText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** The days of one month on which something was booked, with the hours of each session. */
export interface BookedMonth {
  readonly month: string;
  readonly hours: string;
  readonly days: readonly BookedDay[];
}

/** The sessions of one day, as many minutes of each as are counted here. */
export interface BookedDay {
  /** Of the month. */
  readonly day: string;
  /** Hours, each leading to the session's row on that sheet. */
  readonly sessions: readonly Mention[];
}

/**
 * Hours by month, day and session, oldest first. The sessions add up to the month, the months to
 * the whole.
 *
 * @param lines By date; those of one session next to each other.
 * @param apart Which of them count: those of study and shop, or the others.
 */
export function bookedMonths(
  record: RecordIndex,
  links: Links,
  lines: readonly HoursLine[],
  apart: boolean,
): BookedMonth[] {
  const bySession = new Map<Session, number>();
  for (const line of lines) {
    if (line.apart !== apart) continue;
    bySession.set(line.session, (bySession.get(line.session) ?? 0) + line.minutes);
  }
  const months = new Map<string, { minutes: number; days: Map<string, Mention[]> }>();
  for (const [session, minutes] of bySession) {
    const { date } = session;
    const month = months.get(monthOf(date)) ?? { minutes: 0, days: new Map() };
    month.minutes += minutes;
    const day = month.days.get(date) ?? [];
    const { href } = links.day(date, record.anchorOfSession.get(session));
    day.push({ text: hoursText(minutes), ...(href === undefined ? {} : { href }) });
    month.days.set(date, day);
    months.set(monthOf(date), month);
  }
  return [...months].map(([month, { minutes, days }]) => ({
    month: monthText(month),
    hours: hoursText(minutes),
    days: [...days].map(([date, sessions]) => ({
      day: String(Number(date.slice(8))),
      sessions,
    })),
  }));
}
