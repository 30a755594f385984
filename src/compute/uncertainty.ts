import Fraction from "fraction.js";
import type { Instrument } from "../model/instrument.ts";
import { DimensionError, inBaseUnits, type Quantity, stepBetween } from "../model/quantity.ts";
import type { DecisionRule, Limits } from "../model/tolerance.ts";
import type { Dimension, Unit } from "../model/unit.ts";
import type { Assurance } from "./judge.ts";
import { normalTail } from "./normal-distribution.ts";

/** How well a value is known. Kept as a square, which stays a ratio of integers. */
export interface StandardUncertainty {
  readonly dimension: Dimension;
  /** The square of the standard uncertainty, in base units squared. */
  readonly variance: Fraction;
}

/** One of several things that make a result uncertain. */
export interface UncertaintyComponent {
  /** How far the result moves per unit of this input. */
  readonly sensitivity: Fraction;
  /** The square of the input's standard uncertainty. */
  readonly variance: Fraction;
}

const one = new Fraction(1);

/**
 * Adds the squares of independent components, first order: u² = Σ (c u)²
 * (JCGM 100:2008, 5.1.2).
 */
export function combinedVariance(components: readonly UncertaintyComponent[]): Fraction {
  return components.reduce(
    (sum, { sensitivity, variance }) => sum.add(sensitivity.mul(sensitivity).mul(variance)),
    new Fraction(0),
  );
}

/**
 * The standard uncertainty of one value shown by an instrument, from its calibration
 * (U/k, JCGM 100:2008, 4.3.3) and the step of its display (δ/√12, F.2.2.1).
 *
 * A calibration uncertainty in per cent is taken of the value; that of a thermometer is a
 * difference whichever way its unit was typed.
 *
 * @returns `undefined` when the instrument's calibration uncertainty is not known (the step of
 *   the display alone would make a worn gauge look good), or when the instrument measures
 *   something else than the value.
 */
export function standardUncertainty(
  {
    resolution,
    uncertainty,
    coverage,
  }: Pick<Instrument, "resolution" | "uncertainty" | "coverage">,
  value: Quantity,
): StandardUncertainty | undefined {
  const { dimension } = value.unit;
  const expanded = uncertainty && spanFor(uncertainty, value);
  if (!expanded) return undefined;
  const step = resolution ? spanFor(resolution, value) : new Fraction(0);
  if (!step) return undefined;
  const standard = expanded.div(new Fraction(String(coverage)));
  return {
    dimension,
    variance: combinedVariance([
      { sensitivity: one, variance: standard.mul(standard) },
      { sensitivity: one, variance: step.mul(step).div(12) },
    ]),
  };
}

// The size of an uncertainty in base units of the value, if it can be one of that value.
function spanFor({ amount, unit }: Quantity, value: Quantity): Fraction | undefined {
  const wanted = value.unit.dimension;
  const own = unit.dimension === "temperature difference" ? "temperature" : unit.dimension;
  const target = wanted === "temperature difference" ? "temperature" : wanted;
  // Without the offset: an uncertainty is a step on the scale, not a place on it.
  if (own === target) return amount.mul(unit.factor);
  // Per cent of a temperature would depend on where its scale begins.
  if (own === "ratio" && target !== "temperature")
    return amount.mul(unit.factor).mul(inBaseUnits(value).abs());
  return undefined;
}

// How far a limit moves inwards, in standard uncertainties, squared.
const guardSquared: Readonly<Record<DecisionRule, Fraction>> = {
  simple: new Fraction(0),
  "guarded by U": new Fraction(4),
  "guarded for 95 %": new Fraction("1.645").pow(2),
};

/**
 * How far the decision rule moves a limit inwards: 0, 2 u or 1.645 u, in base units.
 */
export function guardBand({ variance }: StandardUncertainty, decision: DecisionRule): number {
  return Math.sqrt(guardSquared[decision].mul(variance).valueOf());
}

/**
 * Which readings a decision rule accepts, both ends included; an absent end is not limited. For
 * print: `assure` decides, and exactly.
 */
export interface AcceptanceZone {
  readonly from?: number;
  readonly to?: number;
  /** Of both ends. */
  readonly unit: Unit;
}

/**
 * The limits moved inwards by the guard band of the decision rule (JCGM 106:2012, clause 8).
 * @param unit Of the same dimension as the limits.
 * @returns `undefined` when two guard bands leave no room between the limits.
 */
export function acceptanceZone(
  limits: Limits,
  known: StandardUncertainty,
  decision: DecisionRule,
  unit: Unit,
): AcceptanceZone | undefined {
  if (isZoneEmpty(limits, known, decision)) return undefined;
  const guard = guardBand(known, decision) / unit.factor.valueOf();
  const end = (limit: Quantity, sign: number) =>
    inBaseUnits(limit).sub(unit.offset).div(unit.factor).valueOf() + sign * guard;
  return {
    ...(limits.lower ? { from: end(limits.lower, 1) } : {}),
    ...(limits.upper ? { to: end(limits.upper, -1) } : {}),
    unit,
  };
}

/**
 * What a value known to a standard uncertainty u says about conformity (JCGM 106:2012).
 *
 * With the guard band w of the decision rule (0, 2 u or 1.645 u), conformity is `proven` from
 * w inside every limit inwards, `disproven` further than w outside one, and `not proven`
 * between. When both limits leave no room for two guard bands, there is `no acceptance zone`:
 * no reading of this instrument could prove conformity. The comparisons are exact and take in
 * the ends, so that u = 0 gives simple acceptance whatever the rule.
 *
 * @returns The probability that the true value lies within the limits is that of a normal
 *   distribution around the value (7.2); with u = 0 it is 0 or 1.
 * @throws DimensionError if value, limits and uncertainty do not measure the same.
 */
export function assure(
  value: Quantity,
  limits: Limits,
  known: StandardUncertainty,
  decision: DecisionRule,
): Assurance {
  const { lower, upper } = limits;
  const { dimension, variance } = known;
  if (dimension !== value.unit.dimension)
    throw new DimensionError(value.unit.dimension, dimension, "compared");
  const rooms = [
    ...(lower ? [stepBetween(lower, value)] : []),
    ...(upper ? [stepBetween(value, upper)] : []),
  ];
  const guard = guardSquared[decision].mul(variance);
  const probability = conformanceProbability(rooms, variance);
  const outside = (room: Fraction) => room.lt(0) && room.mul(room).gt(guard);
  const clear = (room: Fraction) => room.gte(0) && room.mul(room).gte(guard);

  if (rooms.some(outside)) return { kind: "disproven", probability };
  if (isZoneEmpty(limits, known, decision)) return { kind: "no acceptance zone", probability };
  return { kind: rooms.every(clear) ? "proven" : "not proven", probability };
}

function isZoneEmpty(
  { lower, upper }: Limits,
  { variance }: StandardUncertainty,
  decision: DecisionRule,
): boolean {
  if (!lower || !upper) return false;
  const room = stepBetween(lower, upper);
  return room.mul(room).lt(guardSquared[decision].mul(variance).mul(4));
}

// 1 - P(below the lower limit) - P(above the upper one); each room is the way to its limit.
function conformanceProbability(rooms: readonly Fraction[], variance: Fraction): number {
  if (variance.equals(0)) return rooms.every((room) => room.gte(0)) ? 1 : 0;
  const u = Math.sqrt(variance.valueOf());
  const risk = rooms.reduce((sum, room) => sum + normalTail(room.valueOf() / u), 0);
  return Math.max(0, 1 - risk);
}
