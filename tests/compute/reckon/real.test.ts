import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import {
  cosine,
  isExact,
  minus,
  over,
  plus,
  tangentOfHalf,
  times,
} from "../../../src/compute/reckon/real.ts";

const third = new Fraction(1, 3);

describe.each([
  ["plus", plus, "5/6", 1 / 3 + 0.5],
  ["minus", minus, "-1/6", 1 / 3 - 0.5],
  ["times", times, "1/6", 1 / 6],
  ["over", over, "2/3", 2 / 3],
] as const)("%s", (_, put, exact, number) => {
  test("two exact numbers stay exact", () => {
    const value = put(third, new Fraction(1, 2));
    expect(isExact(value) && value.toFraction()).toBe(exact);
  });

  test("one inexact number makes the whole inexact", () => {
    expect(put(third, 0.5)).toBeCloseTo(number, 15);
    expect(isExact(put(1 / 3, new Fraction(1, 2)))).toBe(false);
  });
});

test("nothing is divided by zero", () => {
  expect(() => over(third, new Fraction(0))).toThrow(RangeError);
  expect(() => over(third, 0)).toThrow(RangeError);
});

test("cosines that are rational numbers are exact", () => {
  const exact = [0, 60, 90, 120, 180].map((degrees) => cosine(new Fraction(degrees)));
  expect(exact.every(isExact)).toBe(true);
  expect(exact.map(Number)).toEqual([1, 0.5, 0, -0.5, -1]);
  expect(cosine(new Fraction(45))).toBeCloseTo(Math.SQRT1_2, 15);
});

test("half of 90 degrees has a tangent of exactly 1", () => {
  expect(isExact(tangentOfHalf(new Fraction(90)))).toBe(true);
  expect(tangentOfHalf(new Fraction(60))).toBeCloseTo(1 / Math.sqrt(3), 15);
});
