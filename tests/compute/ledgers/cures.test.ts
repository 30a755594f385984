import { describe, expect, test } from "vitest";
import { curesLedger } from "../../../src/compute/ledgers/cures.ts";
import type { Cure } from "../../../src/model/cure.ts";
import type { Session } from "../../../src/model/session.ts";
import { asOf, cure, day, moment, session, smallBuild } from "../../support/small-build.ts";

function state(sessions: readonly Session[], overrides: Partial<Cure> = {}, judged = "2026-03-20") {
  const dates = [...new Set(["2026-03-14", ...sessions.map(({ date }) => date)])].sort();
  const days = dates.map((date) =>
    day({
      date,
      sessions: sessions.filter((each) => each.date === date),
      cures: date === "2026-03-14" ? [cure(overrides)] : [],
    }),
  );
  const [first] = curesLedger(smallBuild({ days }), asOf(judged));
  if (!first) throw new Error("one cure was put in");
  return first;
}

describe("a cure is broken", () => {
  const on16 = { date: "2026-03-16", step: "HS-08" };
  test.each([
    ["by work that begins before it is ready", { ...on16, from: "20:09", to: "21:00" }, 1],
    ["not by work that begins when it is ready", { ...on16, from: "20:10", to: "21:00" }, 0],
    ["not by work on another step", { ...on16, step: "HS-07", from: "20:00", to: "21:00" }, 0],
    ["not by an inspection", { ...on16, kind: "inspect", from: "20:00", to: "21:00" }, 0],
    ["not by study", { ...on16, kind: "study", from: "20:00", to: "21:00" }, 0],
    ["by rework", { ...on16, kind: "rework", from: "20:00", to: "21:00" }, 1],
    ["by work with hours alone on a later day", on16, 1],
    ["not by hours alone on the day of the mix", { step: "HS-08" }, 0],
    ["not by hours alone a day later", { step: "HS-08", date: "2026-03-17" }, 0],
    ["not by the session of the mix", { step: "HS-08", from: "18:40", to: "21:05" }, 0],
    ["not by work that begins with the mix", { step: "HS-08", from: "20:10", to: "21:05" }, 0],
    ["by work that begins after the mix", { step: "HS-08", from: "20:11", to: "21:05" }, 1],
  ] as const)("%s", (_why, overrides, count) => {
    expect(state([session(overrides)]).brokenBy).toHaveLength(count);
  });

  test.each([
    ["20:11", 0],
    ["20:54", 0],
    ["20:55", 1],
  ])("with the joint closed at 20:55, by work that begins at %s: %i", (from, count) => {
    const closed = moment("2026-03-14 20:55");
    const work = session({ step: "HS-08", from, to: "21:30" });
    expect(state([work], { closed }).brokenBy).toHaveLength(count);
  });

  test.each([
    ["2026-03-14", 0],
    ["2026-03-15", 1],
    ["2026-03-17", 0],
  ])("with the joint closed, by hours alone on %s: %i", (date, count) => {
    const closed = moment("2026-03-14 20:55");
    expect(state([session({ step: "HS-08", date })], { closed }).brokenBy).toHaveLength(count);
  });

  test("by work after midnight that is entered under the day of the mix", () => {
    const begun = moment("2026-03-15 00:20");
    const work = session({ step: "HS-08", from: "23:00", to: "23:30" });
    expect(state([{ ...work, from: begun }]).brokenBy).toHaveLength(1);
  });

  test("by each of many sessions, in order", () => {
    const dates = Array.from(
      { length: 28 },
      (_, index) => `2026-03-${String(index + 1).padStart(2, "0")}`,
    );
    const work = dates.map((date) => session({ date, step: "HS-08", from: "10:00", to: "11:00" }));
    expect(state(work).brokenBy.map(({ date }) => date)).toEqual(["2026-03-15", "2026-03-16"]);
  });
});

test.each([
  ["2026-03-15", false],
  ["2026-03-16", true],
])("ready on the evening of the 16th, judged on %s: over is %s", (judged, over) => {
  expect(state([], {}, judged).over).toBe(over);
});

test("ready at midnight is not over on the day before", () => {
  expect(state([], { ready: moment("2026-03-16 00:00") }, "2026-03-15").over).toBe(false);
});
