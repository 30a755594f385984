import { describe, expect, test } from "vitest";
import { boundValue } from "../../src/compute/limits.ts";
import { parseExpression } from "../../src/read/expression-syntax.ts";
import { quantity } from "../support/typed-quantity.ts";

const sizes = new Map([
  ["D", quantity("1/8 in")],
  ["t", quantity("0.040 in")],
  ["W", quantity("2 in")],
  ["L", quantity("3 in")],
  ["edge_2", quantity("1 in")],
]);

describe("parseExpression reads", () => {
  test.each([
    ["0.19 in", "0.19 in"],
    ["1 3/16 in", "1 3/16 in"],
    ["D", "1/8 in"],
    ["2 D", "0.25 in"],
    ["1.5D", "0.1875 in"],
    ["1/2 D", "0.0625 in"],
    ["1 1/2 D", "0.1875 in"],
    ["2 × D", "0.25 in"],
    ["2*D", "0.25 in"],
    ["2 D + 0.05 in", "0.3 in"],
    ["2D+0.05 in", "0.3 in"],
    ["0.05 in + 2 D", "0.3 in"],
    ["W - D - t", "1.835 in"],
    ["W − (D - t)", "1.915 in"],
    ["2 (D + t)", "0.33 in"],
    ["2 (D + 0.5 (W - D))", "2.125 in"],
    ["W / 4", "0.5 in"],
    ["W/4/2", "0.25 in"],
    ["-D + W", "1.875 in"],
    ["-0.5 in", "-0.5 in"],
    ["0.5 in-D", "0.375 in"],
    ["No. 30 + 0.003 in", "0.1315 in"],
    ["2 edge_2", "2 in"],
    ["50 in-lb", "50 lbf·in"],
    ["2 fl oz", "2 fl oz"],
    ["70 °F", "70 °F"],
    ["2 L", "6 in"],
    ["  2 D  ", "0.25 in"],
  ])("%s as %s", (text, value) => {
    const parsed = parseExpression(text, sizes.keys());
    if (!parsed.ok) throw new Error(parsed.expected);
    expect(parsed.bound.typed).toBe(text.trim());
    const result = boundValue(parsed.bound.expression, sizes);
    if (!result.ok) throw new Error(result.fault.kind);
    const wanted = quantity(value);
    expect(result.quantity.unit).toBe(wanted.unit);
    expect(result.quantity.amount.equals(wanted.amount)).toBe(true);
  });

  test("a unit where no size of that name is declared", () => {
    const parsed = parseExpression("2 L");
    expect(parsed.ok && parsed.bound.expression).toMatchObject({
      kind: "quantity",
      quantity: { typed: "2 L", unit: { symbol: "L" } },
    });
  });
});

describe("parseExpression refuses", () => {
  test.each([
    ["", "", "a value with its unit, or the name of a size"],
    ["2", "2", "a unit or the name of a size behind `2`"],
    ["3 + D", "3", "a unit or the name of a size behind `3`"],
    ["2 D +", "+", "a value with its unit, or the name of a size"],
    ["2 D + * D", "*", "a value with its unit, or the name of a size"],
    ["(D + t", "t", "`)`"],
    ["D + t)", ")", "`+`, `-` or the end"],
    ["D t", "t", "`+`, `-` or the end"],
    ["2 D 3", "3", "`+`, `-` or the end"],
    ["0,5 in", "0,5", "a decimal point, not a comma"],
    ["2 D + 0,5 in", "0,5", "a decimal point, not a comma"],
    ["2 D + No. 99", "No. 99", "a drill from No. 1 to No. 80"],
    ["D / 0", "0", "a plain number other than zero to divide by"],
    ["D / 2 in", "2 in", "a plain number other than zero to divide by"],
    ["D / 2 t", "2 ", "a plain number other than zero to divide by"],
    ["D / t", "t", "a number to divide by"],
    ["D / 2,5", "2,5", "a decimal point, not a comma"],
    [`${"(".repeat(30)}D${")".repeat(30)}`, "(", "at most 20 parentheses"],
    [`${"-".repeat(60)}D`, "-", "fewer signs"],
    [`D${" + D".repeat(60)}`, "D", "at most 200 characters"],
    ["2 (3 in", "n", "`)`"],
    ["2 × ", "×", "a value with its unit, or the name of a size"],
  ])("%s", (text, under, expected) => {
    const parsed = parseExpression(text, sizes.keys());
    if (parsed.ok) throw new Error(`${text} was read`);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length).startsWith(under)).toBe(true);
    expect(parsed.length).toBeGreaterThan(0);
    expect(parsed.expected).toContain(expected);
  });
});
