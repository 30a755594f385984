import { expect, test } from "vitest";
import type { Inspection } from "../../../src/model/inspection.ts";
import type { Session } from "../../../src/model/session.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, inspection, session, smallBuild, span } from "../../support/small-build.ts";

const on = (date: string, stage: string, overrides: Partial<Session> = {}): Session => ({
  ...session({ date, step: "HS-07", stage }),
  ...overrides,
});
const heads = (date: string, result: Inspection["result"] = "clear") =>
  inspection({ date, result });
const closing = (date: string, result: Inspection["result"] = "clear") =>
  inspection({ date, result, look: "before closing" });

function found(sessions: readonly Session[], inspections: readonly Inspection[]) {
  const dates = [...new Set([...sessions, ...inspections].map(({ date }) => date))].sort();
  const days = dates.map((date) =>
    day({
      date,
      sessions: sessions.filter((each) => each.date === date),
      inspections: inspections.filter((each) => each.date === date),
    }),
  );
  return foundBy("inspection-missing-before-closing", smallBuild({ days }));
}

const closed = on("2026-03-20", "closed");

test("looks that came out clear by the day of closing are enough", () => {
  expect(found([closed], [heads("2026-03-18"), closing("2026-03-20")])).toEqual([]);
});

test("looks that never happened are found together, at the stage", () => {
  const [one, ...more] = found([{ ...closed, stageSpan: span({ line: 7, column: 60 }) }], []);
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: "finding",
    message:
      "`HS-07` was closed on 2026-03-20 without a clear inspection of `driven heads` and `before closing`",
    notes: [],
    span: { line: 7, column: 60 },
  });
});

test("a look held after a clear one stands against closing", () => {
  const [one] = found(
    [closed],
    [heads("2026-03-15"), heads("2026-03-17", "held"), closing("2026-03-20")],
  );
  expect(one?.message).toContain("a clear inspection of `driven heads`");
  expect(one?.notes).toEqual([
    "the newest inspection of `driven heads` by then, on 2026-03-17, held it: content/days/2026-03-14.md:1",
  ]);
});

test("a clear look afterwards is noted and does not heal it", () => {
  const [one] = found([closed], [heads("2026-03-18"), closing("2026-03-21")]);
  expect(one?.notes).toEqual([
    "a later inspection of `before closing`, on 2026-03-21, was clear: content/days/2026-03-14.md:1",
  ]);
});

test("staying closed is one closing; opened and closed again are two", () => {
  const again = on("2026-03-21", "closed");
  expect(found([closed, again], [])).toHaveLength(1);
  const opened = on("2026-03-21", "drilled", { kind: "rework" });
  const last = on("2026-03-25", "closed");
  expect(found([closed, opened, last], [])).toHaveLength(2);
  expect(found([closed, opened, last], [heads("2026-03-24"), closing("2026-03-25")])).toHaveLength(
    1,
  );
});

test("a step without looks, or not closed, needs none", () => {
  expect(found([{ ...closed, step: "HS-08" }], [])).toEqual([]);
  expect(found([on("2026-03-20", "riveted")], [])).toEqual([]);
});

test("a private session keeps its finding private", () => {
  expect(found([{ ...closed, private: true }], [])[0]?.private).toBe(true);
});
