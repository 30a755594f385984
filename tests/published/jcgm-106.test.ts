import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { normalTail } from "../../src/compute/normal-distribution.ts";
import {
  assure,
  type StandardUncertainty,
  standardUncertainty,
} from "../../src/compute/uncertainty.ts";
import type { Limits } from "../../src/model/tolerance.ts";
import { quantity } from "../support/typed-quantity.ts";

// The examples are about volts, square millimetres per second and plain numbers. Conformance
// probability does not ask for the unit, so millimetres stand for all of them.
const mm = (amount: number | string) => quantity(`${amount} mm`);
const known = (u: string): StandardUncertainty => ({
  dimension: "length",
  variance: new Fraction(u).div(1000).pow(2),
});
const probability = (y: string, limits: Limits, u: string) =>
  assure(mm(y), limits, known(u), "simple").probability;

// Source: JCGM 106:2012, 7.4. The guide itself was not seen: inputs from memory, results
// computed from its formula (7.2).
describe("worked cases of JCGM 106, 7.4", () => {
  test("breakdown voltage -5.47 V, u 0.05 V, upper limit -5.40 V: 0.92", () => {
    expect(probability("-5.47", { upper: mm("-5.40") }, "0.05")).toBeCloseTo(0.9192, 4);
  });

  test("viscosity 13.6 mm²/s, u 1.8, limits 12.5 and 16.3: 0.66", () => {
    const limits = { lower: mm("12.5"), upper: mm("16.3") };
    expect(probability("13.6", limits, "1.8")).toBeCloseTo(0.6626, 4);
  });
});

// Source: suncal, test/test_risk.py, specific process risk. A process spread around its mean
// is the same sum as a value with its uncertainty.
describe("specific process risk as suncal computes it", () => {
  const limits = { lower: mm(9), upper: mm(11) };

  test.each([
    ["10", "0.4", 0.01242],
    ["10.5", "0.4", 0.10574],
  ])("mean %s, standard deviation %s: %d outside", (mean, deviation, risk) => {
    expect(1 - probability(mean, limits, deviation)).toBeCloseTo(risk, 5);
  });

  test("each side of the off-centre process", () => {
    expect(1 - probability("10.5", { lower: mm(9) }, "0.4")).toBeCloseTo(0.00009, 5);
    expect(1 - probability("10.5", { upper: mm(11) }, "0.4")).toBeCloseTo(0.10565, 5);
  });
});

// Source: ILAC-G8:09/2019, table 1, as quoted by others; the percentages there are upper bounds
// of these values of the normal distribution, whose digits are those of Python's math.erfc.
describe("risk of false acceptance on the edge of the acceptance zone", () => {
  test.each([
    [6, 9.865876450377e-10], // w = 3 U, printed < 1 ppm
    [3, 1.3498980316301e-3], // w = 1.5 U, printed < 0.16 %
    [2, 2.2750131948179e-2], // w = U, printed < 2.5 %
    [1.66, 4.8457226266723e-2], // w = 0.83 U, printed < 5 %
    [0, 0.5], // w = 0, printed < 50 %
  ])("beyond %d standard deviations lies %d", (z, risk) => {
    expect(normalTail(z) / risk).toBeCloseTo(1, 11);
  });
});

// Source: JCGM 106:2012, 7.3, table 1 (memory), which rounds to two places.
test.each([
  [0.84, 0.8],
  [1.28, 0.9],
  [1.64, 0.95],
  [2.33, 0.99],
  [3.09, 0.999],
])("z = %d goes with a one-sided conformance probability of %d", (z, expected) => {
  const places = expected > 0.99 ? 3 : 2;
  expect(1 - normalTail(z)).toBeCloseTo(expected, places);
});

// Source: JCGM 100:2008 (the GUM), as reproduced in the notebook "End Gauge GUM.H1" of suncal:
// 75 nm at k = 3 are 25 nm (4.3.3), 20 nm at k = 3 are 6.7 nm. A display's step: rectangular,
// half-width over the root of 3, as a maker of multimeters has it on a slide; the caliper of
// 0.001 in is computed from that rule.
describe("standard uncertainty of an instrument", () => {
  const u = (typed: { uncertainty: string; resolution?: string; coverage: number }) => {
    const known = standardUncertainty(
      {
        uncertainty: quantity(typed.uncertainty),
        coverage: typed.coverage,
        ...(typed.resolution === undefined ? {} : { resolution: quantity(typed.resolution) }),
      },
      quantity("1 in"),
    );
    return Math.sqrt(known?.variance.valueOf() ?? Number.NaN);
  };

  test("75 nm and 20 nm at k = 3", () => {
    expect(u({ uncertainty: "0.075 µm", coverage: 3 })).toBeCloseTo(25e-9, 15);
    expect(u({ uncertainty: "0.020 µm", coverage: 3 })).toBeCloseTo(6.7e-9, 10);
  });

  test("a display that steps by 0.001 in is known to 0.000289 in, two of them apart to 0.000408", () => {
    const inches = u({ uncertainty: "0 in", resolution: "0.001 in", coverage: 2 }) / 0.0254;
    expect(inches).toBeCloseTo(0.000289, 6);
    expect(inches * Math.SQRT2).toBeCloseTo(0.000408, 6);
  });
});

// Source: ILAC-G8:09/2019, clause 4.1, page 8: the guard band is the distance between tolerance
// limit and acceptance limit, w = |T - A|.
test("acceptance begins where the guard band ends", () => {
  const at = (y: string, decision: "guarded by U" | "guarded for 95 %") =>
    assure(mm(y), { lower: mm(9), upper: mm(11) }, known("0.1"), decision).kind;
  expect([at("9.2", "guarded by U"), at("9.199", "guarded by U")]).toEqual([
    "proven",
    "not proven",
  ]);
  // 1.645 u; the table's 0.83 U is that rounded up (0.8225 U).
  expect([at("9.1645", "guarded for 95 %"), at("9.1644", "guarded for 95 %")]).toEqual([
    "proven",
    "not proven",
  ]);
});
