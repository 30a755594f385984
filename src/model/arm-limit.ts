import type Fraction from "fraction.js";
import { inBaseUnits, type Quantity, quantityOf } from "./quantity.ts";

/** A corner of a limit that varies with weight. */
export interface LimitCorner {
  readonly weight: Quantity;
  readonly arm: Quantity;
}

/**
 * A limit of the centre of gravity: the same at every weight, or a line through corners, with
 * straight stretches between them. Corners are in order of weight, at least two of them; two at
 * one weight make a step.
 */
export type ArmLimit =
  | { readonly kind: "constant"; readonly arm: Quantity }
  | { readonly kind: "corners"; readonly corners: readonly LimitCorner[] };

/**
 * Where the limit lies at a weight, exactly. At a step it is the wider of the two, because the
 * corners themselves are still within.
 * @param end Which side of the range it closes.
 * @returns `undefined` below the lowest corner and above the highest: nothing is said there.
 */
export function armAt(
  limit: ArmLimit,
  weight: Quantity,
  end: "forward" | "aft",
): Quantity | undefined {
  if (limit.kind === "constant") return limit.arm;
  const at = inBaseUnits(weight);
  const { corners } = limit;
  const unit = corners[0]?.arm.unit;
  if (!unit) return undefined;
  let found: Fraction | undefined;
  for (const [index, corner] of corners.entries()) {
    const next = corners[index + 1];
    if (!next) continue;
    const [low, high] = [inBaseUnits(corner.weight), inBaseUnits(next.weight)];
    if (at.lt(low) || at.gt(high)) continue;
    for (const arm of armsBetween(
      [low, inBaseUnits(corner.arm)],
      [high, inBaseUnits(next.arm)],
      at,
    ))
      if (!found || (end === "forward" ? arm.lt(found) : arm.gt(found))) found = arm;
  }
  return found && quantityOf(found.sub(unit.offset).div(unit.factor), unit);
}

type Point = readonly [weight: Fraction, arm: Fraction];

function armsBetween([low, from]: Point, [high, to]: Point, at: Fraction): Fraction[] {
  if (low.equals(high)) return [from, to];
  return [from.add(to.sub(from).mul(at.sub(low)).div(high.sub(low)))];
}

/** The lowest and the highest weight a limit is given for; `undefined` when for every weight. */
export function weightsOf(
  limit: ArmLimit,
): { readonly lowest: Quantity; readonly highest: Quantity } | undefined {
  if (limit.kind === "constant") return undefined;
  const lowest = limit.corners[0]?.weight;
  const highest = limit.corners.at(-1)?.weight;
  return lowest && highest && { lowest, highest };
}

/** The limit as typed: `60 in`, or `60 in at 900 lb, 63 in at 1500 lb`. */
export function armLimitText(limit: ArmLimit): string {
  return limit.kind === "constant"
    ? limit.arm.typed
    : limit.corners.map(({ weight, arm }) => `${arm.typed} at ${weight.typed}`).join(", ");
}
