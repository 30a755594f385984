// Colours of sheet holders (clecos) by the hole they are for. The Navy manual shows the four
// fractional sizes in the trade's colours; the text was seen in a page-by-page copy.

import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";
import { compareQuantities, type Quantity, quantityOf } from "../quantity.ts";
import { unitOf } from "../unit.ts";

/** Where the colours come from. Makers differ, so that the size has to stand beside them. */
export const clecoCitation: Citation = {
  document: "NAVEDTRA 14315",
  place: "sheet holders, beside figure 4-7",
  status: "secondary",
};

/** The colour of a cleco; `other` for a size that the trade's code has none for. */
export type ClecoColour = "silver" | "copper" | "black" | "brass" | "other";

const sizes = [
  [new Fraction(3, 32), "silver"],
  [new Fraction(1, 8), "copper"],
  [new Fraction(5, 32), "black"],
  [new Fraction(3, 16), "brass"],
] as const;

/**
 * The colour of the cleco for a fastener, by its nominal diameter.
 * @example clecoColour(quantityOf(new Fraction(1, 8), unitOf("in"))) // "copper"
 */
export function clecoColour(diameter: Quantity): ClecoColour {
  const inch = unitOf("in");
  const found = sizes.find(([size]) => compareQuantities(diameter, quantityOf(size, inch)) === 0);
  return found?.[1] ?? "other";
}
