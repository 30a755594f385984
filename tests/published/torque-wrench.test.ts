// Torque wrench with an adapter, worked cases of four manuals; all were read in page-by-page
// copies. Drag: AC 43.13-1B (8 Sep 1998), table 7-1 and par. 7-40d, arithmetic on the rows.

import { describe, expect, test } from "vitest";
import { reckoned } from "../support/reckoned.ts";

describe("adapter that lengthens the lever", () => {
  test.each([
    // wanted         wrench    adapter    printed          source
    ["100 lbf·in", "12 in", "6 in", 66.7, 1], // NAVEDTRA 14315, figure 3-45
    ["300 lbf·in", "10 in", "4 in", 214, 0], // Army TM 1-1500-204-23-9, figure 8-16
    ["30 lbf·ft", "1 ft", "0.25 ft", 24, 0], // a light aeroplane's maintenance manual, par. 2-90
  ])("%s, L %s, A %s: set %s", (torque, wrench, adapter, printed, places) => {
    const answer = reckoned("torque", `torque=${torque}`, `wrench=${wrench}`, `adapter=${adapter}`);
    expect(answer.result).toBeCloseTo(Number(printed), places);
  });

  // Army TM 9-254: effective length L + A cos(angle).
  test.each([
    ["0 deg", "6 in", 200 / 3],
    ["90 deg", "6 in", 100],
    ["180 deg", "6 in", 200],
    ["0 deg", "-6 in", 200],
    ["60 deg", "6 in", 80],
    ["45 deg", "6 in", 1200 / (12 + 6 * Math.SQRT1_2)],
  ])("adapter at %s, %s", (angle, adapter, setting) => {
    const answer = reckoned(
      "torque",
      "torque=100 lbf·in",
      "wrench=12 in",
      `adapter=${adapter}`,
      `angle=${angle}`,
    );
    expect(answer.result).toBeCloseTo(setting, 9);
  });
});

describe("drag is added to both ends and to the maximum", () => {
  test.each([
    ["1/4-28", "tension", "12 lbf·in", 62, 82, 112],
    ["10-32", "shear", "6 lbf·in", 18, 21, 31],
    ["1/4-28", "tension", "1 lbf·ft", 62, 82, 112],
  ])("%s with %s nut, drag %s: %s to %s", (thread, nut, drag, low, high, max) => {
    expect(reckoned("torque", `thread=${thread}`, `nut=${nut}`, `drag=${drag}`)).toMatchObject({
      low,
      high,
      max,
      unit: "lbf·in",
    });
  });

  // Table 7-1, columns "max".
  test.each([
    ["8-36", 20, 12],
    ["10-32", 40, 25],
    ["1/4-28", 100, 60],
    ["5/16-24", 225, 140],
    ["3/8-24", 390, 240],
    ["1-14", 10_000, 6000],
    ["7/8-9", 4600, 2700],
  ])("%s: never above %s with a tension nut, %s with a shear nut", (thread, tension, shear) => {
    expect(reckoned("torque", `thread=${thread}`, "nut=tension").max).toBe(tension);
    expect(reckoned("torque", `thread=${thread}`, "nut=shear").max).toBe(shear);
  });
});
