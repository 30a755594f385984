import Fraction from "fraction.js";
import type { Load } from "../model/load.ts";
import type { Unit } from "../model/unit.ts";
import { amountIn } from "./reckon/amount-in.ts";

/** What weights and arms are added up in. */
export interface MomentUnits {
  readonly weight: Unit;
  readonly arm: Unit;
}

/** One weight at its arm, in the units of the sum, exactly. */
export interface MomentLine<L extends Load = Load> {
  readonly load: L;
  readonly weight: Fraction;
  readonly arm: Fraction;
  /** Weight × arm. */
  readonly moment: Fraction;
}

/** A sum of weights and moments, exactly. */
export interface MomentSum {
  readonly weight: Fraction;
  readonly moment: Fraction;
  /** Moment / weight; absent when there is no weight above zero to have a centre of gravity. */
  readonly cg?: Fraction;
}

/** Each load with its moment, in the order given. What is taken out has a weight below zero. */
export function momentLines<L extends Load>(
  loads: readonly L[],
  units: MomentUnits,
): MomentLine<L>[] {
  return loads.map((load) => {
    const weight = amountIn(load.weight, units.weight);
    const arm = amountIn(load.arm, units.arm);
    return { load, weight, arm, moment: weight.mul(arm) };
  });
}

/**
 * Adds up weights and moments; nothing is rounded on the way. AC 43.13-1B, par. 10-2h and i;
 * FAA-H-8083-1B: moment = weight × arm, CG = sum of moments / sum of weights.
 */
export function sumOfMoments(
  terms: readonly { readonly weight: Fraction; readonly moment: Fraction }[],
): MomentSum {
  const weight = terms.reduce((total, term) => total.add(term.weight), zero);
  const moment = terms.reduce((total, term) => total.add(term.moment), zero);
  return { weight, moment, ...(weight.gt(0) ? { cg: moment.div(weight) } : {}) };
}

/**
 * A place in per cent of the mean aerodynamic chord: 0 at its leading edge, 100 at its trailing
 * edge. FAA-H-8083-1B: (CG − LEMAC) / MAC × 100. All in one unit; the trailing edge lies aft.
 */
export function chordPercent(cg: Fraction, leading: Fraction, trailing: Fraction): Fraction {
  return cg.sub(leading).div(trailing.sub(leading)).mul(100);
}

/** The unit of a moment as printed: `lb·in`. */
export function momentUnit({ weight, arm }: MomentUnits): string {
  return `${weight.symbol}·${arm.symbol}`;
}

const zero = new Fraction(0);
