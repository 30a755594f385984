// Geometry, computed and not published: the chord of an arc, angle = 2 asin(chord / 2 r).

import { expect, test } from "vitest";
import { reckoned } from "../support/reckoned.ts";

test("4.0 in at 12.0 in from the hinge are 19.19 degrees, not the 19.10 of a small angle", () => {
  const answer = reckoned("travel", "chord=4.0 in", "radius=12.0 in");
  expect(answer.result).toBeCloseTo(19.19, 2);
});
