import type Fraction from "fraction.js";
import type { Citation } from "./citation.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";
import type { Dimension } from "./unit.ts";

/** One side of a limit: fixed, or in terms of declared sizes such as `2 D + 0.05 in`. */
export type Expression =
  | { readonly kind: "quantity"; readonly quantity: Quantity }
  | { readonly kind: "size"; readonly name: string }
  | { readonly kind: "multiple"; readonly factor: Fraction; readonly of: Expression }
  | {
      readonly kind: "sum" | "difference";
      readonly left: Expression;
      readonly right: Expression;
    };

/** A limit as typed and as understood. */
export interface Bound {
  readonly typed: string;
  readonly expression: Expression;
}

/** Who a rule speaks for. Drawing and manual limits win over general ones. */
export const authorities = ["drawing", "manual", "published", "common practice"] as const;
export type Authority = (typeof authorities)[number];

/**
 * How uncertainty enters the decision. `simple` takes the reading as written; the guarded
 * ones move the limit inwards by U (coverage factor 2) or by 1.645 u (95 %, one-sided).
 */
export const decisionRules = ["simple", "guarded by U", "guarded for 95 %"] as const;
export type DecisionRule = (typeof decisionRules)[number];

/** A limit and who says so. */
export interface ToleranceRule {
  readonly id: string;
  readonly title: string;
  readonly authority: Authority;
  readonly citation: Citation;
  /** Name of the shipped rule set it was taken from, when it was. */
  readonly set?: string;
  /** Inclusive. An absent end is never broken. */
  readonly lower?: Bound;
  readonly upper?: Bound;
  readonly nominal?: Bound;
  readonly sizes: ReadonlyMap<string, Quantity>;
  readonly decision: DecisionRule;
  /** Whether a friction drag written beside the reading is added to both limits. */
  readonly addsDrag: boolean;
  /** What can make this kind of reading look wrong, and cautions of the source. */
  readonly advice: readonly string[];
  readonly span: Span;
}

/** Limits with every size filled in. Inclusive; an absent end is never broken. */
export interface Limits {
  readonly lower?: Quantity;
  readonly upper?: Quantity;
}

/** What a limit measures, or why that cannot be said. */
export type ExpressionDimension =
  | { readonly kind: "dimension"; readonly dimension: Dimension }
  | { readonly kind: "unknown size"; readonly name: string }
  | { readonly kind: "mixed"; readonly left: Dimension; readonly right: Dimension };

/** The dimension of a limit, given the sizes it may be in terms of. */
export function expressionDimension(
  expression: Expression,
  sizes: ReadonlyMap<string, Quantity>,
): ExpressionDimension {
  switch (expression.kind) {
    case "quantity":
      return { kind: "dimension", dimension: expression.quantity.unit.dimension };
    case "size": {
      const size = sizes.get(expression.name);
      return size
        ? { kind: "dimension", dimension: size.unit.dimension }
        : { kind: "unknown size", name: expression.name };
    }
    case "multiple":
      return expressionDimension(expression.of, sizes);
    case "sum":
    case "difference": {
      const left = expressionDimension(expression.left, sizes);
      const right = expressionDimension(expression.right, sizes);
      if (left.kind !== "dimension") return left;
      if (right.kind !== "dimension") return right;
      // A temperature may be moved by a temperature difference, and stays a temperature.
      if (left.dimension === "temperature" && right.dimension === "temperature difference") {
        return left;
      }
      return left.dimension === right.dimension
        ? left
        : { kind: "mixed", left: left.dimension, right: right.dimension };
    }
  }
}
