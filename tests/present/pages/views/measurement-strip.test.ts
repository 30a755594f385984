import { expect, test } from "vitest";
import { judge } from "../../../../src/compute/judge.ts";
import type { Limits } from "../../../../src/model/tolerance.ts";
import { measurementStrip } from "../../../../src/present/pages/views/measurement-strip.ts";
import { instrument, span } from "../../../support/small-build.ts";
import { quantity } from "../../../support/small-measurements.ts";

function strip(limits: { lower?: string; upper?: string }, values: readonly string[], u?: string) {
  const filled: Limits = {
    ...(limits.lower === undefined ? {} : { lower: quantity(limits.lower) }),
    ...(limits.upper === undefined ? {} : { upper: quantity(limits.upper) }),
  };
  return measurementStrip(
    {
      limits: filled,
      values: values.map((typed) => ({
        value: { quantity: quantity(typed), span: span() },
        verdict: judge(quantity(typed), filled),
      })),
    },
    u === undefined ? undefined : instrument({ uncertainty: quantity(u) }),
  );
}

const xs = (made: ReturnType<typeof strip>) => made?.marks.map(({ x }) => x);

test("the allowed band is 60 % of the width, whatever the limits", () => {
  expect(strip({ lower: "1 in", upper: "2 in" }, ["1.5 in"])?.band).toEqual({
    x: "20%",
    width: "60%",
  });
  expect(strip({ lower: "20 lbf·in", upper: "25 lbf·in" }, ["20 lbf·in"])?.band).toEqual({
    x: "20%",
    width: "60%",
  });
});

test("values stand where they belong between the limits", () => {
  expect(xs(strip({ lower: "1 in", upper: "2 in" }, ["1 in", "1.5 in", "2 in"]))).toEqual([
    "20%",
    "50%",
    "80%",
  ]);
});

test("another unit of the same thing stands in the same place", () => {
  expect(xs(strip({ lower: "1 in", upper: "2 in" }, ["38.1 mm"]))).toEqual(["50%"]);
});

test("a value outside is marked, with the stretch from the limit", () => {
  const made = strip({ lower: "1 in", upper: "2 in" }, ["0.9 in", "1.2 in"]);
  expect(made?.marks.map(({ out }) => out)).toEqual([true, false]);
  expect(made?.outside).toEqual([{ x: "14%", width: "6%" }]);
});

test("a value far outside stays on the drawing", () => {
  expect(xs(strip({ lower: "1 in", upper: "2 in" }, ["9 in"]))).toEqual(["98%"]);
});

test("with one limit the band runs to the edge", () => {
  const made = strip({ lower: "0.1875 in" }, ["0.19 in"]);
  expect(made?.band).toEqual({ x: "20%", width: "78%" });
  expect(made?.upper).toBeUndefined();
  expect(strip({ upper: "0.06 in" }, ["0.01 in"])?.band).toEqual({ x: "2%", width: "78%" });
});

test("limits that are one point, or zero, still make a drawing", () => {
  expect(xs(strip({ lower: "1 in", upper: "1 in" }, ["1 in"]))).toEqual(["20%"]);
  expect(xs(strip({ upper: "0 in" }, ["0 in"]))).toEqual(["80%"]);
});

test("uncertainty is a bar either way", () => {
  const made = strip({ lower: "1 in", upper: "2 in" }, ["1.5 in"], "0.1 in");
  expect(made?.marks[0]?.spread).toEqual({ x: "44%", width: "12%" });
});

test("only the outermost values have words, and those do not meet", () => {
  const labels = (values: readonly string[]) =>
    strip({ lower: "1 in", upper: "2 in" }, values)?.marks.map(({ label }) => label?.anchor);
  expect(labels(["1.5 in"])).toEqual(["middle"]);
  expect(labels(["1.4 in", "1.5 in", "1.6 in"])).toEqual(["end", undefined, "start"]);
  expect(labels(["0.8 in", "1.2 in"])).toEqual(["start", undefined]);
  expect(labels(["0.8 in", "1.9 in"])).toEqual(["start", "start"]);
});

test("without a limit there is nothing to draw", () => {
  expect(strip({}, ["1 in"])).toBeUndefined();
});
