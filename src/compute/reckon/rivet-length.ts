import Fraction from "fraction.js";
import { unitOf } from "../../model/unit.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, sum } from "./sum.ts";

const inch = unitOf("in");
const sixteenth = new Fraction(1, 16);

/**
 * Length of a solid rivet before driving: grip + 1.5 D, and the sixteenths of an inch around
 * it. NAVEDTRA 14018, figure 13-43; FAA-H-8083-31; standard lengths by TM 10-5410-229-13&P.
 */
export const rivetLengthSum = sum({
  name: "rivet-length",
  about: "how long a solid rivet has to be before driving",
  inputs: {
    grip: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "thickness of everything the rivet goes through",
      required: true,
      example: "0.064 in",
    },
    diameter: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "nominal rivet diameter D",
      required: true,
      example: "1/8 in",
    },
  },
  example: ["grip=0.064 in", "diameter=1/8 in"],
  reckon({ grip, diameter }) {
    const length = grip.amount.add(amountIn(diameter, grip.unit).mul("1.5"));
    const inches = amountIn(grip, inch).add(amountIn(diameter, inch).mul("1.5"));
    const sixteenths = inches.div(sixteenth);
    const thirtySeconds = amountIn(diameter, inch).mul(32);
    const above = sixteenths.ceil();
    return answered({
      result: { value: length, unit: grip.unit.symbol },
      parts: [
        figurePart(
          "nearest",
          "nearest sixteenth of an inch",
          // Half-way goes to the longer one.
          sixteenths.add(new Fraction(1, 2)).floor().mul(sixteenth),
          "in",
        ),
        figurePart("standard", "standard length at or above the sum", above.mul(sixteenth), "in"),
        ...(thirtySeconds.d === 1n
          ? [
              {
                name: "dash",
                title: "dash numbers of that standard length",
                value: {
                  kind: "text" as const,
                  text: `-${thirtySeconds.toString()}-${above.toString()}`,
                },
              },
            ]
          : []),
      ],
      formula: "length = grip + 1.5 D",
      source:
        "NAVEDTRA 14018, chapter 13, figure 13-43; FAA-H-8083-31; next standard length above the sum: TM 10-5410-229-13&P, par. 5-6(2)",
      cautions: [
        "dash numbers count thirty-seconds of an inch of diameter and sixteenths of length: shop knowledge, not read in a source; half sizes such as AD4-3.5 exist",
        "a countersunk rivet is measured with its head, a protruding one without",
        "drive one in scrap of the same thickness and measure the shop head",
        governs,
      ],
    });
  },
});
