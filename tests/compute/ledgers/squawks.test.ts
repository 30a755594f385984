import { expect, test } from "vitest";
import { squawksLedger } from "../../../src/compute/ledgers/squawks.ts";
import { day, smallBuild, squawk } from "../../support/small-build.ts";

test("a squawk is open until it is closed, fixed or not", () => {
  const fixed = { date: "2026-03-15", text: "drove two longer rivets" };
  const closed = { date: "2026-03-16" };
  const squawks = [
    squawk(),
    squawk({ id: "S-2", fixed }),
    squawk({ id: "S-3", fixed, closed }),
    squawk({ id: "S-4", closed }),
  ];
  const states = squawksLedger(smallBuild({ days: [day({ squawks })] }));
  expect(states.map(({ standing }) => standing)).toEqual([
    "open",
    "fixed, not closed",
    "closed",
    "closed",
  ]);
});
