import type { Quantity } from "../model/quantity.ts";
import { add, compareQuantities, DimensionError, scale, subtract } from "../model/quantity.ts";
import type { Bound, Expression, Limits, ToleranceRule } from "../model/tolerance.ts";
import type { Dimension } from "../model/unit.ts";
import { interpolate } from "./interpolate.ts";

/** Named sizes such as `D`, filled in. */
export type Sizes = ReadonlyMap<string, Quantity>;

/** Why one side of a limit has no value. */
export type BoundFault =
  | { readonly kind: "unknown size"; readonly name: string }
  /** `2 D` of a D of zero would let everything pass. */
  | { readonly kind: "no size"; readonly name: string; readonly size: Quantity }
  /** Two parts that do not go together: a length less a torque, twice a temperature. */
  | { readonly kind: "wrong dimension"; readonly left: Dimension; readonly right: Dimension }
  /** A table was entered with `at`, and its rows run from `from` to `to`. */
  | {
      readonly kind: "outside the table";
      readonly by: string;
      readonly at: Quantity;
      readonly from: Quantity;
      readonly to: Quantity;
    };

/** Why a rule has no limits. */
export type LimitsFault =
  | BoundFault
  /** The lower end lies above the upper one. */
  | { readonly kind: "crossed ends"; readonly lower: Quantity; readonly upper: Quantity };

export type BoundValue =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly fault: BoundFault };

export type LimitsResult =
  | { readonly ok: true; readonly limits: Limits }
  | { readonly ok: false; readonly fault: LimitsFault };

/**
 * The limits of a rule with every size filled in, exactly.
 * @param sizes Win over sizes of the same name in the rule. What a table is entered with, such
 *   as `temperature`, is one of them.
 * @param drag Friction drag measured while running the nut down. Added to both ends when the
 *   rule adds drag (AC 43.13-1B, par. 7-40d), otherwise left alone.
 * @returns Limits in the unit of their first term, or why there are none. What a builder wrote
 *   never throws here.
 * @example 50 to 70 lbf·in with a drag of 12 lbf·in gives 62 to 82 lbf·in
 */
export function limitsOf(
  rule: Pick<ToleranceRule, "lower" | "upper" | "sizes" | "addsDrag">,
  sizes: Sizes,
  drag?: Quantity,
): LimitsResult {
  const all: Sizes = new Map([...rule.sizes, ...sizes]);
  const added = rule.addsDrag ? drag : undefined;
  const lower = endOf(rule.lower, all, added);
  if (lower && !lower.ok) return lower;
  const upper = endOf(rule.upper, all, added);
  if (upper && !upper.ok) return upper;

  if (lower && upper) {
    const [left, right] = [lower.quantity.unit.dimension, upper.quantity.unit.dimension];
    if (left !== right) return { ok: false, fault: { kind: "wrong dimension", left, right } };
    if (compareQuantities(lower.quantity, upper.quantity) > 0)
      return {
        ok: false,
        fault: { kind: "crossed ends", lower: lower.quantity, upper: upper.quantity },
      };
  }
  return {
    ok: true,
    limits: {
      ...(lower ? { lower: lower.quantity } : {}),
      ...(upper ? { upper: upper.quantity } : {}),
    },
  };
}

/** The value of one side of a limit, exactly, or why it has none. */
export function boundValue(expression: Expression, sizes: Sizes): BoundValue {
  switch (expression.kind) {
    case "quantity":
      return { ok: true, quantity: expression.quantity };
    case "size": {
      const quantity = sizes.get(expression.name);
      if (quantity) return { ok: true, quantity };
      return { ok: false, fault: { kind: "unknown size", name: expression.name } };
    }
    case "multiple": {
      const of = boundValue(expression.of, sizes);
      if (of.ok && expression.of.kind === "size" && of.quantity.amount.lte(0)) {
        const { name } = expression.of;
        return { ok: false, fault: { kind: "no size", name, size: of.quantity } };
      }
      return of.ok ? exactly(() => scale(of.quantity, expression.factor)) : of;
    }
    case "sum":
    case "difference": {
      const left = boundValue(expression.left, sizes);
      if (!left.ok) return left;
      const right = boundValue(expression.right, sizes);
      if (!right.ok) return right;
      const put = expression.kind === "sum" ? add : subtract;
      return exactly(() => put(left.quantity, right.quantity));
    }
    case "table":
      return columnValue(expression, sizes);
  }
}

function columnValue(
  { by, column }: Extract<Expression, { readonly kind: "table" }>,
  sizes: Sizes,
): BoundValue {
  const at = sizes.get(by);
  const [first, last] = [column[0], column.at(-1)];
  if (!at || !first || !last) return { ok: false, fault: { kind: "unknown size", name: by } };
  if (at.unit.dimension !== first.at.unit.dimension) {
    const [left, right] = [first.at.unit.dimension, at.unit.dimension];
    return { ok: false, fault: { kind: "wrong dimension", left, right } };
  }
  const quantity = interpolate(column, at);
  if (quantity) return { ok: true, quantity };
  return { ok: false, fault: { kind: "outside the table", by, at, from: first.at, to: last.at } };
}

function endOf(
  bound: Bound | undefined,
  sizes: Sizes,
  drag: Quantity | undefined,
): BoundValue | undefined {
  const value = bound && boundValue(bound.expression, sizes);
  return value?.ok && drag ? exactly(() => add(value.quantity, drag)) : value;
}

function exactly(compute: () => Quantity): BoundValue {
  try {
    return { ok: true, quantity: compute() };
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    const { left, right } = error;
    return { ok: false, fault: { kind: "wrong dimension", left, right } };
  }
}
