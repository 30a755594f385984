import { bendCaution, bendInputs, bendOf, setback, setbackFactor } from "./bend.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/**
 * Setback of a bend, SB = K (R + t) with K = tan(angle / 2).
 * AC 43.13-1B, par. 4-56b; FAA-H-8083-31.
 */
export const setbackSum = sum({
  name: "setback",
  about: "from the mold line to where a bend begins",
  inputs: bendInputs,
  example: ["radius=0.25 in", "thickness=0.064 in", "angle=45 deg"],
  reckon({ radius, thickness, angle }) {
    const bend = bendOf(radius, thickness, angle);
    if ("message" in bend) return refused(bend);
    return answered({
      result: { value: setback(bend), unit: bend.unit.symbol },
      parts: [figurePart("factor", "factor K", setbackFactor(bend), "")],
      formula: "SB = K (R + t), K = tan(angle / 2)",
      source: "AC 43.13-1B (8 Sep 1998), par. 4-56b; FAA-H-8083-31",
      cautions: [
        "table 4-7 of the circular cuts K off after four places instead of rounding it, so that its figures may be lower by one in the last place",
        bendCaution,
        governs,
      ],
    });
  },
});
