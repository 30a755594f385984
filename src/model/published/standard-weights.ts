// FAA-H-8083-30, chapter 4, standard weights. Read in several copies.

import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";

/** Where the standard weights stand. */
export const standardWeightsCitation: Citation = {
  document: "FAA-H-8083-30",
  place: "chapter 4, standard weights",
  status: "read",
};

/** Pounds in a US gallon. What was weighed by hydrometer wins over them. */
export const standardPoundsPerGallon = {
  avgas: new Fraction(6),
  "turbine fuel": new Fraction("6.7"),
  "lubricating oil": new Fraction("7.5"),
  water: new Fraction("8.35"),
} as const;

/** Pounds of a person aboard. */
export const standardPerson = new Fraction(170);
