import type { Analysis } from "../../compute/analysis.ts";
import { type CalendarDate, daysBetween, monthOf } from "../../model/calendar.ts";
import type { Attendance, Session } from "../../model/session.ts";
import { dateText, monthText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";

/** What an evening's questions can be answered with before they are asked. */
export interface EveningOffer {
  /** The last session of the newest day before. */
  readonly last?: Session;
  readonly people: readonly string[];
  /** What that day left to do. */
  readonly next: readonly string[];
  /** `last entry 9 days ago`; absent when it was yesterday or there is none. */
  readonly gap?: string;
}

/** What can be offered for an entry of a date, from the newest day before it. */
export function eveningOffer({ build }: Analysis, date: CalendarDate): EveningOffer {
  const before = build.days.filter((day) => day.date < date);
  const newest = before.at(-1);
  const last = before.findLast((day) => day.sessions.length > 0)?.sessions.at(-1);
  const builders = [...build.people.values()].filter(({ role }) => role === "builder");
  const gap = newest ? daysBetween(newest.date, date) : 0;
  return {
    ...(last ? { last } : {}),
    people: last?.who.map(({ person }: Attendance) => person) ?? builders.map(({ id }) => id),
    next: newest?.next ?? [],
    ...(gap > 1 ? { gap: `last entry ${gap} days ago` } : {}),
  };
}

/**
 * What an evening gives back once the entry is written: the hours of the day, of its month and of
 * the whole build, what is still curing, and what comes next.
 * @returns One to a few lines.
 */
export function eveningThanks({ build, hours, cures }: Analysis, date: CalendarDate): string[] {
  const month = monthOf(date);
  const ofDay = hours.byDate.get(date) ?? { build: 0, apart: 0 };
  const ofMonth = hours.byMonth.get(month)?.build ?? 0;
  const next = build.days.find((day) => day.date === date)?.next[0];
  const apart = ofDay.apart > 0 ? ` (and ${hoursText(ofDay.apart)} h of study and shop)` : "";
  const waiting = cures
    .filter(({ over }) => !over)
    .map(({ cure }) => `${cure.step} may be worked on from ${cure.ready.local}`);
  return [
    `${hoursText(ofDay.build)} h on ${dateText(date)}${apart}, ${hoursText(ofMonth)} h in ${monthText(month)}, ${hoursText(hours.total.build)} h in all`,
    ...waiting,
    ...(next ? [`next: ${next}`] : []),
  ];
}
