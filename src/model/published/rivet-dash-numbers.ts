import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";

/** The circular shows dash numbers in use; the rule of thirty-seconds itself is shop knowledge. */
export const rivetDashCitation: Citation = {
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place: "par. 4-57a(4), for the form of the number",
  status: "memory",
};

/**
 * Nominal shank diameter of a solid rivet, in inches: the first dash number of an AN or MS
 * part number counts thirty-seconds, so `AN470AD4-5` is 4/32 in thick.
 * @returns `undefined` for a dash number that no solid rivet has (below 2 or above 12).
 */
export function rivetDiameterInches(dash: number): Fraction | undefined {
  return dash >= 2 && dash <= 12 ? new Fraction(dash, 32) : undefined;
}
