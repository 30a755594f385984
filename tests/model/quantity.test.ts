import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import {
  add,
  asTyped,
  compareQuantities,
  convert,
  DimensionError,
  exactText,
  inBaseUnits,
  quantityOf,
  scale,
  stepBetween,
  subtract,
} from "../../src/model/quantity.ts";
import { unitOf } from "../../src/model/unit.ts";
import { quantity } from "../support/typed-quantity.ts";

test("the text stays as typed, the amount is exact", () => {
  expect(asTyped(quantity("0.1250 in"))).toBe("0.1250 in");
  expect(inBaseUnits(quantity("0.1250 in")).equals("0.003175")).toBe(true);
});

describe("exactText", () => {
  test.each([
    ["3/32", "0.09375"],
    ["-1/8", "-0.125"],
    ["5/9", "5/9"],
    ["-5/9", "-5/9"],
    ["0", "0"],
    ["12", "12"],
    ["-100", "-100"],
    ["1/1000000", "0.000001"],
    ["1234567/100", "12345.67"],
  ])("%s is %s", (amount, text) => {
    expect(exactText(new Fraction(amount))).toBe(text);
  });
});

test("quantityOf writes what nobody typed", () => {
  expect(quantityOf(new Fraction(3, 32), unitOf("in")).typed).toBe("0.09375 in");
});

describe("compareQuantities", () => {
  test.each([
    ["25.4 mm", "1 in", 0],
    ["3/32 in", "0.09375 in", 0],
    ["0.0937499999999999999999 in", "3/32 in", -1],
    ["77 °F", "25 °C", 0],
    ["77.1 °F", "25 °C", 1],
    ["18 Δ°F", "10 Δ°C", 0],
    ["2 lbf·ft", "24 lbf·in", 0],
  ])("%s against %s is %i", (a, b, order) => {
    expect(Math.sign(compareQuantities(quantity(a), quantity(b)))).toBe(order);
  });

  test.each([
    ["1 in", "1 lbf·in"],
    ["18 °F", "18 Δ°F"],
    ["1 lb", "1 lbf"],
  ])("%s does not compare with %s", (a, b) => {
    expect(() => compareQuantities(quantity(a), quantity(b))).toThrow(DimensionError);
  });
});

test("a DimensionError tells both dimensions", () => {
  const error = new DimensionError("length", "torque");
  expect([error.message, error.left, error.right]).toEqual([
    "a length and a torque cannot be compared",
    "length",
    "torque",
  ]);
});

test("stepBetween is signed, in base units, without offsets", () => {
  expect(stepBetween(quantity("70 °F"), quantity("71 °F")).equals("5/9")).toBe(true);
  expect(stepBetween(quantity("2 mm"), quantity("1 mm")).equals("-1/1000")).toBe(true);
  expect(() => stepBetween(quantity("1 in"), quantity("1 s"))).toThrow(DimensionError);
});

describe("convert", () => {
  test("its own unit keeps the text", () => {
    expect(convert(quantity("0.1250 in"), unitOf("in")).typed).toBe("0.1250 in");
  });

  test("another unit writes the exact amount", () => {
    expect(convert(quantity("1 mm"), unitOf("in")).typed).toBe("5/127 in");
    expect(convert(quantity("25 °C"), unitOf("°F")).typed).toBe("77 °F");
  });

  // A rise of 18 °F is one of 10 °C, not -7.8 °C.
  test("a temperature and a difference are not the same", () => {
    expect(convert(quantity("18 Δ°F"), unitOf("Δ°C")).typed).toBe("10 Δ°C");
    expect(() => convert(quantity("18 °F"), unitOf("Δ°C"))).toThrow(DimensionError);
  });
});

describe("add and subtract", () => {
  test.each([
    ["1/4 in", "6.35 mm", "0.5 in"],
    ["70 °F", "10 Δ°C", "88 °F"],
    ["10 Δ°C", "70 °F", "88 °F"],
    ["10 Δ°C", "18 Δ°F", "20 Δ°C"],
    ["50 lbf·in", "1 lbf·ft", "62 lbf·in"],
  ])("%s and %s make %s", (a, b, sum) => {
    expect(add(quantity(a), quantity(b)).typed).toBe(sum);
  });

  test.each([
    ["1 in", "25.4 mm", "0 in"],
    ["90 °F", "72 °F", "18 Δ°F"],
    ["90 °F", "10 Δ°C", "72 °F"],
    ["20 Δ°C", "18 Δ°F", "10 Δ°C"],
  ])("%s less %s leaves %s", (a, b, rest) => {
    expect(subtract(quantity(a), quantity(b)).typed).toBe(rest);
  });

  test.each([
    ["70 °F", "70 °F"],
    ["1 in", "1 lb"],
    ["1 in", "1 Δ°F"],
  ])("%s and %s do not add", (a, b) => {
    expect(() => add(quantity(a), quantity(b))).toThrow("cannot be added");
  });

  test.each([
    ["10 Δ°F", "70 °F"],
    ["1 in", "1 lb"],
  ])("%s less %s means nothing", (a, b) => {
    expect(() => subtract(quantity(a), quantity(b))).toThrow("cannot be subtracted");
  });
});

test("scale multiplies in the own unit, but no temperature", () => {
  expect(scale(quantity("3/32 in"), new Fraction(2)).typed).toBe("0.1875 in");
  expect(scale(quantity("9 Δ°F"), new Fraction(2)).typed).toBe("18 Δ°F");
  expect(() => scale(quantity("60 °F"), new Fraction(2))).toThrow("cannot be multiplied");
});
