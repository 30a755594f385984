import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { normalTail } from "../../src/compute/normal-distribution.ts";
import { assure, standardUncertainty } from "../../src/compute/uncertainty.ts";
import { DimensionError } from "../../src/model/quantity.ts";
import type { DecisionRule, Limits } from "../../src/model/tolerance.ts";
import { quantity } from "../support/typed-quantity.ts";

const inches = (u: number | undefined) => (u ?? Number.NaN) / 0.0254;
const standard = (
  typed: { resolution?: string; uncertainty?: string; coverage?: number },
  value: string,
) => {
  const { resolution, uncertainty, coverage = 2 } = typed;
  return standardUncertainty(
    {
      ...(resolution === undefined ? {} : { resolution: quantity(resolution) }),
      ...(uncertainty === undefined ? {} : { uncertainty: quantity(uncertainty) }),
      coverage,
    },
    quantity(value),
  );
};
const deviation = (u: ReturnType<typeof standard>) => u && Math.sqrt(u.variance.valueOf());

describe("standardUncertainty", () => {
  // JCGM 100:2008, F.2.2.1: δ/√12; a caliper of 0.001 in gives 0.000289 in.
  test("the step of a display", () => {
    const u = standard({ resolution: "0.001 in", uncertainty: "0 in" }, "1 in");
    expect(inches(deviation(u))).toBeCloseTo(0.000289, 6);
    expect(u?.variance.equals(new Fraction("0.0000254").pow(2).div(12))).toBe(true);
  });

  // JCGM 100:2008, 4.3.3; in annex H.1 75 nm at k = 3 are 25 nm.
  test("a calibration with its coverage factor", () => {
    const u = standard({ uncertainty: "0.075 µm", coverage: 3 }, "50 mm");
    expect(u?.variance.equals(new Fraction("0.000000025").pow(2))).toBe(true);
    expect(u?.dimension).toBe("length");
  });

  test("both together, as the root of the sum of squares", () => {
    const u = standard({ resolution: "0.0005 in", uncertainty: "0.001 in" }, "1 in");
    expect(inches(deviation(u))).toBeCloseTo(Math.hypot(0.0005, 0.0005 / Math.sqrt(12)), 9);
  });

  test("per cent of the value, whatever its sign", () => {
    const u = standard({ uncertainty: "4 %", coverage: 2 }, "-25 lbf·in");
    expect(u?.variance.equals(quantity("0.5 lbf·in").unit.factor.div(2).pow(2))).toBe(true);
  });

  test("a hygrometer's per cent are points of the scale", () => {
    const u = standard({ uncertainty: "4 %" }, "48 %");
    expect(u?.variance.equals(new Fraction("0.02").pow(2))).toBe(true);
  });

  test.each(["2 °F", "2 Δ°F"])(
    "a thermometer's %s is a step, not a place on the scale",
    (typed) => {
      const u = standard({ uncertainty: typed, resolution: "0 °C" }, "70 °F");
      expect(u?.dimension).toBe("temperature");
      expect(u?.variance.equals(new Fraction(5, 9).pow(2))).toBe(true);
    },
  );

  test("a difference of temperatures has one too", () => {
    expect(standard({ uncertainty: "2 °F" }, "18 Δ°F")?.dimension).toBe("temperature difference");
  });

  test.each([
    [{ resolution: "0.001 in" }, "1 in"],
    [{}, "1 in"],
    [{ uncertainty: "0.001 in" }, "25 lbf·in"],
    [{ uncertainty: "0.001 in", resolution: "1 lbf·in" }, "1 in"],
    [{ uncertainty: "4 %" }, "70 °F"],
  ])("%o is not enough for %s", (instrument, value) => {
    expect(standard(instrument, value)).toBeUndefined();
  });
});

// Limits 10 ± 1 mm and u = 0.1 mm: w is 0.2 mm guarded by U, 0.1645 mm guarded for 95 %.
const band: Limits = { lower: quantity("9 mm"), upper: quantity("11 mm") };
const u = (typed: string) => ({
  dimension: "length" as const,
  variance: quantity(typed).amount.div(1000).pow(2),
});
const kind = (value: string, limits: Limits, decision: DecisionRule, deviation = "0.1 mm") =>
  assure(quantity(value), limits, u(deviation), decision).kind;

describe("assure", () => {
  test.each<[DecisionRule, string, string]>([
    ["simple", "9 mm", "proven"],
    ["simple", "11 mm", "proven"],
    ["simple", "11.000001 mm", "disproven"],
    ["guarded by U", "9.2 mm", "proven"],
    ["guarded by U", "9.199999 mm", "not proven"],
    ["guarded by U", "10.8 mm", "proven"],
    ["guarded by U", "10.800001 mm", "not proven"],
    ["guarded by U", "11 mm", "not proven"],
    ["guarded by U", "11.2 mm", "not proven"],
    ["guarded by U", "11.200001 mm", "disproven"],
    ["guarded by U", "8.8 mm", "not proven"],
    ["guarded by U", "8.799999 mm", "disproven"],
    ["guarded for 95 %", "9.1645 mm", "proven"],
    ["guarded for 95 %", "9.1644 mm", "not proven"],
    ["guarded for 95 %", "11.1645 mm", "not proven"],
    ["guarded for 95 %", "11.1646 mm", "disproven"],
  ])("%s: %s is %s", (decision, value, expected) => {
    expect(kind(value, band, decision)).toBe(expected);
  });

  // Length gauge arithmetic of the reference: specification 10 ± 1, U = 0.2; ISO 14253-1:2017
  // rounds 1.645/2 up to 0.83 U, which would accept from 9.166.
  test("guarded for 95 % lies within the rounded 0.83 U", () => {
    expect(kind("9.166 mm", band, "guarded for 95 %")).toBe("proven");
  });

  test("one-sided limits have one guard band", () => {
    expect(kind("0.1875 in", { lower: quantity("0.1875 in") }, "guarded by U")).toBe("not proven");
    expect(kind("1 m", { lower: quantity("9 mm") }, "guarded by U")).toBe("proven");
    expect(kind("1 m", { upper: quantity("9 mm") }, "guarded by U")).toBe("disproven");
  });

  describe("when the guard bands meet", () => {
    const narrow: Limits = { lower: quantity("9.9 mm"), upper: quantity("10.1 mm") };

    test("there is no acceptance zone", () => {
      expect(kind("10 mm", narrow, "guarded by U")).toBe("no acceptance zone");
      expect(kind("10.2 mm", narrow, "guarded by U")).toBe("no acceptance zone");
    });

    test("what is far outside is still disproven", () => {
      expect(kind("11 mm", narrow, "guarded by U")).toBe("disproven");
    });

    test("a zone of one point is a zone", () => {
      expect(kind("10 mm", narrow, "guarded by U", "0.05 mm")).toBe("proven");
      expect(kind("10.000001 mm", narrow, "guarded by U", "0.05 mm")).toBe("not proven");
    });

    test("simple acceptance has no guard bands", () => {
      expect(kind("10 mm", narrow, "simple")).toBe("proven");
    });
  });

  describe("without uncertainty", () => {
    test.each<DecisionRule>(["simple", "guarded by U", "guarded for 95 %"])(
      "%s is simple acceptance, ties included",
      (decision) => {
        const kinds = ["9 mm", "10 mm", "11 mm", "8.999999 mm", "11.000001 mm"].map((value) =>
          assure(quantity(value), band, u("0 mm"), decision),
        );
        expect(kinds).toEqual([
          { kind: "proven", probability: 1 },
          { kind: "proven", probability: 1 },
          { kind: "proven", probability: 1 },
          { kind: "disproven", probability: 0 },
          { kind: "disproven", probability: 0 },
        ]);
      },
    );

    test("limits that meet in a point still accept it", () => {
      const point = { lower: quantity("10 mm"), upper: quantity("10 mm") };
      expect(kind("10 mm", point, "guarded by U", "0 mm")).toBe("proven");
    });
  });

  test("a value on a far limit conforms with one half", () => {
    const { probability } = assure(quantity("11 mm"), band, u("0.1 mm"), "simple");
    expect(probability).toBeCloseTo(0.5, 12);
  });

  test("different things are a fault of the program", () => {
    expect(() => assure(quantity("1 s"), band, u("0.1 mm"), "simple")).toThrow(DimensionError);
  });
});

// Values of the normal distribution, from math.erfc of Python.
describe("normalTail", () => {
  test.each([
    [0, 0.5],
    [0.5, 0.3085375387259869],
    [1, 0.15865525393145707],
    [1.645, 0.04998490553912138],
    [2.8284271, 0.0023388676713411516],
    [2.9, 0.0018658133003840384],
    [3.5, 0.00023262907903552502],
    [8, 6.220960574271819e-16],
    [-1, 0.8413447460685429],
    [-40, 1],
    [40, 0],
  ])("above %d lies %d", (z, tail) => {
    expect(Math.abs(normalTail(z) - tail)).toBeLessThan(1e-14);
  });

  test("the series and the continued fraction meet without a step", () => {
    const seam = 2 * Math.SQRT2;
    expect(normalTail(seam - 1e-9) / normalTail(seam)).toBeCloseTo(1, 7);
    expect(normalTail(seam - 1e-9)).toBeGreaterThan(normalTail(seam));
  });
});
