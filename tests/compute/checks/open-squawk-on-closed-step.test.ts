import { expect, test } from "vitest";
import type { Squawk } from "../../../src/model/squawk.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, session, smallBuild, squawk } from "../../support/small-build.ts";

const fixed = { date: "2026-03-15", text: "drove two longer ones" };
const closing = session({ date: "2026-03-20", step: "HS-08", stage: "closed" });

function found(overrides: Partial<Squawk>) {
  const days = [
    day({ squawks: [squawk(overrides)] }),
    day({ date: "2026-03-20", sessions: [closing] }),
  ];
  return foundBy("open-squawk-on-closed-step", smallBuild({ days }));
}

test("an open squawk on a closed step is found", () => {
  const [one] = found({ step: "HS-08" });
  expect(one).toMatchObject({
    severity: "finding",
    message: "squawk `S-004` is open, but `HS-08` is closed",
    notes: ["found: two tails short", "`HS-08` was closed on 2026-03-20"],
  });
  expect(one?.help).toHaveLength(2);
});

test("fixed is not closed", () => {
  const [one] = found({ step: "HS-08", fixed });
  expect(one?.message).toBe("squawk `S-004` is fixed, not closed, but `HS-08` is closed");
  expect(one?.notes[1]).toBe("fixed on 2026-03-15: drove two longer ones");
  expect(one?.help).toHaveLength(1);
});

test("a closed one, one on an open step, and one on no step are not", () => {
  expect(found({ step: "HS-08", fixed, closed: { date: "2026-03-16" } })).toEqual([]);
  expect(found({ step: "HS-07" })).toEqual([]);
  expect(found({})).toEqual([]);
});
