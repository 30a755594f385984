import type { Registers } from "../model/build.ts";
import type { CalendarDate } from "../model/calendar.ts";
import type { Day } from "../model/day.ts";
import type { Span } from "../model/diagnostic.ts";
import type { Squawk } from "../model/squawk.ts";
import type { Faults } from "./faults.ts";
import { joinReadings } from "./join-readings.ts";
import { nearestName } from "./nearest-name.ts";
import type { LaterWords } from "./read-day.ts";
import { given } from "./shape.ts";

/** A day and what it says of earlier ones. */
export interface ReadDay {
  readonly day: Day;
  readonly later: LaterWords;
}

/**
 * Joins what days say of each other: dispositions with their deviations, fixes with their
 * squawks, and every name of a reading, hold or deviation with the one it means.
 * @param days By date, oldest first.
 */
export function joinDays(days: readonly ReadDay[], registers: Registers, faults: Faults): Day[] {
  const deviations = declared(days, (day) => day.deviations, "deviation", faults);
  const squawks = declared(days, (day) => day.squawks, "squawk", faults);
  const readings = declared(days, (day) => day.readings, "reading", faults);
  const holds = declared(days, (day) => day.holds, "hold", faults);

  for (const { day, later } of days) {
    for (const { deviation: name, disposition, ...typed } of later.dispositions) {
      const known = named(name.text, name.span, "deviation", deviations, day.date, faults);
      if (!known) continue;
      const by = typed["accepted-by"]?.text;
      deviations.set(known.id, {
        ...known,
        disposition: {
          date: day.date,
          text: disposition.text,
          ...given({ by }),
          span: disposition.span,
        },
      });
    }
    for (const fix of later.fixes) joinFix(fix, day.date, squawks, faults);
    for (const reading of day.readings) {
      const { supersedes, supersedesSpan, deviation, deviationSpan } = reading;
      if (supersedes && supersedesSpan) {
        named(supersedes, supersedesSpan, "reading", readings, day.date, faults);
      }
      if (deviation && deviationSpan && !deviations.has(deviation)) {
        addUnknown(deviation, deviationSpan, "deviation", deviations.keys(), faults);
      }
      for (const part of reading.of ?? [])
        named(part.reading, part.span, "reading", readings, day.date, faults);
    }
    for (const { deviation, deviationSpan } of day.layouts) {
      if (deviation && deviationSpan && !deviations.has(deviation)) {
        addUnknown(deviation, deviationSpan, "deviation", deviations.keys(), faults);
      }
    }
    for (const release of day.releases) {
      if (release.hold) named(release.hold, release.span, "hold", holds, day.date, faults);
      else if (!release.step) {
        faults.add("missing-key", release.span, {
          message: "a release needs `hold` or `step`",
          help: ["write `hold: H-3`, or `step: HS-08` for all holds of the step"],
        });
      }
    }
  }
  const readingsIn = joinReadings(
    days.map(({ day }) => day),
    registers,
    faults,
  );
  return days.map(({ day }) => ({
    ...day,
    readings: readingsIn(day),
    deviations: day.deviations.map((each) => deviations.get(each.id) ?? each),
    squawks: day.squawks.map((each) => squawks.get(each.id) ?? each),
  }));
}

interface Named {
  readonly id: string;
  readonly date: CalendarDate;
  readonly span: Span;
}

function declared<T extends Named>(
  days: readonly ReadDay[],
  of: (day: Day) => readonly T[],
  what: string,
  faults: Faults,
): Map<string, T> {
  const known = new Map<string, T>();
  for (const each of days.flatMap(({ day }) => of(day))) {
    const first = known.get(each.id);
    if (first) {
      faults.add("duplicate-id", each.span, {
        message: `another ${what} is called \`${each.id}\``,
        notes: [`the first stands at ${first.span.file}:${first.span.line}`],
        help: ["give one of the two another id, and change it where it is used"],
      });
    } else known.set(each.id, each);
  }
  return known;
}

// The one that is meant, if it was written on the same day or before.
function named<T extends Named>(
  name: string,
  span: Span,
  what: string,
  known: ReadonlyMap<string, T>,
  date: CalendarDate,
  faults: Faults,
): T | undefined {
  const found = known.get(name);
  if (!found) return addUnknown(name, span, what, known.keys(), faults);
  if (found.date <= date) return found;
  return faults.add("unknown-name", span, {
    message: `${what} \`${name}\` is of ${found.date}, later than ${date}`,
    help: [`name a ${what} of this day or an earlier one`],
  });
}

function addUnknown(
  name: string,
  span: Span,
  what: string,
  known: Iterable<string>,
  faults: Faults,
): undefined {
  const nearest = nearestName(name, known);
  return faults.add("unknown-name", span, {
    message: `no ${what} is called \`${name}\``,
    ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
    help: [
      nearest
        ? `write \`${nearest}\``
        : `give the ${what} that is meant an \`id\`, and write it here`,
    ],
  });
}

function joinFix(
  fix: LaterWords["fixes"][number],
  date: CalendarDate,
  squawks: Map<string, Squawk>,
  faults: Faults,
): void {
  const { squawk: name, did } = fix;
  const closedBy = fix["closed-by"];
  const known = named(name.text, name.span, "squawk", squawks, date, faults);
  if (!known) return;
  if (!did && !closedBy) {
    faults.add("missing-key", name.span, {
      message: "a fix needs `did` or `closed-by`",
      help: ["write `did: what was done`, and `closed-by: jon` once somebody looked at it"],
    });
  }
  squawks.set(known.id, {
    ...known,
    ...(did ? { fixed: { date, text: did.text } } : {}),
    ...(closedBy ? { closed: { date, by: closedBy.text } } : {}),
  });
}
