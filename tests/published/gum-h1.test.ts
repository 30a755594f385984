// Source: JCGM 100:2008 (the GUM), annex H.1, calibration of an end gauge. Inputs and answers
// as reproduced in the documentation of the R package propagate and in the notebook "End Gauge
// GUM.H1" of suncal. l = l_s + d - l_s (δα θ + α_s δθ)

import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { combinedVariance } from "../../src/compute/uncertainty.ts";

const squared = (u: string) => new Fraction(u).pow(2);
const one = new Fraction(1);

test("first-order combined uncertainty of the end gauge is 32 nm (31.71)", () => {
  const ls = new Fraction(50_000_623);
  const theta = new Fraction("-0.1");
  const alpha = new Fraction("0.0000115");
  const variance = combinedVariance([
    { sensitivity: one, variance: squared("25") }, // l_s; δα and δθ are zero
    { sensitivity: one, variance: squared("9.7") }, // d
    { sensitivity: ls.mul(theta).neg(), variance: squared("0.00000058") }, // δα
    { sensitivity: new Fraction(0), variance: squared("0.41") }, // θ, because δα is zero
    { sensitivity: new Fraction(0), variance: squared("0.0000012") }, // α_s, because δθ is zero
    { sensitivity: ls.mul(alpha).neg(), variance: squared("0.029") }, // δθ
  ]);
  expect(Math.sqrt(variance.valueOf())).toBeCloseTo(31.71, 2);
});

test("the three components of the measured difference make 9.7 nm", () => {
  const variance = combinedVariance([
    { sensitivity: one, variance: squared("3.9") },
    { sensitivity: one, variance: squared("6.7") },
    { sensitivity: one, variance: squared("5.8") },
  ]);
  expect(Math.sqrt(variance.valueOf()).toFixed(1)).toBe("9.7");
});
