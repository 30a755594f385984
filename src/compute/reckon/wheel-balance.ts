import { amountIn } from "./amount-in.ts";
import { balanceCautions } from "./balance.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/**
 * Centre of gravity from three scales, by the four cases of datum and third wheel:
 * nosewheel ±D − F L / W, tailwheel ±D + R L / W, D counted up when the main wheels stand aft
 * of the datum. The same as adding up moments.
 */
export const wheelBalanceSum = sum({
  name: "wheel-balance",
  about: "centre of gravity from the load on the nosewheel or tailwheel",
  inputs: {
    wheel: {
      kind: "choice",
      choices: ["nose", "tail"],
      about: "where the third wheel is",
      required: true,
      example: "nose",
    },
    third: {
      kind: "quantity",
      dimension: "mass",
      range: "zero or more",
      about: "net load on the third wheel",
      required: true,
      example: "340 lb",
    },
    wheelbase: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "from the main wheels to the third wheel",
      required: true,
      example: "78 in",
    },
    weight: {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "net weight of the whole aircraft",
      required: true,
      example: "2006 lb",
    },
    mains: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about:
        "arm of the main wheels: below zero when the datum lies behind them; counted from the wheels themselves if not given",
      example: "128 in",
    },
  },
  example: ["wheel=nose", "third=340 lb", "wheelbase=78 in", "weight=2006 lb"],
  reckon({ wheel, third, wheelbase, weight, mains }) {
    const share = amountIn(third, weight.unit).div(weight.amount);
    if (share.gt(1))
      return refused({
        input: "third",
        message: `${third.typed} on one wheel is more than the ${weight.typed} of the aircraft`,
        help: ["give net weights: scale reading less tare"],
      });
    const lever = wheelbase.amount.mul(share);
    const from = wheel === "nose" ? lever.neg() : lever;
    const unit = wheelbase.unit;
    const cg = mains ? from.add(amountIn(mains, unit)) : from;
    return answered({
      result: { value: cg, unit: unit.symbol },
      parts: [figurePart("fromMains", "from the main wheels, aft counting up", from, unit.symbol)],
      formula:
        wheel === "nose" ? "CG = arm of the mains − F L / W" : "CG = arm of the mains + R L / W",
      source:
        "FAA-H-8083-1B, chapter 10, CG from the main wheels; the four datum cases of AC 43.13-1B, figure 10-4, were not read and agree by adding up moments",
      cautions: [...balanceCautions, governs],
    });
  },
});
