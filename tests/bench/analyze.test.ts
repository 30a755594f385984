import { expect, test } from "vitest";
import { analyze } from "../../src/compute/analyze.ts";
import { hoursLedger } from "../../src/compute/ledgers/hours.ts";
import type { Build } from "../../src/model/build.ts";
import { addDays } from "../../src/model/calendar.ts";
import {
  asOf,
  cure,
  day,
  hold,
  inspection,
  moment,
  release,
  session,
  smallBuild,
} from "../support/small-build.ts";

// All of it on two steps, which is worse than any real journal for whatever looks through a step.
function largeBuild(days: number): Build {
  return smallBuild({
    days: Array.from({ length: days }, (_, index) => {
      const date = addDays("2010-01-01", index);
      const stage = index % 3 === 0 ? "closed" : "riveted";
      return day({
        date,
        sessions: [
          session({ date, step: "HS-07", from: "18:00", to: "19:00", stage }),
          session({ date, step: "HS-08", from: "19:00", to: "20:00" }),
        ],
        cures: [
          cure({
            date,
            mixed: moment(`${date} 20:00`),
            ready: moment(`${addDays(date, 2)} 20:00`),
          }),
        ],
        holds: [hold({ id: `${date}.h1`, date, step: "HS-07" })],
        releases: [release({ date, step: "HS-07" })],
        inspections: [inspection({ date }), inspection({ date, look: "before closing" })],
      });
    }),
  });
}

function fastest(runs: number, work: () => void): number {
  return Math.min(
    ...Array.from({ length: runs }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );
}

test("the hours of 10,000 sessions take well under 100 ms", () => {
  const build = largeBuild(5000);
  expect(fastest(5, () => hoursLedger(build))).toBeLessThan(100);
});

test("four times the days take nowhere near sixteen times as long to analyze", () => {
  const judged = asOf("2040-01-01");
  const [small, large] = [largeBuild(1250), largeBuild(5000)].map((build) =>
    fastest(5, () => analyze(build, judged)),
  );
  expect((large ?? 0) / (small ?? 0)).toBeLessThan(10);
});
