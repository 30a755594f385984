import { describe, expect, test } from "vitest";
import { interpolate } from "../../src/compute/interpolate.ts";
import { DimensionError } from "../../src/model/quantity.ts";
import { quantity } from "../support/typed-quantity.ts";

const column = [
  { at: quantity("40 °F"), value: quantity("52 lbf") },
  { at: quantity("60 °F"), value: quantity("60.0 lbf") },
  { at: quantity("90 °F"), value: quantity("70 lbf") },
];
const at = (typed: string) => interpolate(column, quantity(typed))?.typed;

test.each([
  ["53 °F", "57.2 lbf"],
  ["50 °F", "56 lbf"],
  ["70 °F", "63 1/3 lbf"], // no decimal ends here, and nothing is rounded
  ["10 °C", "56 lbf"], // 50 °F
])("at %s it is %s", (typed, value) => {
  expect(at(typed)).toBe(value);
});

test("on a row it is the value as printed, whatever the unit it is entered in", () => {
  expect(["40 °F", "60 °F", "90 °F"].map(at)).toEqual(["52 lbf", "60.0 lbf", "70 lbf"]);
  expect(at("15 5/9 °C")).toBe("60.0 lbf"); // 60 °F
});

describe("outside the rows there is nothing", () => {
  test.each(["39.999 °F", "-40 °F", "90.001 °F", "200 °F"])("%s", (typed) => {
    expect(at(typed)).toBeUndefined();
  });
});

test("rows in several units lie on one line, and the answer is in the lower row's", () => {
  const mixed = [
    { at: quantity("0 in"), value: quantity("10 °C") },
    { at: quantity("25.4 mm"), value: quantity("68 °F") },
  ];
  expect(interpolate(mixed, quantity("1/2 in"))?.typed).toBe("15 °C");
});

test("one row holds at itself and nowhere else", () => {
  const [row] = column;
  const one = row ? [row] : [];
  expect(interpolate(one, quantity("40 °F"))?.typed).toBe("52 lbf");
  expect(interpolate(one, quantity("41 °F"))).toBeUndefined();
});

test("what measures something else is a fault of this program", () => {
  expect(() => interpolate(column, quantity("40 in"))).toThrow(DimensionError);
});
