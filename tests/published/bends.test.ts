// Sources: FAA AC 43.13-1B (8 Sep 1998), par. 4-56b(2), page 4-14 (open bend), and table 4-7
// (K); FAA-H-8083-31, the U-channel (setback and flats). All were read in copies. The allowance
// of the U-channel was not: what is compared with it here is arithmetic on the formula.

import { describe, expect, test } from "vitest";
import { reckoned, refusal } from "../support/reckoned.ts";

const channel = ["radius=0.16 in", "thickness=0.040 in", "angle=90 deg"];

describe("setback", () => {
  test("open 45-degree bend: 0.130 in", () => {
    const answer = reckoned("setback", "radius=0.25 in", "thickness=0.064 in", "angle=45 deg");
    expect(answer.result).toBeCloseTo(0.13, 3);
    expect(answer.factor).toBeCloseTo(0.41421, 5);
  });

  test("U-channel, 90 degrees: 0.200 in, exactly", () => {
    expect(reckoned("setback", ...channel).result).toBe(0.2);
  });
});

describe("K, table 4-7", () => {
  // The table cuts off after four figures instead of rounding: 60 degrees is 0.57735 and
  // printed 0.5773. So the exact value lies less than one unit of the last place above.
  test.each([
    [1, "0.0087"],
    [30, "0.2679"],
    [45, "0.4142"],
    [60, "0.5773"],
    [90, "1.000"],
    [120, "1.732"],
  ])("%s degrees: %s", (angle, printed) => {
    const { factor } = reckoned("setback", "radius=1 in", "thickness=1 in", `angle=${angle} deg`);
    const unit = 10 ** -(printed.split(".")[1]?.length ?? 0);
    expect(Number(factor)).toBeGreaterThanOrEqual(Number(printed));
    expect(Number(factor)).toBeLessThan(Number(printed) + unit);
  });
});

test("K, table 4-7: infinite at 180 degrees", () => {
  expect(refusal("setback", "radius=1 in", "thickness=1 in", "angle=180 deg")).toContain(
    "mold lines no longer meet",
  );
});

describe("U-channel", () => {
  const answer = reckoned("flat-pattern", "legs=1.00, 2.00, 1.00 in", ...channel);

  test("flats of 0.8, 1.6 and 0.8 in", () => {
    expect(answer.flats).toEqual([0.8, 1.6, 0.8]);
  });

  test("developed width, computed with the whole formula: 3.758 in", () => {
    expect(answer.allowance).toBeCloseTo(0.2791, 4);
    expect(answer.width).toBeCloseTo(3.758, 3);
    expect(answer.midlineAllowance).toBeCloseTo(0.2827, 4);
  });
});
