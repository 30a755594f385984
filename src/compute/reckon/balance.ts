import { compareQuantities } from "../../model/quantity.ts";
import { momentLines, momentUnit, sumOfMoments } from "../moments.ts";
import { amountIn } from "./amount-in.ts";
import { governs } from "./governs.ts";
import {
  answered,
  figurePart,
  type InputProblem,
  type Part,
  refused,
  rowsPart,
  sum,
  textPart,
} from "./sum.ts";

/** Stands with every sum on weight and balance. */
export const balanceCautions = [
  "arms aft of the datum count up, ahead of it down; what is taken out counts below zero",
  "whether oil and unusable fuel belong to the empty weight depends on the basis of certification",
] as const;

/**
 * Weight, moment and centre of gravity of a weighing, a loading or a change of equipment:
 * moment = weight × arm, CG = moments / weights. AC 43.13-1B, par. 10-2; FAA-H-8083-1B.
 */
export const balanceSum = sum({
  name: "balance",
  about: "weight, moment and centre of gravity of a weighing, a loading or a change",
  inputs: {
    item: {
      kind: "loads",
      about:
        "`NAME WEIGHT @ ARM`, as often as needed or with commas between; `650 lb less 5 lb @ 70 in` takes tare off; `-2 x 12 lb @ 68.5 in` takes two out",
      required: true,
      example: "pilot 170 lb @ 16 in",
    },
    start: {
      kind: "loads",
      about: "the aircraft before a change; the movement of the CG is counted from it",
      example: "1500 lb @ 28.4 in",
    },
    forward: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "forward limit of the CG, to compare",
      example: "8.5 in",
    },
    aft: {
      kind: "quantity",
      dimension: "length",
      range: "any",
      about: "aft limit of the CG, to compare",
      example: "20 in",
    },
    "max-weight": {
      kind: "quantity",
      dimension: "mass",
      range: "above zero",
      about: "greatest weight, to compare",
      example: "2100 lb",
    },
  },
  example: [
    "item=empty 1169 lb @ 10.6 in",
    "item=oil 17 lb @ -49 in",
    "item=pilot 170 lb @ 16 in",
    "item=fuel 83 lb @ 22 in",
    "forward=8.5 in",
    "max-weight=2100 lb",
  ],
  reckon(values) {
    const { item, start, forward, aft } = values;
    const most = values["max-weight"];
    const loads = [...(start ?? []), ...item];
    const first = loads[0];
    if (!first) return refused({ input: "item", message: "there is nothing to add up", help: [] });
    const problems: InputProblem[] = [];
    if (start && start.length > 1)
      problems.push({
        input: "start",
        message: "`start` is one weight at one arm",
        help: ["put what was changed into `item`"],
      });
    else if (start?.some(({ weight }) => weight.amount.lte(0)))
      problems.push({
        input: "start",
        message: "what `start` weighs has to be above zero",
        help: ["give the weight of the aircraft before the change"],
      });
    if (forward && aft && compareQuantities(forward, aft) > 0)
      problems.push({
        input: "aft",
        message: `\`aft\` of ${aft.typed} lies ahead of \`forward\` of ${forward.typed}`,
        help: ["exchange the two"],
      });

    const units = { weight: first.weight.unit, arm: first.arm.unit };
    const { weight: pounds, arm: inches } = units;
    const lines = momentLines(loads, units);
    const { weight, moment, cg } = sumOfMoments(lines);
    if (!cg)
      problems.push({
        input: "item",
        message: [
          "all together weighs ",
          { value: weight, unit: pounds.symbol },
          ", so there is no centre of gravity",
        ],
        help: ["more is taken out than there was: look at the signs"],
      });
    if (!cg || problems.length > 0) return refused(...problems);

    const product = momentUnit(units);
    const compared: Part[] = [];
    if (forward || aft) {
      const ahead = forward && cg.lt(amountIn(forward, inches));
      const behind = aft && cg.gt(amountIn(aft, inches));
      const standing = ahead
        ? "ahead of the forward limit"
        : behind
          ? "behind the aft limit"
          : "within the limits given";
      compared.push(textPart("cgVerdict", "centre of gravity", standing));
    }
    if (most)
      compared.push(
        textPart(
          "weightVerdict",
          "weight",
          weight.gt(amountIn(most, pounds))
            ? "above the greatest weight"
            : "not above the greatest weight",
        ),
      );
    return answered({
      parts: [
        rowsPart(
          "items",
          "items",
          lines.map(({ load, weight: mass, arm: place, moment: turn }, index) => [
            textPart(
              "name",
              "item",
              load.name || (start && index === 0 ? "start" : `item ${index + (start ? 0 : 1)}`),
            ),
            figurePart("weight", "weight", mass, pounds.symbol),
            figurePart("arm", "arm", place, inches.symbol),
            figurePart("moment", "moment", turn, product),
          ]),
        ),
        figurePart("weight", "weight", weight, pounds.symbol),
        figurePart("moment", "moment", moment, product),
        figurePart("cg", "centre of gravity", cg, inches.symbol),
        ...(start
          ? [
              figurePart(
                "movement",
                "movement of the CG, aft counting up",
                cg.sub(amountIn(first.arm, inches)),
                inches.symbol,
              ),
            ]
          : []),
        ...compared,
      ],
      formula: "moment = weight × arm; CG = sum of moments / sum of weights",
      source: "AC 43.13-1B (8 Sep 1998), par. 10-2h, i and r; FAA-H-8083-1B",
      cautions: [
        ...balanceCautions,
        "nothing is rounded on the way; sheets that round each moment may differ in the last place",
        governs,
      ],
    });
  },
});
