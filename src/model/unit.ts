import type Fraction from "fraction.js";

/** What a unit measures. Only equal dimensions compare. */
export const dimensions = [
  "length",
  "area",
  "volume",
  "mass",
  "force",
  "torque",
  "pressure",
  "angle",
  "temperature",
  "temperature difference",
  "time",
  "ratio",
  "count",
] as const;
export type Dimension = (typeof dimensions)[number];

/** A unit as an exact ratio to the base unit of its dimension. */
export interface Unit {
  /** As printed: `in`, `lbf·in`, `°F`. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Base units per unit. */
  readonly factor: Fraction;
  /** Added after `factor`; only temperatures have one. */
  readonly offset: Fraction;
  /** Where the factor comes from. */
  readonly source: string;
}
