// FAA AC 43.13-1B, 8 Sep 1998, change 1 of 27 Sep 2001, chapter 10. Read in a page-by-page copy.

import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";
import { inBaseUnits, type Quantity, quantityOf } from "../quantity.ts";
import { unitOf } from "../unit.ts";

/** Where it is said how small a change of weight or balance is negligible. */
export const negligibleChangeSource: Citation = {
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place: "par. 10-2c",
  status: "read",
};

/** A movement of the centre of gravity below this is negligible, in % of the MAC, fixed wing. */
export const negligibleChordPercent = new Fraction("0.05");

const pound = unitOf("lb");
const pounds = (amount: number): Quantity => quantityOf(new Fraction(amount), pound);

/** The largest change of weight that is negligible, inclusive, for an empty weight. */
export function negligibleWeight(emptyWeight: Quantity): Quantity {
  const weight = inBaseUnits(emptyWeight).div(pound.factor);
  if (weight.lt(5000)) return pounds(1);
  return weight.lte(50_000) ? pounds(2) : pounds(5);
}
