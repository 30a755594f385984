import { describe, expect, test } from "vitest";
import { proposedPortion } from "../../../src/compute/ledgers/portion.ts";
import { portionAnalysis, portioned, splitsOf, taskList } from "../../support/portioned.ts";
import { entry, marchFile } from "../../support/temporary-journal.ts";

const tasks = taskList("Fuselage,F1", "Fuselage,F2", "Wings,W1");

test("sections add up to the whole, and what is undecided or put aside is counted apart", () => {
  const { sections, sum, notApplicable, undecided } = portioned(
    splitsOf("F1 kit 0.4, assembly 0.6", "W1 not-applicable: true, why: no wings"),
    tasks,
  );
  expect(sections.map(({ section, sum: { total, builder } }) => [section, total, builder])).toEqual(
    [
      ["Fuselage", 10, 6],
      ["Wings", 0, 0],
    ],
  );
  expect(sum.total).toBe(sections.reduce((total, section) => total + section.sum.total, 0));
  expect([notApplicable, undecided]).toEqual([1, 1]);
});

test("the worst case gives the undecided tasks to others", () => {
  const { verdict, worst } = portioned(
    splitsOf("F1 assembly 1", "W1 kit 0.4, assembly 0.6"),
    tasks,
  );
  expect([verdict.moreThanHalf, worst.moreThanHalf]).toEqual([true, true]);
  const less = portioned(splitsOf("F1 kit 0.4, assembly 0.6"), tasks);
  expect([less.verdict.moreThanHalf, less.worst.moreThanHalf]).toEqual([true, false]);
});

test("what is tried out leaves the sheet as it is", () => {
  const now = portioned(splitsOf("F1 assembly 1", "F2 kit 1"), tasks);
  const before = JSON.stringify([...now.tasks.values()]);
  const split = { kit: 0, paid: 10, assembly: 0, fabrication: 0 };
  const then = proposedPortion(now, new Map([["F1", split]]));
  expect([now.sum.builder, then.sum.builder, then.sum.columns.paid]).toEqual([10, 0, 10]);
  const aside = proposedPortion(now, new Map([["F2", undefined]]));
  expect([aside.sum.total, aside.verdict.moreThanHalf]).toEqual([10, true]);
  expect(JSON.stringify([...now.tasks.values()])).toBe(before);
});

test("hours never enter: ten times the hours leave the sheet as it was", () => {
  const withHours = (hours: string) =>
    portioned(splitsOf("F1 kit 0.4, assembly 0.6"), tasks, {
      [marchFile]: entry(
        `sessions: [{ assembly: spar, who: [ada], hours: "${hours}", kind: assemble, tasks: [F1] }]`,
      ),
    }).sum;
  expect(withHours("0:30")).toEqual(withHours("5:00"));
});

test("a division of the day after has not come yet", () => {
  const { diagnostics } = portionAnalysis(
    `${splitsOf("F1 kit 1").replace("2026-01-03", "2027-01-01")}added: [{ task: F-1, section: Wings, title: More, on: 2027-02-01, why: left out }]\n`,
    tasks,
  );
  const early = diagnostics.filter(({ code }) => code === "future-date");
  expect(early.map(({ code, message }) => `${code}: ${message}`)).toEqual([
    "future-date: the division of task `F1` is dated 2027-01-01, after 2026-12-31",
    "future-date: the added task `F-1` is dated 2027-02-01, after 2026-12-31",
  ]);
});

describe("evidence", () => {
  const gaps = (session: string, lines = "", prose = "Drilled it.\n", split = "fabrication 1") => {
    const state = portioned(splitsOf(`F1 ${split}`), tasks, {
      [marchFile]: entry(`${lines}sessions:\n  - { assembly: spar, ${session} }`, prose),
    }).tasks.get("F1");
    return [...(state?.gaps ?? []), ...(state?.missingKinds ?? [])];
  };

  test("nothing says anything of it", () => {
    expect(gaps('who: [ada], hours: "1:00", kind: fabricate')).toEqual(["no entry"]);
  });

  test("study and shop time show nothing", () => {
    expect(gaps('who: [ada], hours: "1:00", kind: study, tasks: [F1]')).toEqual(["no entry"]);
  });

  test("only paid help was at it", () => {
    const session = 'who: [jon], roles: { jon: paid help }, hours: "1:00", kind: fabricate';
    expect(gaps(`${session}, tasks: [F1]`)).toEqual(["no entry by a builder"]);
  });

  test("unpaid help counts with the builders; the photograph is missing", () => {
    expect(gaps('who: [jon], hours: "1:00", kind: fabricate, tasks: [F1]')).toEqual([
      "no photograph",
    ]);
  });

  test("an entry without a word says nothing", () => {
    expect(gaps('who: [ada], hours: "1:00", kind: fabricate, tasks: [F1]', "", "")).toEqual([
      "no text",
      "no photograph",
    ]);
  });

  test("assembly and fabrication are different claims", () => {
    const session = 'who: [ada], hours: "1:00", kind: fabricate, tasks: [F1]';
    expect(gaps(session, "", "Did it.\n", "assembly 0.5, fabrication 0.5")).toEqual([
      "no photograph",
      "assemble",
    ]);
  });

  test("a task of which the builder claims nothing needs none", () => {
    expect(gaps('who: [ada], hours: "1:00", kind: fabricate', "", "x\n", "kit 1")).toEqual([]);
  });
});
