import type { Quantity } from "./quantity.ts";

/** One row of a table of limits. What its head does not name is absent in every row. */
export interface LimitTableRow {
  /** What the row is entered with: `40 °F`. */
  readonly at: Quantity;
  /** Inclusive, as in a `ToleranceRule`. */
  readonly lower?: Quantity;
  readonly upper?: Quantity;
  readonly nominal?: Quantity;
}

/**
 * Limits as a manual prints them against something else that is measured, such as the tension
 * of a cable against the temperature. Between two rows they run in a straight line; outside
 * the rows there are none.
 */
export interface LimitTable {
  /** What it is entered with: `temperature`, or the name of a size given with the reading. */
  readonly by: string;
  /** At least two, `at` rising; cells of a column all measure the same. */
  readonly rows: readonly LimitTableRow[];
}

/** One column of a table of limits. */
export type LimitColumn = readonly { readonly at: Quantity; readonly value: Quantity }[];
