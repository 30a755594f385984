import type { Quantity } from "./quantity.ts";

/** A stretch along a line: from one length to another, both measured from the same end. */
export interface Stretch {
  readonly from: Quantity;
  /** Not below `from`. */
  readonly to: Quantity;
}
