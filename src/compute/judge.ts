import type Fraction from "fraction.js";
import { compareQuantities, type Quantity, stepBetween } from "../model/quantity.ts";
import type { Limits } from "../model/tolerance.ts";

/** Simple acceptance against the limits as written. */
export type Verdict =
  | { readonly kind: "within" }
  | {
      readonly kind: "below" | "above";
      readonly limit: Quantity;
      /** How far outside, in the unit of `limit`; exact and above zero. */
      readonly by: Fraction;
    };

/** What the instrument's uncertainty says about conformity (JCGM 106). */
export interface Assurance {
  readonly kind: "proven" | "not proven" | "disproven" | "no acceptance zone";
  /** Conformance probability, 0 to 1. */
  readonly probability: number;
}

/**
 * Judges one value against the limits of a rule.
 *
 * The limits are inclusive: 25 lbf·in meets a rule of 20 to 25 lbf·in. Units may differ
 * (2.8 N·m against lbf·in). The comparison is exact: nothing is rounded first, the number of
 * digits typed never widens a limit, and the instrument's uncertainty is not added.
 *
 * @param value What the instrument showed. Friction drag belongs in `limits` (`limitsOf`).
 * @param limits Same dimension as `value`. An absent end is never broken.
 * @returns The verdict, with the limit that was broken in the rule's own unit.
 * @throws DimensionError if the two measure different things, such as a length against a
 *   torque. Entries like that are reported before this runs.
 */
export function judge(value: Quantity, { lower, upper }: Limits): Verdict {
  if (lower && compareQuantities(value, lower) < 0)
    return { kind: "below", limit: lower, by: stepBetween(value, lower).div(lower.unit.factor) };
  if (upper && compareQuantities(value, upper) > 0)
    return { kind: "above", limit: upper, by: stepBetween(upper, value).div(upper.unit.factor) };
  return { kind: "within" };
}
