import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { DimensionError, quantityOf } from "../../../src/model/quantity.ts";
import { unitOf } from "../../../src/model/unit.ts";
import {
  computedText,
  formatAmount,
  formatInBoth,
  formatInchFraction,
  formatQuantity,
  formatSignificant,
} from "../../../src/present/format/quantity.ts";
import { quantity } from "../../support/typed-quantity.ts";

describe("formatQuantity", () => {
  test("as typed unless told otherwise", () => {
    expect(formatQuantity(quantity("0.1250 in"))).toBe("0.1250 in");
    expect(formatQuantity(quantity("No. 30"))).toBe("No. 30");
  });

  test("in another unit, exact or rounded", () => {
    expect(formatQuantity(quantity("1/8 in"), { unit: unitOf("mm") })).toBe("3.175 mm");
    expect(formatQuantity(quantity("1/8 in"), { unit: unitOf("mm"), places: 2 })).toBe("3.18 mm");
    expect(formatQuantity(quantity("No. 30"), { places: 3 })).toBe("0.129 in");
  });

  test("not in a unit of another dimension", () => {
    expect(() => formatQuantity(quantity("1 in"), { unit: unitOf("s") })).toThrow(DimensionError);
  });
});

describe("formatAmount", () => {
  test.each([
    ["0.0625", 3, "0.063"],
    ["-0.0625", 3, "-0.063"],
    ["0.06249", 3, "0.062"],
    ["-0.0004", 3, "0.000"],
    ["1/3", 4, "0.3333"],
    ["2/3", 0, "1"],
    ["999.5", 0, "1000"],
    ["12", 2, "12.00"],
  ])("%s to %i places is %s", (amount, places, text) => {
    expect(formatAmount(new Fraction(amount), places)).toBe(text);
  });
});

describe("formatSignificant", () => {
  test.each([
    ["1/3", 3, "0.333"],
    ["-1/3000", 3, "-0.000333"],
    ["12345.678", 3, "12346"],
    ["100", 3, "100"],
    ["0.25", 5, "0.25"],
    ["9.996", 3, "10"],
    ["0", 3, "0"],
  ])("%s to %i digits is %s", (amount, digits, text) => {
    expect(formatSignificant(new Fraction(amount), digits)).toBe(text);
  });
});

describe("formatInchFraction", () => {
  test.each([
    ["1.1875 in", "1 3/16 in"],
    ["0.09375 in", "3/32 in"],
    ["-1.5 in", "-1 1/2 in"],
    ["2 in", "2 in"],
    ["0 in", "0 in"],
    ["25.4 mm", "1 in"],
    ["1 ft", "12 in"],
  ])("%s is %s", (typed, text) => {
    expect(formatInchFraction(quantity(typed))).toBe(text);
  });

  test("nothing is rounded to a mark", () => {
    expect(formatInchFraction(quantity("0.19 in"))).toBeUndefined();
    expect(formatInchFraction(quantity("1/64 in"), 32)).toBeUndefined();
  });
});

test("formatInBoth", () => {
  expect(formatInBoth(quantity("0.125 in"), unitOf("mm"), 2)).toBe("0.125 in (3.18 mm)");
});

describe("computedText", () => {
  test.each([
    ["0.0625 in", "0.0625 in"],
    ["25 mm", "25 mm"],
    ["1/3 in", "about 0.3333 in"],
    ["0.123456789123 in", "about 0.1235 in"],
  ])("%s is %s", (typed, text) => {
    expect(computedText(quantity(typed))).toBe(text);
  });

  test("a degree stands at its number", () => {
    expect(computedText(quantityOf(new Fraction("0.1"), unitOf("°")))).toBe("0.1°");
    expect(computedText(quantityOf(new Fraction(2), unitOf("Δ°F")))).toBe("2 Δ°F");
  });
});
