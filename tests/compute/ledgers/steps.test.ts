import { expect, test } from "vitest";
import { stepsLedger } from "../../../src/compute/ledgers/steps.ts";
import { day, inspection, session, smallBuild } from "../../support/small-build.ts";

test("a step nobody worked on has its looks to come and nothing else", () => {
  const states = stepsLedger(smallBuild());
  expect([...states.keys()]).toEqual(["HS-07", "HS-08"]);
  expect(states.get("HS-07")).toEqual({
    step: "HS-07",
    looks: [
      { look: "driven heads", done: false },
      { look: "before closing", done: false },
    ],
  });
});

test("the stage is the last one typed; work without a stage leaves it", () => {
  const first = session({ step: "HS-08", stage: "drilled", date: "2026-03-10" });
  const second = session({ step: "HS-08", stage: "deburred", date: "2026-03-12" });
  const third = session({ step: "HS-08", stage: "primed", date: "2026-03-12" });
  const last = session({ step: "HS-08", date: "2026-03-15" });
  const days = [
    day({ date: "2026-03-10", sessions: [first] }),
    day({ date: "2026-03-12", sessions: [second, third] }),
    day({ date: "2026-03-15", sessions: [last] }),
  ];
  expect(stepsLedger(smallBuild({ days })).get("HS-08")).toEqual({
    step: "HS-08",
    stage: "primed",
    stageDate: "2026-03-12",
    looks: [],
    firstDate: "2026-03-10",
    lastDate: "2026-03-15",
  });
});

test("the newest inspection of a look decides", () => {
  const clear = inspection({ date: "2026-03-10" });
  const held = inspection({ date: "2026-03-12", result: "held" });
  const other = inspection({ date: "2026-03-12", look: "before closing" });
  const days = [
    day({ date: "2026-03-10", inspections: [clear] }),
    day({ date: "2026-03-12", inspections: [held, other] }),
  ];
  expect(stepsLedger(smallBuild({ days })).get("HS-07")?.looks).toEqual([
    { look: "driven heads", inspection: held, done: false },
    { look: "before closing", inspection: other, done: true },
  ]);
});
