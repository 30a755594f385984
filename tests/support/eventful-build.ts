// A build in which everything happens that an export has to carry, and a long one.

import type { Analysis } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import type { Build } from "../../src/model/build.ts";
import { addDays } from "../../src/model/calendar.ts";
import type { Day } from "../../src/model/day.ts";
import { workKinds } from "../../src/model/session.ts";
import {
  asOf,
  cure,
  day,
  deviation,
  disposition,
  hold,
  inspection,
  instrument,
  lot,
  moment,
  person,
  project,
  register,
  release,
  seal,
  session,
  smallBuild,
  span,
  squawk,
  step,
} from "./small-build.ts";
import { quantity, reading, rule } from "./small-measurements.ts";

/** Words that stand in private places only; each is somewhere in `eventfulBuild`. */
export const privateWords = [
  "Secretperson",
  "secret-note",
  "secret-reading",
  "secret-lot",
  "secret-photo",
  "secret-deviation",
  "secret-prose",
  "secret-title",
  "secret-inspection",
  "secret-amendment",
  "secret-decision",
  "secret-repair",
  "secret-reason",
] as const;

/** Texts that a spreadsheet would run or change, all of them on the ordinary day. */
export const trickyTexts = [
  "=HYPERLINK(1)",
  "+1+1",
  "-2+3",
  "@SUM(A1)",
  "\tTabbed",
  "＝1+1",
  "1/8",
  "3-16",
  "10e5",
  "0015",
  "'quoted",
  'say "so", then\nstop',
] as const;

/**
 * Three days: an ordinary one with one of everything, a late one that amends it, and a
 * private one. Jon is private.
 */
export function eventfulBuild(): Build {
  const first = "2026-03-14";
  const second = "2026-03-15";
  const third = "2026-03-20";
  const at = (date: string, line: number) => span({ file: `content/days/${date}.md`, line });
  const days: Day[] = [
    day({
      date: first,
      written: moment("2026-03-14 21:40"),
      title: "Tail ribs riveted",
      conditions: { temperature: quantity("61 °F"), humidity: quantity("48 %") },
      sessions: [
        session({
          date: first,
          step: "HS-07",
          from: "18:40",
          to: "21:05",
          stage: "riveted",
          lots: ["sealant-1", "secret-lot"],
          lotSpans: [at(first, 8), at(first, 8)],
          span: at(first, 7),
        }),
        session({
          date: first,
          step: "HS-08",
          who: ["ada", ["jon", "paid help"]],
          minutes: 105,
          note: "secret-note",
          private: true,
          span: at(first, 8),
          minutesSpan: span({ text: 'now: "1:45"', column: 6, length: 6 }),
        }),
        session({ date: first, assembly: "wing", kind: "study", minutes: 30, span: at(first, 9) }),
        session({
          date: first,
          assembly: "rudder",
          from: "23:10",
          to: "01:20",
          kind: "fabricate",
          span: at(first, 10),
        }),
        ...trickyTexts.map((note, index) =>
          session({ date: first, assembly: "wing", minutes: index + 1, note, span: at(first, 30) }),
        ),
      ],
      readings: [
        reading(["0.1410 in", "0.3 in"], {
          date: first,
          step: "HS-07",
          instrument: "gauge-1",
          deviation: "D-014",
          sizes: new Map([["t", quantity("1/32 in")]]),
        }),
        reading(["5/32 in"], { id: "R-2", date: first, what: "secret-reading", private: true }),
        reading(["3.7 mm"], { id: "R-3", date: first, drag: quantity("4 lbf·in") }),
        reading(["31 lbf·in"], {
          id: "R-4",
          date: first,
          what: "torque",
          rule: "torque-10-32",
          instrument: "wrench-1",
        }),
      ],
      cures: [cure({ date: first, lot: "secret-lot" }), cure({ date: first, lot: "sealant-1" })],
      holds: [hold({ date: first, count: 24, where: "row A" })],
      deviations: [
        deviation({
          date: first,
          step: "HS-07",
          disposition: disposition({ date: third, text: "secret-decision", by: "jon" }),
        }),
        deviation({ id: "D-015", date: first, private: true, why: "secret-deviation" }),
        deviation({ id: "D-016", date: first }),
      ],
      squawks: [
        squawk({
          date: first,
          owner: "jon",
          step: "HS-07",
          fixed: { date: third, text: "secret-repair" },
          closed: { date: third, by: "jon" },
        }),
        squawk({ id: "S-005", date: first, owner: "ada", assembly: "rudder" }),
      ],
      inspections: [inspection({ date: first, result: "held", findings: "two heads to re-drive" })],
      photos: [
        {
          date: first,
          file: "2026-03-14/rib4.jpg",
          caption: "Row A driven",
          alt: "A row of rivets",
          step: "HS-07",
          shows: ["ada", "jon"],
          private: false,
          span: at(first, 20),
        },
        {
          date: first,
          file: "2026-03-14/x.jpg",
          caption: "secret-photo",
          shows: [],
          private: true,
          span: at(first, 21),
        },
      ],
      next: ["HS-08 drive the second row"],
      assertions: [{ of: "stabilizer", minutes: 355, span: at(first, 25) }],
    }),
    day({
      date: second,
      written: moment("2026-03-19 20:00"),
      late: 4,
      sessions: [
        session({
          date: second,
          step: "HS-07",
          who: [["jon", "unpaid help"]],
          kind: "inspect",
          minutes: 45,
          span: at(second, 5),
        }),
      ],
      releases: [release({ date: second, hold: "H-1" })],
      amendments: [
        {
          date: second,
          day: first,
          field: "sessions[2].hours",
          was: "1:15",
          now: "1:45",
          why: "forgot the clean-up",
          span: at(second, 9),
        },
        {
          date: second,
          day: first,
          field: "sessions[2].note",
          was: "secret-amendment",
          now: "secret-note",
          why: "wording",
          span: at(second, 10),
        },
      ],
    }),
    day({
      date: third,
      private: true,
      title: "secret-title",
      prose: "secret-prose\n",
      sessions: [
        session({
          date: third,
          who: ["ada"],
          kind: "shop",
          minutes: 90,
          note: "secret-note",
          span: at(third, 4),
        }),
        session({ date: third, kind: "rework", minutes: 50, span: at(third, 5) }),
      ],
      amendments: [
        {
          date: third,
          day: first,
          field: "sessions[1].who",
          was: "[ada, jon]",
          now: "[ada]",
          why: "secret-reason",
          span: at(third, 12),
        },
        {
          date: third,
          day: first,
          field: "sessions[1].lots",
          was: "[sealant-1]",
          now: "[sealant-1, secret-lot]",
          why: "secret-reason",
          span: at(third, 13),
        },
      ],
      inspections: [
        inspection({ date: third, look: "before closing", findings: "secret-inspection" }),
      ],
    }),
  ];
  return smallBuild({
    project: project({ registration: "N000XX", address: "https://journal.example/" }),
    people: register(
      person(),
      person({
        id: "jon",
        name: "Jon Secretperson",
        initials: "J.S.",
        role: "unpaid help",
        standing: "airframe mechanic",
        private: true,
      }),
    ),
    steps: register(
      step({
        id: "HS-07",
        title: "Rivet the tail ribs",
        planned: 840,
        drawing: "HS-03 rev C",
        looks: ["driven heads", "before closing"],
      }),
      step({ id: "HS-08", title: "Seal the front spar" }),
    ),
    rules: register(
      rule(),
      rule({ id: "torque-10-32", title: "Torque", lower: "20 lbf·in", upper: "25 lbf·in" }),
    ),
    instruments: register(
      instrument({
        resolution: quantity("0.0005 in"),
        uncertainty: quantity("0.001 in"),
        calibrations: [{ on: "2025-08-20", due: "2026-08-20", by: "county bench", span: span() }],
      }),
      instrument({
        id: "wrench-1",
        title: "Torque wrench",
        calibrations: [{ on: "2024-01-01", due: "2025-01-01", span: span() }],
      }),
    ),
    lots: register(
      lot({
        made: "2025-11-03",
        expires: "2026-08-03",
        extensions: [{ on: "2026-03-01", until: "2026-12-18", why: "update test passed" }],
      }),
      lot({ id: "secret-lot", expires: "2026-01-01", private: true }),
    ),
    days,
    seals: [
      seal({
        month: "2026-02",
        photos: [{ path: "photos/secret-photo.jpg", digest: "5".repeat(64) }],
        previous: { month: "2026-01", digest: "0".repeat(64) },
      }),
    ],
    omissions: [{ file: "content/days/2026-03-21.md", why: "draft" }],
  });
}

/** The eventful build, judged a few days after its last. */
export function eventfulAnalysis(): Analysis {
  return analyze(eventfulBuild(), asOf("2026-03-25"));
}

/**
 * A long build: two sessions a day, the second by two people, of every kind in turn, with long
 * names among the short ones. Three rows a day.
 */
export function longAnalysis(days: number): Analysis {
  const begun = "2020-01-01";
  const long =
    "Maximiliana Featherstone-Abercrombie de la Garza y Villanueva von und zu Großenbrühl";
  return analyze(
    smallBuild({
      people: register(
        person(),
        person({ id: "jon", name: long, initials: "M.F.", role: "unpaid help" }),
      ),
      steps: register(
        step({ id: "HS-07", title: "Rivet the tail ribs" }),
        step({
          id: "HS-08",
          title:
            "Seal and rivet the front spar, with the doublers, the hinge brackets and the inspection-cover-frame-stiffener-attachment-angles of both sides",
        }),
      ),
      days: Array.from({ length: days }, (_, index) => {
        const date = addDays(begun, index);
        return day({
          date,
          late: index % 11 === 0 ? 3 : 0,
          sessions: [
            session({ date, step: "HS-07", from: "18:40", to: "21:05", stage: "riveted" }),
            session({
              date,
              ...(index % 5 === 0 ? { step: "HS-08" } : { assembly: "wing" }),
              who: ["ada", ["jon", "unpaid help"]],
              minutes: 30 + (index % 50),
              kind: workKinds[index % workKinds.length] ?? "assemble",
            }),
          ],
        });
      }),
    }),
    asOf(addDays(begun, days)),
  );
}
