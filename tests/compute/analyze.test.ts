import { expect, test } from "vitest";
import { analyze } from "../../src/compute/analyze.ts";
import { asOf, day, deviation, session, smallBuild, span } from "../support/small-build.ts";

test("an empty build has nothing wrong with it", () => {
  const analysis = analyze(smallBuild(), asOf("2026-03-14"));
  expect(analysis.diagnostics).toEqual([]);
  expect(analysis.asOf.date).toBe("2026-03-14");
  expect([...analysis.steps.keys()]).toEqual(["HS-07", "HS-08"]);
});

test("diagnostics of all checks come in order of place", () => {
  const first = span({ file: "content/days/2026-03-01.md", line: 9 });
  const days = [
    day({ date: "2026-03-02", deviations: [deviation({ span: span({ line: 4 }) })] }),
    day({
      date: "2026-03-01",
      sessions: [session({ minutes: 1441, minutesSpan: first })],
      deviations: [deviation({ id: "D-1", span: { ...first, line: 12 } })],
    }),
  ];
  const { build, diagnostics } = analyze(smallBuild({ days }), asOf("2026-03-14"));
  expect(build.days.map(({ date }) => date)).toEqual(["2026-03-01", "2026-03-02"]);
  expect(diagnostics.map(({ code, span: { line } }) => [code, line])).toEqual([
    ["more-than-a-day", 9],
    ["deviation-without-disposition", 12],
    ["deviation-without-disposition", 4],
  ]);
});

test("what stands in a private day is private", () => {
  const file = "content/days/2026-03-14.md";
  const deviations = [deviation({ span: span({ file }) })];
  const found = (hidden: boolean) =>
    analyze(smallBuild({ days: [day({ private: hidden, deviations })] }), asOf("2026-03-14"))
      .diagnostics[0]?.private;
  expect(found(true)).toBe(true);
  expect(found(false)).toBeUndefined();
});

test("two entries for one date keep their order", () => {
  const days = [day({ title: "first" }), day({ title: "second" })];
  const { build } = analyze(smallBuild({ days }), asOf("2026-03-14"));
  expect(build.days.map(({ title }) => title)).toEqual(["first", "second"]);
});
