import { describe, expect, test } from "vitest";
import { type DividedTask, taskConflicts } from "../../src/compute/task-conflicts.ts";
import type { Split } from "../../src/model/portion.ts";
import { portionAnalysis, splitsOf, taskList } from "../support/portioned.ts";
import { span } from "../support/small-build.ts";
import { entry, marchFile } from "../support/temporary-journal.ts";

const none: Split = { kit: 0, paid: 0, assembly: 0, fabrication: 0 };
const task = (
  split: Partial<Split> | undefined,
  {
    salvage = false,
    source,
    listed,
    paid = false,
    claims = 0,
    helped = 0,
  }: {
    salvage?: boolean;
    source?: string;
    listed?: number;
    paid?: boolean;
    claims?: number;
    helped?: number;
  } = {},
): DividedTask => ({
  task: listed === undefined ? {} : { listed },
  current: {
    task: "F1",
    date: "2026-01-03",
    ...(split ? { split: { ...none, ...split } } : {}),
    salvage,
    ...(source === undefined ? {} : { source }),
    span: span(),
  },
  claims: Array.from({ length: paid ? 1 : claims }, () => ({ paid })),
  help: { tenths: helped, rows: helped > 0 ? ["P-1"] : [] },
});

test("a task that is not divided contradicts nothing", () => {
  const undivided = { ...task(undefined, { paid: true, helped: 3 }), current: undefined };
  expect(taskConflicts(undivided)).toEqual([]);
});

describe("paid help", () => {
  test("at work on a task without a share", () => {
    expect(taskConflicts(task({ assembly: 10 }, { paid: true }))).toEqual([
      "paid help at work without a share",
    ]);
    expect(taskConflicts(task({ assembly: 10 }, { claims: 2 }))).toEqual([]);
    expect(taskConflicts(task({ assembly: 9, paid: 1 }, { paid: true, helped: 1 }))).toEqual([]);
  });

  test.each([
    [3, 0, true],
    [3, 2, true],
    [0, 2, true],
    [2, 3, true],
    [3, 3, false],
    [0, 0, false],
  ])("a share of %i tenths and help of %i", (paid, helped, differs) => {
    expect(taskConflicts(task({ assembly: 10 - paid, paid }, { helped }))).toEqual(
      differs ? ["paid share differs from the help received"] : [],
    );
  });
});

test("a salvaged assembly earns nothing, and its source is the assembly", () => {
  expect(taskConflicts(task({ kit: 9, fabrication: 1 }, { salvage: true }))).toEqual([
    "credit for a salvaged assembly",
  ]);
  expect(taskConflicts(task({ kit: 10 }, { salvage: true }))).toEqual([]);
});

describe("the kit's share", () => {
  test.each([
    ["as the list gives it", 4, 4, undefined, false],
    ["less than the list gives", 2, 4, undefined, true],
    ["more than the list gives", 6, 4, undefined, true],
    ["nothing, where the list gives some", 0, 4, undefined, true],
    ["some, where the list gives none", 4, undefined, undefined, true],
    ["nothing, where the list gives none", 0, undefined, undefined, false],
    ["with a source", 2, 4, "invoice 17", false],
  ])("%s", (_, kit, listed, source, lacks) => {
    const of = {
      ...(listed === undefined ? {} : { listed }),
      ...(source === undefined ? {} : { source }),
    };
    expect(taskConflicts(task({ kit, assembly: 10 - kit }, of))).toEqual(
      lacks ? ["kit's share without a source"] : [],
    );
  });
});

test("a task put aside has neither entries nor help", () => {
  expect(taskConflicts(task(undefined))).toEqual([]);
  expect(taskConflicts(task(undefined, { claims: 1 }))).toEqual(["not applicable but worked on"]);
  expect(taskConflicts(task(undefined, { helped: 1 }))).toEqual(["not applicable but worked on"]);
});

test("of several divisions the newest counts", () => {
  const { diagnostics } = portionAnalysis(
    `${splitsOf("F1 kit 1, salvage: true")}  - { task: F1, on: 2026-02-03, assembly: 1, why: made it anew }\n`,
    taskList("F1"),
    {
      [marchFile]: entry(
        'photos: []\nsessions: [{ assembly: spar, who: [ada], hours: "1:00", kind: assemble, tasks: [F1] }]',
      ),
    },
  );
  expect(diagnostics.map(({ code }) => code)).toEqual(["claim-without-evidence"]);
});

test("the days of many entries are counted and not all named", () => {
  const days = Object.fromEntries(
    ["01", "02", "03", "04", "05"].map((day) => [
      `days/2026-03-${day}.md`,
      `---\ndate: 2026-03-${day}\nsessions: [{ assembly: spar, who: [jon], roles: { jon: paid help }, hours: "1:00", kind: assemble, tasks: [F1] }]\n---\nDone.\n`,
    ]),
  );
  const { diagnostics } = portionAnalysis(splitsOf("F1 kit 1, source: x"), taskList("F1"), days);
  expect(diagnostics.map(({ code, notes }) => [code, notes.at(-1)])).toEqual([
    [
      "paid-work-without-share",
      "paid help was at it: 2026-03-01, 2026-03-02, 2026-03-03 and 2 more",
    ],
  ]);
});
