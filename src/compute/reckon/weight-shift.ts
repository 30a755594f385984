import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/** How far the centre of gravity moves when a weight is moved: w × distance / W. FAA-H-8083-1B. */
export const weightShiftSum = sum({
  name: "weight-shift",
  about: "how far the centre of gravity moves when a weight is moved",
  inputs: {
    moved: {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "the weight that is moved",
      required: true,
      example: "180 lb",
    },
    from: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "arm it comes from",
      required: true,
      example: "110 in",
    },
    to: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "arm it goes to",
      required: true,
      example: "142 in",
    },
    weight: {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "weight of the whole aircraft, the moved one included",
      required: true,
      example: "2700 lb",
    },
    cg: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "centre of gravity before, to get the new one",
      example: "112 in",
    },
  },
  example: ["moved=180 lb", "from=110 in", "to=142 in", "weight=2700 lb"],
  reckon({ moved, from, to, weight, cg }) {
    const { unit } = from;
    const share = amountIn(moved, weight.unit).div(weight.amount);
    if (share.gt(1))
      return refused({
        input: "moved",
        message: `${moved.typed} is more than the ${weight.typed} of the whole aircraft`,
        help: ["`weight` is the whole aircraft, the moved weight included"],
      });
    const movement = share.mul(amountIn(to, unit).sub(from.amount));
    return answered({
      result: { value: movement, unit: unit.symbol },
      parts: cg
        ? [figurePart("cg", "new centre of gravity", amountIn(cg, unit).add(movement), unit.symbol)]
        : [],
      formula: "movement = weight moved × (to − from) / whole weight; aft counts up",
      source: "FAA-H-8083-1B, weight-shift formula",
      cautions: ["add up the whole loading again before relying on it", governs],
    });
  },
});
