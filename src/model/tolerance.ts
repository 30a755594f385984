import type Fraction from "fraction.js";
import type { Citation } from "./citation.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";

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
