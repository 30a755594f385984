import { chordPercent } from "../moments.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, refused, sum } from "./sum.ts";

/** A centre of gravity in per cent of the mean aerodynamic chord. FAA-H-8083-1B. */
export const meanChordSum = sum({
  name: "mac",
  about: "a centre of gravity in per cent of the mean aerodynamic chord",
  inputs: {
    cg: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "centre of gravity",
      required: true,
      example: "663 in",
    },
    lemac: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "leading edge of the mean aerodynamic chord",
      required: true,
      example: "625.6 in",
    },
    temac: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "trailing edge of the chord; this or `mac`",
      requiredUnless: ["mac"],
      example: "760.1 in",
    },
    mac: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "length of the chord; this or `temac`",
      example: "134.5 in",
    },
  },
  example: ["cg=663 in", "lemac=625.6 in", "temac=760.1 in"],
  reckon({ cg, lemac, temac, mac }) {
    const { unit } = cg;
    if (!temac === !mac)
      return refused({
        message: temac ? "`temac` and `mac` are both given" : "`temac` or `mac` is missing",
        help: ["give one of them: where the chord ends, or how long it is"],
      });
    const front = amountIn(lemac, unit);
    const chord = mac ? amountIn(mac, unit) : temac ? amountIn(temac, unit).sub(front) : front;
    if (chord.lte(0))
      return refused({
        input: "temac",
        message: "the trailing edge does not lie behind the leading edge",
        help: ["exchange `lemac` and `temac`"],
      });
    return answered({
      result: { value: chordPercent(cg.amount, front, front.add(chord)), unit: "%" },
      parts: [figurePart("chord", "mean aerodynamic chord", chord, unit.symbol)],
      formula: "%MAC = (CG − LEMAC) / MAC × 100",
      source: "FAA-H-8083-1B",
      cautions: [governs],
    });
  },
});
