import { describe, expect, test } from "vitest";
import { guardFor, inspectionRisk } from "../../src/compute/inspection-risk.ts";
import { normalTail } from "../../src/compute/normal-distribution.ts";
import { reckoned } from "../support/reckoned.ts";

// Source: JCGM 106:2012, 9.5.4 (ball bearings), as reproduced in the notebook "Risk - Ball
// Bearing" of the open program suncal (Sandia National Laboratories). In micrometres.
describe("the ball bearings of JCGM 106, 9.5.4", () => {
  const process = { kind: "gamma", shape: 4, scale: 0.25 } as const;
  const plan = { upper: 2, u: 0.25 };

  test("4.2 % are made outside the limit", () => {
    expect(inspectionRisk(process, { ...plan, guard: 0 }).nonConforming).toBeCloseTo(0.04238, 5);
  });

  test("simple acceptance passes 0.8 % wrongly", () => {
    expect(inspectionRisk(process, { ...plan, guard: 0 }).wronglyAccepted).toBeCloseTo(0.00802, 5);
  });

  test("a guard band of 0.33 µm brings that down to 0.1 %", () => {
    const guard = guardFor(process, plan, 0.001) ?? Number.NaN;
    expect(guard).toBeCloseTo(0.32817, 5);
    expect(plan.upper - guard).toBeCloseTo(1.67183, 5);
  });
});

// Source: suncal, test/test_risk.py, citing Deaver: process spread 4, measuring spread 1,
// limits ±8, printed to three places.
test("a two-sigma process measured four times better: 0.008 passed, 0.015 rejected", () => {
  const risk = inspectionRisk(
    { kind: "normal", mean: 0, sd: 4 },
    { lower: -8, upper: 8, u: 1, guard: 0 },
  );
  expect(risk.wronglyAccepted).toBeCloseTo(0.008, 3);
  expect(risk.wronglyRejected).toBeCloseTo(0.015, 3);
});

// The same file, specific process risk: Cpk with limits 9 and 11, spread 0.4.
test.each([
  ["10", 0.833333],
  ["10.5", 0.416667],
])("a mean of %s has a Cpk of %d", (mean, cpk) => {
  const limits = ["at-least=9 mm", "at-most=11 mm"];
  const process = [`mean=${mean} mm`, "spread=0.4 mm", "measuring=0.001 mm"];
  expect(reckoned("inspection-risk", ...process, ...limits).cpk).toBeCloseTo(cpk, 6);
});

// Source: draft RP-19, table of unconditional false acceptance at 4:1, no guard band, as quoted
// in suncal, test/test_risk.py. Per cent, by the probability that a part is in tolerance; 4:1 is
// the spread of the parts to that of the measurements.
test.each([
  [0.6, 4.8386],
  [0.7, 3.9223],
  [0.8, 2.8558],
  [0.9, 1.6],
  [0.95, 0.871],
  [0.99, 0.1999],
])("in tolerance %d: %d per cent falsely accepted", (inTolerance, percent) => {
  const sd = 1 / quantile((1 + inTolerance) / 2);
  const risk = inspectionRisk(
    { kind: "normal", mean: 0, sd },
    { lower: -1, upper: 1, u: sd / 4, guard: 0 },
  );
  expect(risk.wronglyAccepted * 100).toBeCloseTo(percent, 3);
});

test("no band brings the risk to nothing, and none is needed when the risk is small", () => {
  const plan = { upper: 1, u: 0.1 };
  expect(guardFor({ kind: "normal", mean: 0, sd: 0.1 }, plan, 0.001)).toBe(0);
  expect(guardFor({ kind: "normal", mean: 0, sd: 1 }, { upper: 1, u: 5 }, 1e-30)).toBeUndefined();
});

test("a gamma process of shape 1 is an exponential one, from zero on", () => {
  const risk = inspectionRisk(
    { kind: "gamma", shape: 1, scale: 1 },
    { upper: 1, u: 0.01, guard: 0 },
  );
  expect(risk.nonConforming).toBeCloseTo(Math.exp(-1), 7);
});

function quantile(probability: number): number {
  let low = 0;
  let high = 10;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (normalTail(middle) > 1 - probability) low = middle;
    else high = middle;
  }
  return low;
}
