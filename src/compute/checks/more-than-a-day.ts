import type { Diagnostic } from "../../model/diagnostic.ts";
import { hoursText } from "../../model/hours-text.ts";
import type { Session } from "../../model/session.ts";
import type { Ledgers } from "../check.ts";

const usualLength = 1440;

/**
 * Reports each person whose sessions under one date add up to more than that day has: 24 hours,
 * or 23 or 25 when the clocks change. The place is the session that goes past the length.
 */
export function* moreThanADay({ build }: Ledgers): Generator<Diagnostic> {
  for (const day of build.days) {
    const minutesOf = new Map<string, number>();
    const past = new Map<string, Session>();
    for (const session of day.sessions) {
      for (const { person } of session.who) {
        const minutes = (minutesOf.get(person) ?? 0) + session.minutes;
        minutesOf.set(person, minutes);
        if (minutes > day.lengthMinutes && !past.has(person)) past.set(person, session);
      }
    }
    for (const [person, session] of past) {
      const length = hoursText(day.lengthMinutes);
      const sum = hoursText(minutesOf.get(person) ?? 0);
      yield {
        code: "more-than-a-day",
        severity: "error",
        span: session.minutesSpan,
        message: `\`${person}\` has ${sum} on ${day.date}, a day of ${length}`,
        label: `goes past ${length}`,
        notes: [
          ...(day.lengthMinutes === usualLength ? [] : ["the clocks changed on this day"]),
          `sessions of \`${person}\` on this day: ${day.sessions
            .filter(({ who }) => who.some((each) => each.person === person))
            .map(({ minutes, minutesSpan }) => `${hoursText(minutes)} (line ${minutesSpan.line})`)
            .join(", ")}`,
        ],
        help: ["correct `hours`, or `from` and `to`; hours of another day belong to its own entry"],
      };
    }
  }
}
