// Sources: TM 10-3930-664-24, page 3-41, "Housing face alignment check", step 5 and 6: dial
// readings at 12, 3, 6 and 9 o'clock, their total indicator reading, and its limit. TM
// 5-3810-305-23 (15 March 2011), work package 0029, "Determine total indicator reading": the
// same with its millimetres. Both are examples of the arithmetic, not limits for an aircraft.
// https://constructionforklifts.tpub.com/TM-10-3930-664-24/css/TM-10-3930-664-24_546.htm
// https://constructioncranes.tpub.com/TM-5-3810-305-23/TM-5-3810-305-2300290.html
// Status: read. Open the pages again before you change a value.

import { expect, test } from "vitest";
import { figuresOf } from "../../src/compute/figure.ts";
import { judge } from "../../src/compute/judge.ts";
import { quantity, reading } from "../support/small-measurements.ts";

const clock = ["0.000 in", "0.003 in", "-0.002 in", "0.003 in"];

test("total indicator reading of +0.000, +0.003, -0.002 and +0.003 in is 0.005 in", () => {
  const [runOut] = figuresOf("run-out", [reading(clock)]);
  expect(runOut?.quantity.typed).toBe("0.005 in");
});

test("and shall not exceed 0.008 in", () => {
  const [runOut] = figuresOf("run-out", [reading(clock)]);
  const within = { upper: quantity("0.008 in") };
  if (!runOut) throw new Error("four readings have a run-out");
  expect(judge(runOut.quantity, within).kind).toBe("within");
  const [more] = figuresOf("run-out", [reading(["0.004 in", "-0.005 in"])]);
  if (!more) throw new Error("two readings have a run-out");
  expect(judge(more.quantity, within).kind).toBe("above");
});

test("in millimetres, as printed: 0.08 and -0.05 are 0.13 apart", () => {
  const printed = ["0.00 mm", "0.08 mm", "-0.05 mm", "0.08 mm"];
  expect(figuresOf("run-out", [reading(printed)])[0]?.quantity.typed).toBe("0.13 mm");
});
