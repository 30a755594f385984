import type Fraction from "fraction.js";
import type { Unit } from "./unit.ts";

/** One measured or stated value: the text as typed, its exact amount, and its unit. */
export interface Quantity {
  /** As typed, trailing zeros and all: `0.1250 in`, `1 3/16 in`, `No. 30`. */
  readonly typed: string;
  /** In `unit`. */
  readonly amount: Fraction;
  readonly unit: Unit;
}
