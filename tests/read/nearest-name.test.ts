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

test("a long name of which a third differs is another name, not a slip", () => {
  const photos = ["2025-09-17/edge-0262.jpg", "2025-09-14/sheet-hs-02.jpg"];
  expect(nearestName("2025-09-14/sheet-hs02.jpg", photos)).toBe("2025-09-14/sheet-hs-02.jpg");
  expect(nearestName("2025-09-14/sheet-hs02.jpg", photos.slice(0, 1))).toBeUndefined();
});
