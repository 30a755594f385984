// Source: NIST Special Publication 811, Guide for the Use of the International System of Units,
// appendix B.8, factors as printed (seven digits, fewer where exact), as transcribed factor by
// factor in the package NISTunits 1.0.1.

import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { convert } from "../../src/model/quantity.ts";
import { unitOf } from "../../src/model/unit.ts";
import { formatSignificant } from "../../src/present/format/quantity.ts";
import { quantity } from "../support/typed-quantity.ts";

const printed = [
  // from      to     factor as printed
  ["in", "m", "0.0254"],
  ["ft", "m", "0.3048"],
  ["yd", "m", "0.9144"],
  ["mi", "m", "1609.344"],
  ["nmi", "m", "1852"],
  ["mil", "mm", "0.0254"],
  ["lb", "kg", "0.4535924"],
  ["oz", "kg", "0.02834952"],
  ["lbf", "N", "4.448222"],
  ["ozf", "N", "0.2780139"],
  ["lbf·ft", "N·m", "1.355818"],
  ["lbf·in", "N·m", "0.1129848"],
  ["ozf·in", "N·m", "0.007061552"],
  ["psi", "Pa", "6894.757"],
  ["gal", "L", "3.785412"],
  ["imp gal", "L", "4.54609"],
  ["fl oz", "mL", "29.57353"],
  ["imp fl oz", "mL", "28.41306"],
  ["in²", "m²", "0.00064516"],
  ["lb/gal", "kg/L", "0.1198264"],
  ["Δ°F", "Δ°C", "0.5555556"],
] as const;

describe("factors of SP 811, appendix B.8", () => {
  test.each(printed)("1 %s is %s in %s", (from, to, factor) => {
    const { amount } = convert(quantity(`1 ${from}`), unitOf(to));
    expect(formatSignificant(amount, 7)).toBe(factor);
  });
});

// The exact values behind the printed ones: the yard and pound of 1959, standard gravity of
// 9.80665 m/s², and the gallon of 231 cubic inches.
describe("exact factors", () => {
  test.each([
    ["lbf", "N", "4.4482216152605"],
    ["lbf·ft", "N·m", "1.3558179483314004"],
    ["lbf·in", "N·m", "0.1129848290276167"],
    ["gal", "L", "3.785411784"],
    ["fl oz", "mL", "29.5735295625"],
    ["oz", "kg", "0.028349523125"],
    ["lb", "kg", "0.45359237"],
    ["ozf", "N", "0.27801385095378125"],
    ["imp fl oz", "mL", "28.4130625"],
  ])("1 %s in %s is %s", (from, to, exact) => {
    expect(convert(quantity(`1 ${from}`), unitOf(to)).amount.equals(exact)).toBe(true);
  });

  test.each([
    ["ozf·in", "N·m", 15, "0.00706155181422604"],
    ["psi", "Pa", 15, "6894.75729316836"],
    ["lb/gal", "kg/L", 15, "0.119826427316897"],
  ])("1 %s in %s, to %i digits, is %s", (from, to, digits, exact) => {
    expect(formatSignificant(convert(quantity(`1 ${from}`), unitOf(to)).amount, digits)).toBe(
      exact,
    );
  });

  test("12 lbf·in are 1 lbf·ft", () => {
    expect(convert(quantity("12 lbf·in"), unitOf("lbf·ft")).typed).toBe("1 lbf·ft");
  });

  test("a foot is the international one, not the survey foot of 1200/3937 m", () => {
    const { amount } = convert(quantity("1 ft"), unitOf("m"));
    expect(amount.equals(new Fraction(1200, 3937))).toBe(false);
    expect(amount.equals("0.3048")).toBe(true);
  });
});

describe("worked conversions, from the exact factors", () => {
  test.each([
    ["1/8 in", "mm", "3.175 mm"],
    ["0.032 in", "mm", "0.8128 mm"],
    ["77 °F", "°C", "25 °C"],
    ["-40 °F", "°C", "-40 °C"],
    ["0 °C", "K", "273.15 K"],
    ["25 °C", "°F", "77 °F"],
    ["18 Δ°F", "Δ°C", "10 Δ°C"],
  ])("%s in %s is %s", (typed, unit, result) => {
    expect(convert(quantity(typed), unitOf(unit)).typed).toBe(result);
  });

  test.each([
    ["50 lbf·in", "N·m", 6, "5.64924"],
    ["25 lbf·ft", "N·m", 7, "33.89545"],
    ["5.9 lb/US gal", "kg/L", 6, "0.706976"],
  ])("%s in %s to %i digits is %s", (typed, unit, digits, result) => {
    expect(formatSignificant(convert(quantity(typed), unitOf(unit)).amount, digits)).toBe(result);
  });

  // SP 811: K = (°F + 459.67)/1.8
  test("°F to K", () => {
    const { amount } = convert(quantity("61 °F"), unitOf("K"));
    expect(amount.equals(new Fraction("520.67").div("1.8"))).toBe(true);
  });
});
