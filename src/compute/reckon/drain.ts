import { convert } from "../../model/quantity.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, sum } from "./sum.ts";

/** How much fuel to drain for an excess of weight, rounded up to a tenth of the unit. */
export const drainSum = sum({
  name: "drain",
  about: "how much fuel to drain to come down to a weight",
  inputs: {
    over: {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "weight above the greatest allowed",
      required: true,
      example: "110 lb",
    },
    density: {
      kind: "density",
      about: "of the fuel, best by hydrometer; avgas is reckoned at 6 lb/gal",
      required: true,
      example: "6 lb/gal",
    },
  },
  example: ["over=110 lb", "density=6 lb/gal"],
  reckon({ over, density }) {
    const exact = convert(over, density.mass.unit).amount.div(density.mass.amount);
    return answered({
      result: { value: exact.ceil(1), unit: density.per.symbol },
      parts: [figurePart("exact", "before rounding", exact, density.per.symbol)],
      formula: "volume = weight over / density, rounded up to a tenth",
      source:
        "arithmetic; rounded up because the nearest tenth may leave the aircraft over weight. Standard weights: FAA-H-8083-30, chapter 4",
      cautions: [
        "fuel that was weighed by hydrometer wins over a standard weight",
        "look at the centre of gravity with the fuel gone",
        governs,
      ],
    });
  },
});
