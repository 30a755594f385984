import { armAt, weightsOf } from "../model/arm-limit.ts";
import type { BalanceLimits, Extreme } from "../model/balance.ts";
import { compareQuantities, convert, type Quantity, subtract } from "../model/quantity.ts";

/** One limit of a loading, and how far the loading is from it. */
export interface LimitMargin {
  readonly limit: "greatest weight" | Extreme;
  /** The limit at the weight of the loading. */
  readonly at: Quantity;
  /** Room left, in the unit of the limit: zero on the limit itself, below zero outside. */
  readonly room: Quantity;
}

/** A weight for which a limit of the centre of gravity is not given. */
export interface BeyondLimits {
  readonly limit: Extreme;
  readonly side: "below" | "above";
  /** The last weight it is given for. */
  readonly end: Quantity;
  /** How far beyond that the loading is; above zero. */
  readonly by: Quantity;
}

/** Where a loading lies. `no limits`: none are declared. `no weight`: nothing is left to weigh. */
export interface EnvelopeVerdict {
  readonly kind: "inside" | "outside" | "no limits" | "no weight";
  readonly margins: readonly LimitMargin[];
  readonly beyond: readonly BeyondLimits[];
}

/**
 * Judges a loading against the limits, exactly. Limits are inclusive: a centre of gravity on
 * the forward limit is inside. A weight for which a limit is not given is outside, because
 * nothing says that it may be flown; above the greatest weight that is not said once more.
 *
 * @param cg Absent when the weight is not above zero.
 */
export function judgeLoading(
  weight: Quantity,
  cg: Quantity | undefined,
  limits: BalanceLimits | undefined,
): EnvelopeVerdict {
  if (!cg) return { kind: "no weight", margins: [], beyond: [] };
  if (!limits) return { kind: "no limits", margins: [], beyond: [] };
  const { maxWeight } = limits;
  const overweight = maxWeight !== undefined && compareQuantities(weight, maxWeight) > 0;
  const margins: LimitMargin[] = maxWeight
    ? [{ limit: "greatest weight", at: maxWeight, room: subtract(maxWeight, weight) }]
    : [];
  const beyond: BeyondLimits[] = [];
  for (const end of ["forward", "aft"] as const) {
    const limit = limits[end];
    if (!limit) continue;
    const at = armAt(limit, weight, end);
    const ends = weightsOf(limit);
    if (at) {
      const here = convert(cg, at.unit);
      margins.push({
        limit: end,
        at,
        room: end === "forward" ? subtract(here, at) : subtract(at, here),
      });
    } else if (ends && compareQuantities(weight, ends.lowest) < 0) {
      beyond.push({
        limit: end,
        side: "below",
        end: ends.lowest,
        by: subtract(ends.lowest, weight),
      });
    } else if (ends && !overweight) {
      const by = convert(subtract(weight, ends.highest), ends.highest.unit);
      beyond.push({ limit: end, side: "above", end: ends.highest, by });
    }
  }
  const outside = beyond.length > 0 || margins.some(({ room }) => room.amount.lt(0));
  return { kind: outside ? "outside" : "inside", margins, beyond };
}
