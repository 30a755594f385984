import { expect, test } from "vitest";
import type { Session } from "../../../src/model/session.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, project, session, smallBuild, span } from "../../support/small-build.ts";

function found(
  stages: readonly (string | undefined)[],
  last: Partial<Session> = {},
  own?: string[],
) {
  const days = stages.map((stage, index) => {
    const date = `2026-03-0${index + 1}`;
    const one = session({ date, step: "HS-08", ...(stage === undefined ? {} : { stage }) });
    return day({ date, sessions: [index === stages.length - 1 ? { ...one, ...last } : one] });
  });
  return foundBy(
    "stage-going-back",
    smallBuild({ days, ...(own ? { project: project({ stages: own }) } : {}) }),
  );
}

test.each([
  [["drilled", "clecoed", "deburred", "primed", "riveted", "closed"], 0],
  [["clecoed", "drilled", "deburred", "primed", "clecoed", "riveted"], 0], // ordinary work
  [["sealed", "riveted", "closed"], 0], // riveted wet
  [["inspected", "riveted"], 0],
  [["riveted", "riveted"], 0],
  [["riveted", undefined, "drilled"], 1],
  [["sealed", "clecoed"], 1],
  [["inspected", "primed"], 1],
  [["closed", "riveted"], 1],
  [["closed", "inspected"], 1],
  [["riveted", "buffed", "drilled"], 0], // a stage nobody declared is reported by reading
])("%j: %i", (stages, count) => {
  expect(found(stages)).toHaveLength(count);
});

test("says from what and to what, at the stage", () => {
  const [one] = found(["riveted", "drilled"], { stageSpan: span({ line: 6, column: 50 }) });
  expect(one).toMatchObject({
    severity: "finding",
    message: "`HS-08` goes back from riveted to drilled without rework",
    label: "was riveted on 2026-03-01",
    span: { line: 6, column: 50 },
  });
  expect(one).not.toHaveProperty("private");
  expect(found(["riveted", "drilled"], { private: true })[0]?.private).toBe(true);
});

test("rework may go back", () => {
  expect(found(["riveted", "drilled"], { kind: "rework" })).toEqual([]);
  expect(found(["closed", "sealed"], { kind: "rework" })).toEqual([]);
});

test("with an order of its own, a project goes back from closed alone", () => {
  const own = ["cut", "wired", "closed"];
  expect(found(["wired", "cut"], {}, own)).toEqual([]);
  expect(found(["closed", "cut"], {}, own)).toHaveLength(1);
});
