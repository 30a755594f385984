// What days say of each other: later words on earlier deviations, squawks, readings and holds.

import { describe, expect, test } from "vitest";
import { pointed, readSmall } from "../support/temporary-journal.ts";

function read(days: Readonly<Record<string, string>>) {
  const files = Object.entries(days).map(
    ([date, lines]) =>
      [`days/2026-03-${date}.md`, `---\ndate: 2026-03-${date}\n${lines}\n---\nWords.\n`] as const,
  );
  const { build, diagnostics } = readSmall(Object.fromEntries(files));
  return { days: build?.days ?? [], found: pointed(diagnostics), diagnostics };
}

const deviation =
  "deviations:\n  - { id: D-1, drawing: W-01 rev B, planned: 1 in, done: 0.9 in, why: sits aft }";
const squawk = "squawks:\n  - { id: S-1, found: a nick, owner: ada }";
const reading = (more: string) =>
  `readings:\n  - { what: edge distance, value: 0.2 in${more === "" ? "" : `, ${more}`} }`;

describe("a deviation", () => {
  test("has the disposition of a later day, and who accepted it", () => {
    const { days, found } = read({
      "02": deviation,
      "05": "dispositions: [{ deviation: D-1, disposition: use as is, accepted-by: jon }]",
    });
    expect(found).toEqual([]);
    expect(days[0]?.deviations[0]?.disposition).toMatchObject({
      date: "2026-03-05",
      text: "use as is",
      by: "jon",
    });
  });

  test("has the newest of two dispositions", () => {
    const { days } = read({
      "02": deviation,
      "05": "dispositions: [{ deviation: D-1, disposition: make anew }]",
      "06": "dispositions: [{ deviation: D-1, disposition: use as is }]",
    });
    expect(days[0]?.deviations[0]?.disposition?.text).toBe("use as is");
  });

  test.each([
    ["that nobody wrote down", "D-2", "05", "no deviation is called `D-2`"],
    ["of a later day", "D-1", "01", "deviation `D-1` is of 2026-03-02, later than 2026-03-01"],
  ])("%s cannot be disposed of", (_what, id, on, message) => {
    const { found, diagnostics, days } = read({
      "02": deviation,
      [on]: `dispositions: [{ deviation: ${id}, disposition: use as is }]`,
    });
    expect(found).toEqual([`days/2026-03-${on}.md:3 unknown-name ${id}`]);
    expect(diagnostics[0]?.message).toBe(message);
    const disposed = days.flatMap(({ deviations }) => deviations).map((each) => each.disposition);
    expect(disposed).toEqual([undefined]);
  });

  test("names a drawing that is declared, of any revision", () => {
    expect(read({ "02": deviation.replace("rev B", "rev A") }).found).toEqual([]);
    expect(read({ "02": deviation.replace("W-01 rev B", "W-01") }).found).toEqual([]);
    const { found, diagnostics } = read({ "02": deviation.replace("W-01", "W-10") });
    expect(found).toEqual(["days/2026-03-02.md:4 unknown-name W-10 rev B"]);
    expect(diagnostics[0]).toMatchObject({
      message: "no drawing is called `W-10`",
      label: "did you mean `W-01`?",
    });
  });
});

describe("a squawk", () => {
  test("is fixed on one day and closed on another", () => {
    const { days, found } = read({
      "02": squawk,
      "03": "fixes: [{ squawk: S-1, did: blended out }]",
      "04": "fixes: [{ squawk: S-1, closed-by: jon }]",
    });
    expect(found).toEqual([]);
    expect(days[0]?.squawks[0]).toMatchObject({
      fixed: { date: "2026-03-03", text: "blended out" },
      closed: { date: "2026-03-04", by: "jon" },
    });
  });

  test("may be fixed on the day it was found, and not before", () => {
    const fix = "\nfixes: [{ squawk: S-1, did: blended out, closed-by: jon }]";
    expect(read({ "02": `${squawk}${fix}` }).found).toEqual([]);
    expect(read({ "01": fix.trim(), "02": squawk }).found).toEqual([
      "days/2026-03-01.md:3 unknown-name S-1",
    ]);
  });

  test("needs what was done, or who closed it", () => {
    const { found } = read({ "02": squawk, "03": "fixes: [{ squawk: S-1 }]" });
    expect(found).toEqual(["days/2026-03-03.md:3 missing-key S-1"]);
  });

  test("nearly named is offered the nearest", () => {
    const { diagnostics } = read({ "02": squawk, "03": "fixes: [{ squawk: S-2, did: it }]" });
    expect(diagnostics[0]?.label).toBe("did you mean `S-1`?");
  });
});

describe("a reading", () => {
  test("may supersede one of an earlier day by its id, given or not", () => {
    const { found } = read({
      "02": reading(""),
      "03": reading("id: R-1, supersedes: 2026-03-02.r1"),
      "04": reading("supersedes: R-1"),
    });
    expect(found).toEqual([]);
  });

  test.each([
    ["one that there is not", "2026-03-02.r2", "no reading is called `2026-03-02.r2`"],
    [
      "a later one",
      "2026-03-09.r1",
      "reading `2026-03-09.r1` is of 2026-03-09, later than 2026-03-03",
    ],
  ])("may not supersede %s", (_what, id, message) => {
    const { diagnostics } = read({
      "02": reading(""),
      "03": reading(`supersedes: ${id}`),
      "09": reading(""),
    });
    expect(diagnostics.map((each) => each.message)).toEqual([message]);
  });

  test("may name a deviation of any day, when there is one", () => {
    expect(read({ "01": reading("deviation: D-1"), "02": deviation }).found).toEqual([]);
    expect(read({ "01": reading("deviation: D-9"), "02": deviation }).found).toEqual([
      "days/2026-03-01.md:4 unknown-name D-9",
    ]);
  });

  test("of another dimension than its rule is a fault at the value, and is not judged", () => {
    const { found, days, diagnostics } = read({
      "02": "readings:\n  - { what: edge distance, rule: edge, values: [0.3, 0.4] lbf·in }",
    });
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((each) => each.includes(" wrong-dimension "))).toBe(true);
    expect(diagnostics[0]?.message).toBe(
      "`0.3 lbf·in` is a torque, and rule `edge` limits a length",
    );
    expect(days[0]?.readings).toEqual([]);
  });
});

describe("a hold", () => {
  const hold = "holds:\n  - { step: W-1, with: clecos, count: 24 }";

  test("is released by the id it was given, or the one it has by itself", () => {
    const named = hold.replace("step:", "id: H-1, step:");
    expect(read({ "02": named, "03": "releases: [{ hold: H-1 }]" }).found).toEqual([]);
    expect(read({ "02": hold, "03": "releases: [{ hold: 2026-03-02.h1 }]" }).found).toEqual([]);
    expect(read({ "02": hold, "03": "releases: [{ step: W-1 }]" }).found).toEqual([]);
  });

  test.each([
    ["one that there is not", "releases: [{ hold: H-1 }]", "unknown-name"],
    ["none at all", "releases: [{ }]", "missing-key"],
  ])("a release of %s", (_what, lines, code) => {
    const { diagnostics } = read({ "02": hold, "03": lines });
    expect(diagnostics.map((each) => each.code)).toEqual([code]);
  });
});

describe("an id stands once", () => {
  test.each([
    ["deviation", deviation, "D-1"],
    ["squawk", squawk, "S-1"],
    ["reading", reading("id: R-1"), "R-1"],
    ["hold", "holds:\n  - { id: H-1, step: W-1, with: tape }", "H-1"],
  ])("%s", (what, lines, id) => {
    const { diagnostics, found } = read({ "02": lines, "03": lines });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^days\/2026-03-03\.md:4 duplicate-id /);
    expect(diagnostics[0]?.message).toContain(`${what} is called \`${id}\``);
    expect(diagnostics[0]?.notes[0]).toContain("journal/days/2026-03-02.md:4");
  });
});
