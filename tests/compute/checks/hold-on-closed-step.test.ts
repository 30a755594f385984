import { expect, test } from "vitest";
import type { Day } from "../../../src/model/day.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, hold, release, session, smallBuild } from "../../support/small-build.ts";

const closing = session({ date: "2026-03-20", step: "HS-08", stage: "closed" });
const found = (later: Partial<Day> = {}, overrides = {}) =>
  foundBy(
    "hold-on-closed-step",
    smallBuild({
      days: [
        day({ holds: [hold(overrides)] }),
        day({ date: "2026-03-20", sessions: [closing] }),
        day({ date: "2026-03-21", ...later }),
      ],
    }),
  );

test("a hold nobody released on a closed step is found", () => {
  const [one] = found({}, { count: 24, where: "lower flange" });
  expect(one).toMatchObject({
    severity: "finding",
    message: "hold `H-1` (24 clecos) is still on `HS-08`, which is closed",
    notes: ["where: lower flange", "`HS-08` was closed on 2026-03-20"],
  });
  expect(found()[0]?.message).toBe("hold `H-1` (clecos) is still on `HS-08`, which is closed");
});

test("a release heals it, and so does opening the step again", () => {
  expect(found({ releases: [release({ date: "2026-03-21", step: "HS-08" })] })).toEqual([]);
  const reopened = session({ date: "2026-03-21", step: "HS-08", stage: "drilled", kind: "rework" });
  expect(found({ sessions: [reopened] })).toEqual([]);
});

test("a hold on a step that is not closed is how work goes", () => {
  expect(found({}, { step: "HS-07" })).toEqual([]);
  expect(found({}, { step: "HS-99" })).toEqual([]);
});
