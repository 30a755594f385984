import { describe, expect, test } from "vitest";
import { expressionDimension } from "../../src/model/tolerance.ts";
import { tableRule } from "../support/limit-tables.ts";
import { bound, sizes } from "../support/small-measurements.ts";

const known = sizes({ D: "1/8 in", t: "20 °F" });
const dimensionOf = (typed: string, named = known) =>
  expressionDimension(bound(typed).expression, named);

describe("what a limit measures", () => {
  test.each([
    ["0.25 in", "length"],
    ["2 D + 0.05 in", "length"],
    ["D - 1 mm", "length"],
    ["70 °F", "temperature"],
    ["70 °F + 5 delta °F", "temperature"],
    ["5 delta °F + 70 °F", "temperature"],
    ["70 °F - 5 delta °F", "temperature"],
    ["70 °F - 20 °C", "temperature difference"],
    ["t - 60 °F", "temperature difference"],
    ["2 (70 °F - 60 °F)", "temperature difference"],
    ["5 delta °F - 1 delta °C", "temperature difference"],
  ])("%s is a %s", (typed, dimension) => {
    expect(dimensionOf(typed)).toEqual({ kind: "dimension", dimension });
  });
});

describe("why that cannot be said", () => {
  test.each([
    ["3 D + 2 t", { kind: "temperature multiplied" }],
    ["2 (70 °F)", { kind: "temperature multiplied" }],
    ["70 °F / 2", { kind: "temperature multiplied" }],
    ["70 °F + 5 °F", { kind: "temperatures added" }],
    ["t + 20 °C", { kind: "temperatures added" }],
    ["5 delta °F - 70 °F", { kind: "mixed", left: "temperature difference", right: "temperature" }],
    ["2 D + 3 lb", { kind: "mixed", left: "length", right: "mass" }],
    ["3 lb - 2 D", { kind: "mixed", left: "mass", right: "length" }],
    ["2 D + x", { kind: "unknown size", name: "x" }],
    ["x - 2 D", { kind: "unknown size", name: "x" }],
  ])("%s", (typed, expected) => {
    expect(dimensionOf(typed)).toEqual(expected);
  });
});

describe("a column of a table", () => {
  const column = tableRule().lower?.expression ?? bound("1 in").expression;

  test("measures what its cells do, once something is known to enter it with", () => {
    expect(expressionDimension(column, sizes({ temperature: "12 °C" }))).toEqual({
      kind: "dimension",
      dimension: "force",
    });
    expect(expressionDimension(column, known)).toEqual({
      kind: "unknown size",
      name: "temperature",
    });
  });

  test("is not entered with something else", () => {
    expect(expressionDimension(column, sizes({ temperature: "12 in" }))).toEqual({
      kind: "mixed",
      left: "temperature",
      right: "length",
    });
  });
});
