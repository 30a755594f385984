// Cases W1 to W6 of `paperwork.md`, section 6.
//
// W4 and W5, limits of weight in Canada (549.107; basic ultra-light), are not here: their formulas
// are known from others' words alone, no rule of the program is made from them, and so there is
// nothing of the program to test. Nor is the last line of W6, hours as months of 160 h: that
// conversion is an association's and is printed nowhere.

import { describe, expect, test } from "vitest";
import { analyze } from "../../src/compute/analyze.ts";
import { balanceReport } from "../../src/present/balance/balance-report.ts";
import { hoursStatement } from "../../src/present/tables/hours-statement.ts";
import { allHours } from "../../src/present/tables/totals.ts";
import { asOf } from "../support/small-build.ts";
import { readSmall } from "../support/temporary-journal.ts";
import { analysisWith, emptyOf, weighed } from "../support/weighed.ts";

const empty = (points: string) => `weighings:
  - { id: W-1, on: 2026-01-01, title: As published, points: [${points}] }
`;
const change = (out: string, into: string) => `changes:
  - { id: C-1, on: 2026-02-01, title: As published, out: [${out}], in: [${into}] }
`;
const item = (weight: string, arm: string) =>
  `{ what: item, weight: ${weight} lb, arm: ${arm} in }`;

describe("weight and balance", () => {
  // An example of the FAA handbook, repeated by a flight school, which prints −13.2. Secondary.
  test("W1: a nose wheel of 340 lb 78 in ahead of the mains, 2,006 lb in all: −13.22 in", () => {
    const { ledger } = weighed(
      empty("{ at: mains, reads: 1666 lb, arm: 0 in }, { at: nose, reads: 340 lb, arm: -78 in }"),
    );
    expect(emptyOf(ledger).weight).toBe(2006);
    expect(emptyOf(ledger).cg).toBeCloseTo(-13.22, 2);
  });

  const w2 =
    empty("{ at: all of it, reads: 2886 lb, arm: 35.23 in }") +
    change(
      `${item("15", "71")}, ${item("15", "71")}`,
      `${item("97", "71")}, ${item("20", "71")}, ${item("30", "94")}`,
    );
  const w3 =
    empty("{ at: all of it, reads: 1500 lb, arm: 28.4 in }") +
    change(
      "{ what: seats, count: 2, weight: 12 lb, arm: 68.5 in }",
      `${item("28", "73")}, ${item("30", "70.5")}, ${item("25", "85")}`,
    );

  // An item of the FAA knowledge test, repeated by others. Secondary.
  test("W2: from 35.23 to 36.85 in, 1.62 in aft: 3,003 lb and 110,670.78 lb·in", () => {
    const { ledger } = weighed(w2);
    expect(emptyOf(ledger)).toMatchObject({ weight: 3003, moment: 110_670.78 });
    const row = balanceReport(analysisWith(w2))?.events.at(-1);
    expect([row?.weight, row?.cg, row?.movement]).toEqual(["3003.00", "36.85", "+1.62"]);
  });

  // The page it is from says that the centre of gravity moves forward, which is wrong: a larger
  // arm behind the datum is further aft. Secondary.
  test("W3: 1,559 lb, 47,240 lb·in, +30.30 in, and that is aft", () => {
    const { ledger } = weighed(w3);
    expect(emptyOf(ledger)).toMatchObject({ weight: 1559, moment: 47_240 });
    const report = balanceReport(analysisWith(w3));
    expect(report?.sentence).toContain("30.30 in aft of the datum");
    expect(report?.events.at(-1)?.movement).toBe("+1.90");
    expect(JSON.stringify(report?.events)).not.toMatch(/forward/i);
  });
});

// Numbers of our own, from the rule that two people for two hours are four hours and one day.
describe("W6: hours", () => {
  const day = (date: string, sessions: string) => [
    `days/${date}.md`,
    `---\ndate: ${date}\nsessions:\n${sessions}---\nDone.\n`,
  ];
  const session = (who: string, hours: string) =>
    `  - { assembly: spar, who: [${who}], hours: "${hours}", kind: assemble }\n`;
  const { build, diagnostics } = readSmall({
    "people.yaml": `people:
  - { id: ana, name: Ana, role: builder }
  - { id: ben, name: Ben, role: unpaid help }
  - { id: tech, name: A technician, role: paid help }
`,
    ...Object.fromEntries([
      day("2026-01-10", session("ana, ben", "2:30")),
      day("2026-01-11", session("ana", "0:45") + session("ana", "1:30")),
      day("2026-01-17", session("ana", "4:00") + session("tech", "3:00")),
    ]),
  });
  expect(diagnostics).toEqual([]);
  if (!build) throw new Error("the journal is sound");
  const analysis = analyze(build, asOf("2026-12-31"));

  test("Ana 8.75, Ben 2.50, the technician 3.00, on three days", () => {
    const rows = hoursStatement(analysis).map(({ person, total }) => [
      person.name,
      total.total.build / 60,
      total.days,
    ]);
    expect(rows).toEqual([
      ["Ana", 8.75, 3],
      ["Ben", 2.5, 1],
      ["A technician", 3, 1],
    ]);
    expect(allHours(analysis).days).toBe(3);
  });

  test("amateurs 11.25, paid 3.00, all 14.25", () => {
    const of = (role: "builder" | "unpaid help" | "paid help") =>
      (analysis.hours.byRole.get(role)?.build ?? 0) / 60;
    expect([of("builder") + of("unpaid help"), of("paid help")]).toEqual([11.25, 3]);
    expect(analysis.hours.total.build / 60).toBe(14.25);
  });
});
