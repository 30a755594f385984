// Cases of `major-portion-checklist.md` (worked examples X1 to X8) and `paperwork.md` (C1 to C6).
// X1 is the example in the instructions of the authority's checklist of 2011; X2 is a row of a
// completed one; X3 to X6 and X8 follow from the stated rule; X7 is the rule of AMA 549.5A.

import { describe, expect, test } from "vitest";
import { portionVerdict } from "../../src/compute/portion.ts";
import { builderPercent } from "../../src/present/format/portion.ts";
import { proposedSplit } from "../../src/read/proposed-split.ts";
import { parseTenths } from "../../src/read/tenths-syntax.ts";
import { listHead, portioned, splitsOf, taskList } from "../support/portioned.ts";
import { readSmall } from "../support/temporary-journal.ts";

const messages = (splits: string, tasks: string) =>
  readSmall({ "portion.yaml": `${listHead}${splits}`, "tasks.csv": tasks }).diagnostics.map(
    ({ code, message }) => `${code}: ${message}`,
  );

test("X1: 0.5, 0.3 and 0.2 are one point, of which the builder has 0.2", () => {
  const { sum } = portioned(splitsOf("F1 kit 0.5, paid 0.3, fabrication 0.2"), taskList("F1"));
  expect([sum.total, sum.builder]).toEqual([10, 2]);
});

test("X2: 0.9 and 0.1 are one point", () => {
  const { sum } = portioned(splitsOf("F1 kit 0.9, fabrication 0.1"), taskList("F1"));
  expect(sum.total).toBe(10);
});

test("X3: eight listed tasks, one not applicable, one added", () => {
  const ids = ["X1", "X2", "X3", "X4", "X5", "X6", "X7", "X8"];
  const added =
    "added: [{ task: X-1, section: Fuselage, title: More, on: 2026-01-03, why: not on the list }]\n";
  const { sum, verdict, notApplicable, undecided } = portioned(
    `${added}${splitsOf(
      "X1 kit 0.9, fabrication 0.1",
      "X2 not-applicable: true, why: no such part",
      "X3 kit 0.5, paid 0.3, fabrication 0.2",
      "X4 assembly 1.0",
      "X5 kit 0.3, fabrication 0.7",
      "X6 kit 1.0",
      "X7 paid 0.4, assembly 0.6",
      "X8 fabrication 1.0",
      "X-1 assembly 0.2, fabrication 0.8",
    )}`,
    taskList(...ids),
  );
  expect(sum).toEqual({
    tasks: 8,
    columns: { kit: 27, paid: 7, assembly: 18, fabrication: 28 },
    total: 80,
    builder: 46,
  });
  expect([notApplicable, undecided, builderPercent(sum)]).toEqual([1, 0, "57.5 %"]);
  expect(verdict).toEqual({
    moreThanHalf: true,
    exactlyHalf: false,
    fiftyOne: true,
    headroomHalf: 5,
    headroomFiftyOne: 5,
  });
});

describe("the two lines", () => {
  test("X4: 50.5 of 100.0 is more than half and not 51 %", () => {
    const sum = { total: 1000, builder: 505 };
    expect(portionVerdict(sum)).toMatchObject({ moreThanHalf: true, fiftyOne: false });
    expect(builderPercent(sum)).toBe("50.5 %");
  });

  test("X5: 68.4 of 120.0 leaves 8.3 points above half and 7.2 at 51 %", () => {
    const sum = { total: 1200, builder: 684 };
    expect(portionVerdict(sum)).toMatchObject({ headroomHalf: 83, headroomFiftyOne: 72 });
    expect(builderPercent(sum)).toBe("57.0 %");
  });

  test("X7: 31 against 31 is not greater, so exactly half is not a major portion", () => {
    expect(portionVerdict({ total: 620, builder: 310 })).toMatchObject({
      moreThanHalf: false,
      exactlyHalf: true,
      headroomHalf: 0,
    });
    expect(portionVerdict({ total: 620, builder: 311 }).moreThanHalf).toBe(true);
  });

  test("50.96 % is never printed as 51 %, and 50.999 % neither", () => {
    expect(builderPercent({ total: 10000, builder: 5096 })).toBe("50.9 %");
    expect(builderPercent({ total: 100000, builder: 50999 })).toBe("50.9 %");
    expect(builderPercent({ total: 100, builder: 51 })).toBe("51.0 %");
  });

  test("nothing divided reaches no line", () => {
    expect(portionVerdict({ total: 0, builder: 0 })).toMatchObject({
      moreThanHalf: false,
      exactlyHalf: false,
      fiftyOne: false,
    });
  });

  // C5 by its definition: the largest h with 2 (b - h) > t, counted one by one.
  test("headroom is the largest that keeps the line, whatever the sum", () => {
    for (let total = 10; total <= 240; total += 10) {
      for (let builder = 0; builder <= total; builder += 1) {
        const { headroomHalf, headroomFiftyOne, moreThanHalf, fiftyOne } = portionVerdict({
          total,
          builder,
        });
        let half = -1;
        while (2 * (builder - half - 1) > total) half += 1;
        let fifty = -1;
        while (100 * (builder - fifty - 1) >= 51 * total) fifty += 1;
        expect([moreThanHalf, headroomHalf]).toEqual([half >= 0, Math.max(0, half)]);
        expect([fiftyOne, headroomFiftyOne]).toEqual([fifty >= 0, Math.max(0, fifty)]);
      }
    }
  });
});

test("X6: four divisions that are none, each with its own message", () => {
  expect(
    messages(
      splitsOf(
        "F1 kit 0.3, paid 0.3, assembly 0.3",
        "F2 kit 0.5, paid 0.6",
        "F3 kit .95, fabrication .05",
        "F4 not-applicable: true, fabrication 0.2, why: none",
      ),
      taskList("F1", "F2", "F3", "F4"),
    ),
  ).toEqual([
    "not-a-split: the shares of task `F1` come to 0.9, and a task is one point",
    "not-a-split: the shares of task `F2` come to 1.1, and a task is one point",
    "not-a-share: `.95` is not a share: a point is divided in tenths, from 0 to 1",
    "not-a-share: `.05` is not a share: a point is divided in tenths, from 0 to 1",
    "not-a-split: task `F4` is not applicable and has shares as well",
  ]);
});

test("X8: 0.1, 0.2 and 0.7 are exactly ten tenths", () => {
  expect(proposedSplit("F1=kit 0.1, paid 0.2, fabrication 0.7")).toEqual({
    task: "F1",
    split: { kit: 1, paid: 2, assembly: 0, fabrication: 7 },
  });
  const { sum } = portioned(splitsOf("F1 kit 0.1, paid 0.2, fabrication 0.7"), taskList("F1"));
  expect(sum.total).toBe(10);
});

test.each([
  ["0", 0],
  ["0.0", 0],
  [".5", 5],
  ["0.5", 5],
  ["1", 10],
  ["1.0", 10],
  ["0.05", undefined],
  ["1.1", undefined],
  ["-0.1", undefined],
  ["0,5", undefined],
  ["½", undefined],
  ["", undefined],
])("a share of `%s`", (typed, tenths) => {
  expect(parseTenths(typed)).toBe(tenths);
});

test("an alteration has no sheet, and the reason is said", () => {
  const project = `title: Old aeroplane
designation: SM-1
serial: "0001"
basis: alteration
zone: America/Denver
begun: 2026-01-01
summary: A small journal for tests.
drawings: [{ id: W-01, title: Wing spar, revision: B }]
`;
  const { build, diagnostics } = readSmall({
    "project.yaml": project,
    "tasks.csv": taskList("F1"),
  });
  expect(build).not.toHaveProperty("portion");
  expect(diagnostics.map(({ code, span }) => `${span.file} ${code}`)).toEqual([
    "journal/tasks.csv portion-of-an-alteration",
  ]);
});
