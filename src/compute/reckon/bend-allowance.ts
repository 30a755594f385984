import { bendCaution, bendInputs, bendOf, handbookAllowance, midlineAllowance } from "./bend.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/** Where both allowances come from, and how far each was checked. */
export const allowanceSource =
  "handbook: the formula as widely printed from FAA-H-8083-31, not compared with the page; midline: geometry, neutral line half-way through the sheet";

/** Why there are two. */
export const allowanceCaution =
  "the two allowances differ by about one part in a hundred; a test strip of the same sheet, bent on the same brake, decides";

/**
 * The length of sheet that a bend takes, by the handbook's formula and by the arc at half the
 * thickness; the two stand apart.
 */
export const bendAllowanceSum = sum({
  name: "bend-allowance",
  about: "the length of sheet that a bend takes up",
  inputs: bendInputs,
  example: ["radius=0.16 in", "thickness=0.040 in", "angle=90 deg"],
  reckon({ radius, thickness, angle }) {
    const bend = bendOf(radius, thickness, angle);
    if ("message" in bend) return refused(bend);
    const unit = bend.unit.symbol;
    return answered({
      parts: [
        figurePart("handbook", "handbook formula", handbookAllowance(bend), unit),
        figurePart("midline", "arc at half the thickness", midlineAllowance(bend), unit),
      ],
      formula: "handbook: (0.01743 R + 0.0078 t) × degrees; midline: 2 π (R + t/2) × degrees / 360",
      source: allowanceSource,
      cautions: [allowanceCaution, bendCaution, governs],
    });
  },
});
