import type Fraction from "fraction.js";
import type { Citation } from "./citation.ts";
import type { Span } from "./diagnostic.ts";
import type { LimitColumn, LimitTable } from "./limit-table.ts";
import type { Quantity } from "./quantity.ts";
import type { Dimension } from "./unit.ts";

/**
 * One side of a limit: fixed, in terms of declared sizes such as `2 D + 0.05 in`, or a column
 * of a table entered with the size `by`.
 */
export type Expression =
  | { readonly kind: "quantity"; readonly quantity: Quantity }
  | { readonly kind: "size"; readonly name: string }
  | { readonly kind: "multiple"; readonly factor: Fraction; readonly of: Expression }
  | {
      readonly kind: "sum" | "difference";
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: "table"; readonly by: string; readonly column: LimitColumn };

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

/**
 * What a rule limits in place of each value by itself. `difference`: how far two values lie
 * apart, such as left against right, without a sign. `range`: the highest of a series less the
 * lowest. `run-out`: the same of the readings of a dial over one turn.
 */
export const figureKinds = ["difference", "range", "run-out"] as const;
export type FigureKind = (typeof figureKinds)[number];

/** Which general rule another wins over, and where. */
export interface Precedence {
  /** Id of the general rule. */
  readonly rule: string;
  /** Ids of the steps on which it wins; absent: on all. */
  readonly steps?: readonly string[];
}

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
  /** Where the limits are columns of a table: the table as typed. */
  readonly table?: LimitTable;
  /** What is held against the limits; absent: each value by itself. */
  readonly judges?: FigureKind;
  /** The general rule that this one wins over. */
  readonly over?: Precedence;
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
  /** A sum or difference of things that do not go together. */
  | { readonly kind: "mixed"; readonly left: Dimension; readonly right: Dimension }
  /** 70 °F + 5 °F, where one of the two has to be a difference. */
  | { readonly kind: "temperatures added" }
  /** Twice 60 °F means nothing. */
  | { readonly kind: "temperature multiplied" };

/** The dimension of a limit, given the sizes it may be in terms of. */
export function expressionDimension(
  expression: Expression,
  sizes: ReadonlyMap<string, Quantity>,
): ExpressionDimension {
  switch (expression.kind) {
    case "quantity":
      return { kind: "dimension", dimension: expression.quantity.unit.dimension };
    case "size":
      return sizeDimension(expression.name, sizes);
    case "multiple": {
      const of = expressionDimension(expression.of, sizes);
      return of.kind === "dimension" && of.dimension === "temperature"
        ? { kind: "temperature multiplied" }
        : of;
    }
    case "sum":
    case "difference": {
      const left = expressionDimension(expression.left, sizes);
      const right = expressionDimension(expression.right, sizes);
      if (left.kind !== "dimension") return left;
      if (right.kind !== "dimension") return right;
      return joined(expression.kind, left.dimension, right.dimension);
    }
    case "table": {
      const { by, column } = expression;
      const [first] = column;
      const entry = sizeDimension(by, sizes);
      if (entry.kind !== "dimension" || !first) return entry;
      const wanted = first.at.unit.dimension;
      return entry.dimension === wanted
        ? { kind: "dimension", dimension: first.value.unit.dimension }
        : { kind: "mixed", left: wanted, right: entry.dimension };
    }
  }
}

function sizeDimension(name: string, sizes: ReadonlyMap<string, Quantity>): ExpressionDimension {
  const size = sizes.get(name);
  return size
    ? { kind: "dimension", dimension: size.unit.dimension }
    : { kind: "unknown size", name };
}

// As `add` and `subtract` of quantities have it.
function joined(
  deed: "sum" | "difference",
  left: Dimension,
  right: Dimension,
): ExpressionDimension {
  const [place, step] = ["temperature", "temperature difference"] as const;
  if (left === place && right === place)
    return deed === "sum" ? { kind: "temperatures added" } : { kind: "dimension", dimension: step };
  if (left === place && right === step) return { kind: "dimension", dimension: place };
  if (deed === "sum" && left === step && right === place)
    return { kind: "dimension", dimension: place };
  return left === right ? { kind: "dimension", dimension: left } : { kind: "mixed", left, right };
}
