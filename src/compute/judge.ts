import type Fraction from "fraction.js";
import type { Quantity } from "../model/quantity.ts";

/** Simple acceptance against the limits as written. */
export type Verdict =
  | { readonly kind: "within" }
  | { readonly kind: "below" | "above"; readonly limit: Quantity; readonly by: Fraction };

/** What the instrument's uncertainty says about conformity (JCGM 106). */
export interface Assurance {
  readonly kind: "proven" | "not proven" | "disproven" | "no acceptance zone";
  /** Conformance probability, 0 to 1. */
  readonly probability: number;
}
