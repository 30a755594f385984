import Fraction from "fraction.js";
import { convert, type Quantity } from "../../model/quantity.ts";
import {
  type Bend,
  bendCaution,
  bendInputs,
  bendOf,
  handbookAllowance,
  midlineAllowance,
  setback,
} from "./bend.ts";
import { allowanceCaution, allowanceSource } from "./bend-allowance.ts";
import { governs } from "./governs.ts";
import { minus, plus, type Real } from "./real.ts";
import {
  answered,
  figurePart,
  figuresPart,
  type InputProblem,
  type Part,
  refused,
  sum,
} from "./sum.ts";

const none = new Fraction(0);

/**
 * The flats between bends and the developed width of a part with one bend or several: each flat
 * is its mold-line dimension less the setback of each bend beside it, the width is flats and
 * allowances together. AC 43.13-1B, par. 4-56; FAA-H-8083-31.
 */
export const flatPatternSum = sum({
  name: "flat-pattern",
  about: "flats and developed width of a channel, an angle or a part with several bends",
  inputs: {
    legs: {
      kind: "quantities",
      dimension: "length",
      range: "above zero",
      about: "mold-line dimensions in order, one more than there are bends",
      required: true,
      example: "1.00, 2.00, 1.00 in",
    },
    radius: {
      kind: "quantities",
      dimension: "length",
      range: "zero or more",
      about: "inside radius R: one for all bends, or one for each in order",
      required: true,
      example: "0.16 in",
    },
    thickness: bendInputs.thickness,
    angle: {
      kind: "quantities",
      dimension: "angle",
      range: "above zero",
      about: "how far the sheet is turned, from flat: one for all bends, or one for each in order",
      required: true,
      example: "90 deg",
    },
  },
  example: ["legs=1.00, 2.00, 1.00 in", "radius=0.16 in", "thickness=0.040 in", "angle=90 deg"],
  reckon({ legs, radius, thickness, angle }) {
    const count = legs.length - 1;
    if (count < 1)
      return refused({
        input: "legs",
        message: "one mold-line dimension makes no bend",
        help: ['give one more dimension than there are bends, as in `legs="1.00, 2.00 in"`'],
      });
    const problems = [
      ...countProblem("radius", radius, count),
      ...countProblem("angle", angle, count),
    ];
    if (problems.length > 0) return refused(...problems);
    const bends: Bend[] = [];
    for (let index = 0; index < count; index++) {
      const [turned, inside] = [angle[index] ?? angle[0], radius[index] ?? radius[0]];
      if (!turned || !inside || !radius[0]) continue;
      const bend = bendOf(convert(inside, radius[0].unit), thickness, turned);
      if ("message" in bend) return refused(bend);
      bends.push(bend);
    }
    const unit = radius[0]?.unit ?? thickness.unit;

    const setbacks = bends.map(setback);
    const flats = legs.map((leg, index) =>
      [setbacks[index - 1], setbacks[index]].reduce<Real>(
        (flat, back) => (back === undefined ? flat : minus(flat, back)),
        convert(leg, unit).amount,
      ),
    );
    const short = legs.filter((_, index) => (flats[index] ?? 0).valueOf() < 0);
    if (short.length > 0)
      return refused({
        input: "legs",
        message: `${short.map(({ typed }) => `\`${typed}\``).join(", ")}: shorter than the setbacks beside it, so no flat is left`,
        help: ["a longer leg, a smaller radius or a smaller angle makes the part possible"],
      });

    const handbook = bends.map(handbookAllowance);
    const midline = bends.map(midlineAllowance);
    const width = (allowances: readonly Real[]) =>
      [...flats, ...allowances].reduce<Real>(plus, none);
    const alike = radius.length === 1 && angle.length === 1;
    const ofBends = (name: string, of: readonly Real[], title: string): Part => {
      const [first = none] = of;
      return alike
        ? figurePart(name, title, first, unit.symbol)
        : figuresPart(`${name}s`, title, of, unit.symbol);
    };
    return answered({
      parts: [
        ofBends("setback", setbacks, "setback of each bend"),
        figuresPart("flats", "flats", flats, unit.symbol),
        ofBends("allowance", handbook, "allowance of each bend, handbook formula"),
        figurePart("width", "developed width, handbook formula", width(handbook), unit.symbol),
        ofBends("midlineAllowance", midline, "allowance of each bend, arc at half the thickness"),
        figurePart(
          "midlineWidth",
          "developed width, arc at half the thickness",
          width(midline),
          unit.symbol,
        ),
      ],
      formula:
        "flat = mold-line dimension − setback for each bend beside it; width = flats + allowances",
      source: `setback: AC 43.13-1B (8 Sep 1998), par. 4-56b; ${allowanceSource}`,
      cautions: [
        "round the width last: allowances rounded before they are added make the part wrong by the sum of the roundings",
        ...(alike
          ? []
          : ["bends are taken in the order of the legs: the first one joins the first two legs"]),
        allowanceCaution,
        bendCaution,
        governs,
      ],
    });
  },
});

function countProblem(input: string, given: readonly Quantity[], bends: number): InputProblem[] {
  if (given.length === 1 || given.length === bends) return [];
  return [
    {
      input,
      message: `\`${input}\` is given ${given.length} times for ${bends === 1 ? "one bend" : `${bends} bends`}`,
      help: ["give one for all bends, or one for each; there is one bend fewer than legs"],
    },
  ];
}
