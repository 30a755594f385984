import { describe, expect, test } from "vitest";
import { figuresOf } from "../../src/compute/figure.ts";
import type { FigureKind } from "../../src/model/tolerance.ts";
import { reading } from "../support/small-measurements.ts";

const figures = (kind: FigureKind, ...series: readonly (readonly string[])[]) =>
  figuresOf(
    kind,
    series.map((values, index) => reading(values, { id: `R-${index + 1}` })),
  );
const texts = (...given: Parameters<typeof figures>) =>
  figures(...given).map(({ quantity }) => quantity.typed);

describe("a difference", () => {
  test("is taken between two values, and has no sign", () => {
    expect(texts("difference", ["14.381 in", "14.372 in"])).toEqual(["0.009 in"]);
    expect(texts("difference", ["14.372 in", "14.381 in"])).toEqual(["0.009 in"]);
  });

  test("is taken between two readings value by value", () => {
    const pairs = figures("difference", ["24.8 deg", "24.9 deg"], ["25.1 deg", "24.7 deg"]);
    expect(pairs.map(({ quantity }) => quantity.typed)).toEqual(["0.3 °", "0.2 °"]);
    expect(pairs.map(({ larger }) => larger.reading.id)).toEqual(["R-2", "R-1"]);
    expect(pairs.map(({ smaller }) => smaller.value.quantity.typed)).toEqual([
      "24.8 deg",
      "24.7 deg",
    ]);
  });

  test("of temperatures is a temperature difference", () => {
    const [one] = figures("difference", ["70 °F"], ["20 °C"]);
    expect(one?.quantity.typed).toBe("2 Δ°F");
    expect(one?.quantity.unit.dimension).toBe("temperature difference");
  });

  test("of equal values is nothing", () => {
    expect(texts("difference", ["1 in"], ["25.4 mm"])).toEqual(["0 in"]);
  });

  test.each([
    ["one value", [["1 in"]]],
    ["three values", [["1 in", "2 in", "3 in"]]],
    ["three readings", [["1 in"], ["2 in"], ["3 in"]]],
    ["more on one side", [["1 in", "2 in"], ["3 in"]]],
    ["nothing on either", [[], []]],
    ["values of two kinds", [["1 in"], ["2 lbf"]]],
  ])("is not taken of %s", (_what, series) => {
    expect(texts("difference", ...series)).toEqual([]);
  });
});

describe.each(["range", "run-out"] as const)("a %s", (kind) => {
  test("runs from the highest to the lowest of all values", () => {
    const [one, ...more] = figures(kind, ["0.750 in", "0.752 in"], ["0.748 in", "0.7505 in"]);
    expect(more).toEqual([]);
    expect(one?.quantity.typed).toBe("0.004 in");
    expect([one?.larger.reading.id, one?.smaller.reading.id]).toEqual(["R-1", "R-2"]);
  });

  test("counts what lies below zero", () => {
    expect(texts(kind, ["0.000 in", "0.003 in", "-0.002 in"])).toEqual(["0.005 in"]);
  });

  test("names the first of equal values", () => {
    const [one] = figures(kind, ["1 in"], ["1 in"]);
    expect([one?.larger.reading.id, one?.smaller.reading.id]).toEqual(["R-1", "R-1"]);
  });

  test("is not taken of one value, of none, or of two kinds", () => {
    expect(texts(kind, ["1 in"])).toEqual([]);
    expect(texts(kind)).toEqual([]);
    expect(texts(kind, ["1 in", "1 lbf"])).toEqual([]);
  });
});
