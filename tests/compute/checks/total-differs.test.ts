import { expect, test } from "vitest";
import type { Assertion } from "../../../src/model/day.ts";
import { foundBy } from "../../support/found-by.ts";
import { assertion, day, session, smallBuild, span } from "../../support/small-build.ts";

function found(...assertions: readonly (readonly [date: string, Partial<Assertion>])[]) {
  const worked = (date: string) => [
    session({ date, who: ["ada", "jon"] }),
    session({ date, assembly: "wing", minutes: 30 }),
    session({ date, kind: "study", minutes: 500 }),
  ];
  const days = ["2026-03-01", "2026-03-02", "2026-03-03"].map((date) =>
    day({
      date,
      sessions: worked(date),
      assertions: assertions.filter(([on]) => on === date).map(([, each]) => assertion(each)),
    }),
  );
  return foundBy("total-differs", smallBuild({ days }));
}

test("totals up to and including the day hold, study left out", () => {
  expect(
    found(
      ["2026-03-01", { minutes: 150 }],
      ["2026-03-02", { minutes: 300 }],
      ["2026-03-02", { of: "stabilizer", minutes: 240 }],
      ["2026-03-02", { of: "empennage", minutes: 240 }],
      ["2026-03-03", { of: "wing", minutes: 90 }],
      ["2026-03-03", { of: "rudder", minutes: 0 }],
    ),
  ).toEqual([]);
});

test("too much, with the last one that held", () => {
  const [one, ...more] = found(
    ["2026-03-01", { minutes: 150, span: span({ file: "content/days/2026-03-01.md", line: 9 }) }],
    ["2026-03-03", { minutes: 525 }],
  );
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: "error",
    message: "the total up to 2026-03-03 is asserted as 8:45, but the entries add up to 7:30",
    label: "1:15 too much",
    notes: [
      "the last assertion of the total that holds: 2:30 on 2026-03-01 (content/days/2026-03-01.md:9)",
      "entered since then: 5:00",
    ],
  });
  expect(one?.help[0]).toBe(
    "look for a session missing or changed after 2026-03-01, or correct the assertion",
  );
});

test("too little, with none before", () => {
  const [one] = found(["2026-03-02", { of: "wing", minutes: 59 }]);
  expect(one).toMatchObject({
    message: "`wing` up to 2026-03-02 is asserted as 0:59, but the entries add up to 1:00",
    label: "0:01 too little",
    notes: ["no earlier assertion of `wing` holds"],
  });
});

test("hours on an assembly that was never declared count in the total", () => {
  const days = [
    day({
      sessions: [session({ assembly: "float" })],
      assertions: [assertion(), assertion({ of: "float" })],
    }),
  ];
  expect(foundBy("total-differs", smallBuild({ days }))).toEqual([]);
});
