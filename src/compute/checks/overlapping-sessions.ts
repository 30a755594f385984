import type { Moment } from "../../model/calendar.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Session } from "../../model/session.ts";
import type { Ledgers } from "../check.ts";
import { sessionText } from "../session-text.ts";

interface Interval {
  readonly session: Session;
  readonly from: Moment;
  readonly to: Moment;
}

/**
 * Reports each session that begins before an earlier one of the same person is over. Ends are
 * exclusive: one may end at the minute in which the next begins. Sessions with hours alone
 * have no place on the clock and are left to `more-than-a-day`.
 */
export function* overlappingSessions({ hours }: Ledgers): Generator<Diagnostic> {
  const byPerson = new Map<string, Interval[]>();
  for (const { person, session } of hours.lines) {
    const { from, to } = session;
    if (!from || !to) continue;
    const own = byPerson.get(person);
    if (own) own.push({ session, from, to });
    else byPerson.set(person, [{ session, from, to }]);
  }

  const people = new Map<Session, Map<Session, string[]>>();
  for (const [person, intervals] of byPerson) {
    intervals.sort((a, b) => a.from.epochMinutes - b.from.epochMinutes);
    let longest: Interval | undefined;
    for (const interval of intervals) {
      const running = longest;
      if (!running || interval.to.epochMinutes > running.to.epochMinutes) longest = interval;
      if (!running || interval.from.epochMinutes >= running.to.epochMinutes) continue;
      const others = people.get(interval.session) ?? new Map<Session, string[]>();
      people.set(interval.session, others);
      others.set(running.session, [...(others.get(running.session) ?? []), person]);
    }
  }

  for (const [later, others] of people) {
    for (const [earlier, who] of others) {
      const names = who.map((person) => `\`${person}\``).join(" and ");
      yield {
        code: "overlapping-sessions",
        severity: "error",
        span: later.minutesSpan,
        message: `${names} cannot be at two sessions at once: ${sessionText(later)} begins before ${sessionText(earlier)} is over`,
        label: "begins too early",
        notes: [`the other session: ${placeText(earlier.minutesSpan)}`],
        help: [
          "correct `from` or `to` of one of them, or take the person out of `who`",
          "for work done side by side, split the time between the two",
        ],
      };
    }
  }
}
