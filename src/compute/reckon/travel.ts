import Fraction from "fraction.js";
import { inBaseUnits } from "../../model/quantity.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { type Real, radians } from "./real.ts";
import { answered, refused, sum } from "./sum.ts";

/**
 * Travel of a control surface without a protractor: angle = 2 asin(chord / (2 r)), and the way
 * back, chord = 2 r sin(angle / 2). Geometry.
 */
export const travelSum = sum({
  name: "travel",
  about: "the angle a control surface moves, from a straight-line measurement",
  inputs: {
    radius: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "from the hinge line to the point measured",
      required: true,
      example: "12.0 in",
    },
    chord: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "straight line between the point's two places; gives the angle",
      requiredUnless: ["angle"],
      example: "4.0 in",
    },
    angle: {
      kind: "quantity",
      dimension: "angle",
      range: "above zero",
      about: "instead of `chord`: gives the chord to look for",
      example: "25 deg",
    },
  },
  example: ["radius=12.0 in", "chord=4.0 in"],
  reckon({ radius, chord, angle }) {
    const source = "geometry";
    const cautions = [
      "the chord is the straight line from place to place, not the way along the arc",
      "measure from neutral to each stop apart; the drawings give up and down, left and right",
      governs,
    ];
    if (chord && !angle) {
      const half = amountIn(chord, radius.unit).div(radius.amount.mul(2));
      if (half.gt(1))
        return refused({
          input: "chord",
          message: `no point ${radius.typed} from the hinge can move ${chord.typed} in a straight line`,
          help: ["the most is twice the radius; measure both again"],
        });
      return answered({
        result: { value: degreesOf(half), unit: "°" },
        parts: [],
        formula: "angle = 2 asin(chord / (2 radius))",
        source,
        cautions,
      });
    }
    if (angle && !chord) {
      const degrees = inBaseUnits(angle);
      if (degrees.gt(180))
        return refused({
          input: "angle",
          message: `\`${angle.typed}\` is more than half a turn`,
          help: ["give the angle from neutral to one stop"],
        });
      const value = 2 * radius.amount.valueOf() * Math.sin(radians(degrees) / 2);
      return answered({
        result: { value, unit: radius.unit.symbol },
        parts: [],
        formula: "chord = 2 radius × sin(angle / 2)",
        source,
        cautions,
      });
    }
    return refused({
      message: chord ? "`chord` and `angle` are both given" : "`chord` or `angle` is missing",
      help: ["give one of them: `chord` for the angle, `angle` for the chord"],
    });
  },
});

// The only rational arcsines of rational numbers, in whole degrees (Niven's theorem).
function degreesOf(half: Fraction): Real {
  if (half.equals(1)) return new Fraction(180);
  if (half.equals(new Fraction(1, 2))) return new Fraction(60);
  return (2 * Math.asin(half.valueOf()) * 180) / Math.PI;
}
