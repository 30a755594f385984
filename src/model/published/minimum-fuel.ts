// FAA AC 43.13-1B, 8 Sep 1998, change 1 of 27 Sep 2001, chapter 10. Read in a page-by-page copy.

import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";

/** Where the minimum fuel of an extreme check is said. */
export const minimumFuelCitation: Citation = {
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place: "par. 10-2p",
  status: "read",
};

/** Pounds of fuel for each horsepower at maximum except take-off (METO). */
export const minimumPoundsPerHorsepower = new Fraction(1, 2);

/** The same in US gallons, at 6 lb per gallon. */
export const minimumGallonsPerHorsepower = new Fraction(1, 12);
