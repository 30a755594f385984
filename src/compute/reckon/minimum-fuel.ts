import { citationText } from "../../model/citation.ts";
import {
  minimumFuelCitation,
  minimumGallonsPerHorsepower,
  minimumPoundsPerHorsepower,
} from "../../model/published/minimum-fuel.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, sum } from "./sum.ts";

/** Fuel that counts as aboard when an extreme of the centre of gravity is checked with little. */
export const minimumFuelSum = sum({
  name: "minimum-fuel",
  about: "fuel aboard for a check of the extremes, by the power of the engine",
  inputs: {
    horsepower: {
      kind: "number",
      range: "above zero",
      whole: false,
      about: "maximum except take-off (METO), a plain number",
      required: true,
      example: "165",
    },
  },
  example: ["horsepower=165"],
  reckon({ horsepower }) {
    const pounds = horsepower.mul(minimumPoundsPerHorsepower);
    return answered({
      result: { value: pounds, unit: "lb" },
      parts: [
        figurePart(
          "wholePounds",
          "in whole pounds, as the circular prints it",
          pounds.round(),
          "lb",
        ),
        figurePart(
          "volume",
          "the same at 6 lb/gal",
          horsepower.mul(minimumGallonsPerHorsepower),
          "gal",
        ),
      ],
      formula: "pounds = horsepower / 2; gallons = horsepower / 12",
      source: citationText(minimumFuelCitation),
      cautions: [
        "for the extreme on whose side the fuel does not lie; for the other extreme the tanks are full",
        "a weight for reckoning, not a reserve to fly with",
        governs,
      ],
    });
  },
});
