// Sources beside each case. What says `computed` is arithmetic on a rule that was read.

import { describe, expect, test } from "vitest";
import { reckoned } from "../support/reckoned.ts";

describe("a published schedule: Army TM 1-1520-240-BD, adhesive system 5", () => {
  test.each([
    ["70 °F", 24],
    ["104 °F", 11],
    ["170 °F", 2],
  ])("at %s: %s h", (temperature, hours) => {
    const answer = reckoned("cure", "material=adhesive-5", `temperature=${temperature}`);
    expect(answer).toMatchObject({ result: hours, unit: "h" });
  });
});

describe("epoxy: every 18 °F above 72 °F halve working time (an epoxy maker's note); computed", () => {
  test.each([
    ["90 °F", 30],
    ["108 °F", 15],
    ["54 °F", 120],
    ["72 °F", 60],
    ["81 °F", 60 / Math.SQRT2],
  ])("60 min at 72 °F is at %s", (temperature, minutes) => {
    const answer = reckoned(
      "cure",
      "material=epoxy",
      "time=60 min",
      "at=72 °F",
      `temperature=${temperature}`,
    );
    expect(answer.result).toBeCloseTo(minutes, 9);
  });
});

test("the dash number of a sealant is its application time: class B-2, 2 h (NAVEDTRA 14315)", () => {
  expect(reckoned("cure", "material=sealant", "class=B-2")).toMatchObject({ result: 2, unit: "h" });
});

describe("half of the original shelf life for each pass: USAF TO 1-1-700, par. 12.8; computed", () => {
  test("9 months from 1 March: 1 December, middle of April, 1 September", () => {
    const answer = reckoned("shelf-life", "made=2025-03-01", "life=9 months", "passes=2");
    expect(answer.expiries).toEqual(["2025-12-01", "2026-04-16", "2026-09-01"]);
    expect(answer.expiry).toBe("2026-09-01");
  });
});
