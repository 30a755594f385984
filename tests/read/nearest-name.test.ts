import { expect, test } from "vitest";
import { nearestName } from "../../src/read/nearest-name.ts";

const stages = ["laid out", "cut", "drilled", "clecoed", "deburred", "closed"];

test.each([
  ["drilld", "drilled"],
  ["drild", "drilled"],
  ["dirlled", "drilled"],
  ["Drilled", "drilled"],
  ["cutt", "cut"],
  ["ctu", "cut"],
  ["clsed", "closed"],
  ["laidout", "laid out"],
  ["x", undefined],
  ["", undefined],
  ["riveted", undefined],
  ["dull", undefined],
])("%s is nearest to %s", (typed, nearest) => {
  expect(nearestName(typed, stages)).toBe(nearest);
});

test("of two that are as near, the first declared", () => {
  expect(nearestName("W-3", ["W-1", "W-2"])).toBe("W-1");
});
