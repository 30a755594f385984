import Fraction from "fraction.js";
import { convert } from "../../model/quantity.ts";
import {
  bendCaution,
  bendInputs,
  bendOf,
  handbookAllowance,
  midlineAllowance,
  setback,
} from "./bend.ts";
import { allowanceCaution, allowanceSource } from "./bend-allowance.ts";
import { governs } from "./governs.ts";
import { minus, plus, times } from "./real.ts";
import { answered, figurePart, figuresPart, refused, sum } from "./sum.ts";

/**
 * The flats between bends and the developed width of a part bent the same way at each corner:
 * each flat is its mold-line dimension less the setback of each bend beside it, the width is
 * flats and allowances together. AC 43.13-1B, par. 4-56; FAA-H-8083-31.
 */
export const flatPatternSum = sum({
  name: "flat-pattern",
  about: "flats and developed width of a channel or angle with equal bends",
  inputs: {
    legs: {
      kind: "lengths",
      about: "mold-line dimensions in order, one more than there are bends",
      required: true,
      example: "1.00, 2.00, 1.00 in",
    },
    ...bendInputs,
  },
  example: ["legs=1.00, 2.00, 1.00 in", "radius=0.16 in", "thickness=0.040 in", "angle=90 deg"],
  reckon({ legs, radius, thickness, angle }) {
    const bend = bendOf(radius, thickness, angle);
    if ("message" in bend) return refused(bend);
    if (legs.length < 2)
      return refused({
        input: "legs",
        message: "one mold-line dimension makes no bend",
        help: ['give one more dimension than there are bends, as in `legs="1.00, 2.00 in"`'],
      });

    const unit = bend.unit.symbol;
    const back = setback(bend);
    const flats = legs.map((leg, index) => {
      const bends = index === 0 || index === legs.length - 1 ? 1 : 2;
      return minus(convert(leg, bend.unit).amount, times(back, new Fraction(bends)));
    });
    const short = legs.filter((_, index) => (flats[index] ?? 0).valueOf() < 0);
    if (short.length > 0)
      return refused({
        input: "legs",
        message: `${short.map(({ typed }) => `\`${typed}\``).join(", ")}: shorter than the setbacks beside it, so no flat is left`,
        help: ["a longer leg, a smaller radius or a smaller angle makes the part possible"],
      });

    const bends = new Fraction(legs.length - 1);
    const straight = flats.reduce(plus, new Fraction(0));
    const handbook = handbookAllowance(bend);
    const midline = midlineAllowance(bend);
    return answered({
      parts: [
        figurePart("setback", "setback of each bend", back, unit),
        figuresPart("flats", "flats", flats, unit),
        figurePart("allowance", "allowance of each bend, handbook formula", handbook, unit),
        figurePart(
          "width",
          "developed width, handbook formula",
          plus(straight, times(bends, handbook)),
          unit,
        ),
        figurePart(
          "midlineAllowance",
          "allowance of each bend, arc at half the thickness",
          midline,
          unit,
        ),
        figurePart(
          "midlineWidth",
          "developed width, arc at half the thickness",
          plus(straight, times(bends, midline)),
          unit,
        ),
      ],
      formula:
        "flat = mold-line dimension − setback for each bend beside it; width = flats + allowances",
      source: `setback: AC 43.13-1B (8 Sep 1998), par. 4-56b; ${allowanceSource}`,
      cautions: [
        "round the width last: allowances rounded before they are added make the part wrong by the sum of the roundings",
        allowanceCaution,
        bendCaution,
        governs,
      ],
    });
  },
});
