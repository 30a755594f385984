import type { Quantity } from "./quantity.ts";

/** One line of a weighing or loading: what it is, what it weighs, where it sits. */
export interface Load {
  /** As typed: `pilot`; empty when no name was given. */
  readonly name: string;
  /** Net mass; negative for something taken out. */
  readonly weight: Quantity;
  /** Length from the datum, positive aft of it. */
  readonly arm: Quantity;
}
