// Generated builds, without faults unless asked for, to try laws on.

import fc from "fast-check";
import type { Build } from "../../src/model/build.ts";
import { addDays, type CalendarDate } from "../../src/model/calendar.ts";
import type { Day } from "../../src/model/day.ts";
import { roles } from "../../src/model/person.ts";
import { type Session, workKinds } from "../../src/model/session.ts";
import {
  assertion,
  cure,
  day,
  deviation,
  hold,
  inspection,
  instrument,
  lot,
  register,
  session,
  smallBuild,
  span,
  squawk,
} from "./small-build.ts";
import { reading, rule } from "./small-measurements.ts";

const firstDate: CalendarDate = "2026-01-01";

/** The last date that a generated build may use. */
export const lastDate: CalendarDate = "2026-06-30";

const someDates = fc
  .uniqueArray(fc.integer({ min: 0, max: 170 }), { maxLength: 12 })
  .map((numbers) => numbers.sort((a, b) => a - b).map((number) => addDays(firstDate, number)));

const places = [
  { assembly: "empennage" },
  { assembly: "stabilizer" },
  { assembly: "stabilizer", step: "HS-07" },
  { assembly: "stabilizer", step: "HS-08" },
  { assembly: "rudder" },
  { assembly: "wing" },
] as const;

const someRole = fc.constantFrom(...roles);

/** A session of any kind on a date: one or two people, hours alone, up to three hours. */
export function anySession(date: CalendarDate): fc.Arbitrary<Session> {
  return fc
    .record({
      place: fc.constantFrom(...places),
      kind: fc.constantFrom(...workKinds),
      minutes: fc.integer({ min: 1, max: 180 }),
      ada: someRole,
      jon: fc.option(someRole, { nil: undefined }),
    })
    .map(({ place, kind, minutes, ada, jon }) =>
      session({
        date,
        ...place,
        kind,
        minutes,
        who: [["ada", ada], ...(jon ? [["jon", jon] as const] : [])],
        minutesSpan: span({ file: `content/days/${date}.md`, line: 5 }),
      }),
    );
}

/** A day on which people worked and nothing else happened: no check finds anything in it. */
export function faultlessDay(date: CalendarDate): fc.Arbitrary<Day> {
  return fc.array(anySession(date), { maxLength: 4 }).map((sessions) => day({ date, sessions }));
}

/** A build in which people worked and nothing else happened. */
export const anyHours: fc.Arbitrary<Build> = someDates
  .chain((dates) => fc.tuple(...dates.map(faultlessDay)))
  .map((days) => smallBuild({ days }));

/** A build with any of the faults that checks look for, several at a time or none. */
export const anyFaults: fc.Arbitrary<Build> = someDates
  .chain((dates) => fc.tuple(...dates.map(dayWithFaults)))
  .map((days) =>
    smallBuild({
      days,
      rules: register(rule()),
      lots: register(lot({ expires: "2026-03-01" })),
      instruments: register(
        instrument({ calibrations: [{ on: "2026-01-10", due: "2026-04-01", span: span() }] }),
      ),
    }),
  );

function dayWithFaults(date: CalendarDate): fc.Arbitrary<Day> {
  const file = `content/days/${date}.md`;
  const at = (line: number) => span({ file, line });
  const stage = fc.option(fc.constantFrom("drilled", "riveted", "closed"), { nil: undefined });
  return fc
    .record({
      sessions: fc.array(fc.tuple(anySession(date), stage), { maxLength: 4 }),
      overlap: fc.boolean(),
      typed: fc.option(fc.constantFrom("0.1 in", "0.14 in"), { nil: undefined }),
      hasCure: fc.boolean(),
      hasHold: fc.boolean(),
      hasDeviation: fc.boolean(),
      hasSquawk: fc.boolean(),
      looked: fc.option(fc.constantFrom("clear" as const, "held" as const), { nil: undefined }),
      asserted: fc.option(fc.integer({ min: 0, max: 4000 }), { nil: undefined }),
    })
    .map((made) => {
      const overlapping = ["18:00", "18:30"].map((from) =>
        session({ date, who: ["jon"], from, to: "19:00", minutesSpan: at(6) }),
      );
      const midnight = Date.parse(`${date}T00:00Z`) / 60_000;
      return day({
        date,
        sessions: [
          ...made.sessions.map(([each, reached]) => ({
            ...each,
            lots: ["sealant-1"],
            lotSpans: [at(7)],
            ...(each.step !== undefined && reached ? { stage: reached, stageSpan: at(8) } : {}),
          })),
          ...(made.overlap ? overlapping : []),
        ],
        readings:
          made.typed === undefined
            ? []
            : [
                reading([made.typed], {
                  id: `${date}.r1`,
                  date,
                  instrument: "gauge-1",
                  span: at(9),
                }),
              ],
        cures: made.hasCure
          ? [
              cure({
                date,
                mixed: { epochMinutes: midnight + 1200, local: `${date} 20:00` },
                ready: { epochMinutes: midnight + 4080, local: `${addDays(date, 2)} 20:00` },
                span: at(10),
              }),
            ]
          : [],
        holds: made.hasHold ? [hold({ id: `${date}.h1`, date, span: at(11) })] : [],
        deviations: made.hasDeviation ? [deviation({ id: `D-${date}`, date, span: at(12) })] : [],
        squawks: made.hasSquawk
          ? [squawk({ id: `S-${date}`, date, step: "HS-07", span: at(13) })]
          : [],
        inspections: made.looked ? [inspection({ date, result: made.looked, span: at(14) })] : [],
        assertions:
          made.asserted === undefined ? [] : [assertion({ minutes: made.asserted, span: at(15) })],
      });
    });
}
