import { asTyped } from "../../model/quantity.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/**
 * Ballast that brings the centre of gravity to a limit: W × (limit − CG) / (arm − limit).
 * FAA-H-8083-30, page 4-23.
 */
export const ballastSum = sum({
  name: "ballast",
  about: "ballast that brings the centre of gravity to a limit",
  inputs: {
    weight: {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "weight of the aircraft as loaded",
      required: true,
      example: "4954 lb",
    },
    cg: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "its centre of gravity",
      required: true,
      example: "30.5 in",
    },
    limit: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "the limit that is broken",
      required: true,
      example: "32.0 in",
    },
    arm: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "where the ballast goes",
      required: true,
      example: "162 in",
    },
  },
  example: ["weight=4954 lb", "cg=30.5 in", "limit=32.0 in", "arm=162 in"],
  reckon({ weight, cg, limit, arm }) {
    const { unit } = cg;
    const wanted = amountIn(limit, unit).sub(cg.amount);
    const lever = amountIn(arm, unit).sub(amountIn(limit, unit));
    if (lever.equals(0))
      return refused({
        input: "arm",
        message: "ballast at the limit itself never brings the centre of gravity there",
        help: ["choose a place further from the limit"],
      });
    const ballast = weight.amount.mul(wanted).div(lever);
    if (ballast.lt(0))
      return refused({
        input: "arm",
        message: `ballast at ${asTyped(arm)} moves the centre of gravity away from ${asTyped(limit)}`,
        help: ["put it on the other side, or look at the signs: aft of the datum counts up"],
      });
    return answered({
      result: { value: ballast, unit: weight.unit.symbol },
      parts: [
        figurePart(
          "enough",
          "rounded up to a hundredth, so that it is enough",
          ballast.ceil(2),
          weight.unit.symbol,
        ),
        figurePart(
          "total",
          "weight with the ballast",
          weight.amount.add(ballast),
          weight.unit.symbol,
        ),
      ],
      formula: "ballast = weight × (limit − CG) / (arm − limit)",
      source: "FAA-H-8083-30, page 4-23",
      cautions: [
        "this reaches the limit exactly; round up, and add up the whole loading again",
        "permanent ballast is painted red and placarded; temporary ballast is placarded and taken out before weighing (FAA-H-8083-1B)",
        governs,
      ],
    });
  },
});
