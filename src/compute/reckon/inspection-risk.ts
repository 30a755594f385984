import type { Quantity } from "../../model/quantity.ts";
import { compareQuantities, inBaseUnits } from "../../model/quantity.ts";
import { guardFor, type InspectionPlan, inspectionRisk, type Process } from "../inspection-risk.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type InputProblem, refused, sum } from "./sum.ts";

/**
 * What an inspection of many like parts lets through and throws away: the consumer's and the
 * producer's risk of JCGM 106:2012, clause 9, and the guard band for a risk that is wanted.
 */
export const inspectionRiskSum = sum({
  name: "inspection-risk",
  about: "how many wrong parts an inspection passes, and how many good ones it rejects",
  inputs: {
    mean: {
      kind: "any quantity",
      about: "mean of the parts made, normally distributed; or `shape` and `scale`",
      requiredUnless: ["shape"],
      example: "0.500 in",
    },
    spread: { kind: "any quantity", about: "their standard deviation", example: "0.004 in" },
    shape: {
      kind: "number",
      range: "above zero",
      whole: false,
      about: "shape of a gamma distribution, 1 or more, for what cannot be below zero",
      example: "4",
    },
    scale: {
      kind: "any quantity",
      about: "its scale; the mean is shape × scale",
      example: "0.25 mm",
    },
    measuring: {
      kind: "any quantity",
      about: "standard uncertainty of one measurement (U / k)",
      required: true,
      example: "0.001 in",
    },
    "at-least": {
      kind: "any quantity",
      about: "lower limit; this or `at-most`, or both",
      requiredUnless: ["at-most"],
      example: "0.492 in",
    },
    "at-most": { kind: "any quantity", about: "upper limit", example: "0.508 in" },
    guard: {
      kind: "any quantity",
      about: "guard band inside each limit; none if not given",
      example: "0.001 in",
    },
    wanted: {
      kind: "number",
      range: "above zero",
      whole: false,
      about: "share of wrongly accepted parts that may remain, to get the guard band for it",
      example: "0.001",
    },
  },
  example: [
    "mean=0.500 in",
    "spread=0.004 in",
    "measuring=0.001 in",
    "at-least=0.492 in",
    "at-most=0.508 in",
  ],
  reckon(values) {
    const { mean, spread, shape, scale, measuring, guard, wanted } = values;
    const [lower, upper] = [values["at-least"], values["at-most"]];
    const given = { mean, spread, scale, "at-least": lower, "at-most": upper, guard };
    const problems: InputProblem[] = [];
    for (const [input, value] of Object.entries(given)) {
      if (!value || value.unit.dimension === measuring.unit.dimension) continue;
      problems.push({
        input,
        message: `\`${value.typed}\` is a ${value.unit.dimension}, but \`measuring\` is a ${measuring.unit.dimension}`,
        help: [`give a ${measuring.unit.dimension}`],
      });
    }
    for (const [input, value] of Object.entries({ spread, scale, measuring })) {
      if (!value || value.amount.gt(0)) continue;
      problems.push({
        input,
        message: `\`${input}\` has to be above zero`,
        help: ["give how far parts or readings scatter"],
      });
    }
    const process = processOf(mean, spread, shape?.valueOf(), scale);
    if (!process) {
      problems.push({
        message: "the parts made are described by `mean` and `spread`, or by `shape` and `scale`",
        help: ["give one pair of the two; a shape is 1 or more"],
      });
    }
    const alike = lower && upper && lower.unit.dimension === upper.unit.dimension;
    if (alike && compareQuantities(lower, upper) > 0) {
      problems.push({
        input: "at-most",
        message: `\`at-most\` of ${upper.typed} lies below \`at-least\` of ${lower.typed}`,
        help: ["exchange the two"],
      });
    }
    if (wanted?.gte(1)) {
      problems.push({
        input: "wanted",
        message: "`wanted` is a share of the parts, below 1",
        help: ["one part in a thousand is 0.001"],
      });
    }
    if (guard && wanted) {
      problems.push({
        input: "wanted",
        message: "`wanted` asks for the guard band, and `guard` gives one",
        help: ["leave one of the two out"],
      });
    }
    if (problems.length > 0 || !process) return refused(...problems);

    const plan = {
      ...(lower ? { lower: size(lower) } : {}),
      ...(upper ? { upper: size(upper) } : {}),
      u: size(measuring),
    };
    const band = wanted ? guardFor(process, plan, wanted.valueOf()) : guard ? size(guard) : 0;
    if (band === undefined) {
      return refused({
        input: "wanted",
        message:
          "no guard band of up to eight standard uncertainties brings the risk down that far",
        help: ["measure with a better instrument, or accept a larger share"],
      });
    }
    const risk = inspectionRisk(process, { ...plan, guard: band });
    const perUnit = Number(measuring.unit.factor.valueOf());
    const accepted = (limit: Quantity, sign: number) => (size(limit) + sign * band) / perUnit;
    const { symbol } = measuring.unit;
    const capability = capabilityOf(process, plan);
    return answered({
      parts: [
        figurePart("nonConforming", "parts made outside the limits", risk.nonConforming, ""),
        figurePart("wronglyAccepted", "made outside and accepted", risk.wronglyAccepted, ""),
        figurePart("wronglyRejected", "made within and rejected", risk.wronglyRejected, ""),
        ...(capability === undefined
          ? []
          : [figurePart("cpk", "Cpk: room to the nearer limit / 3 spreads", capability, "")]),
        figurePart("guard", "guard band", band / perUnit, symbol),
        ...(lower
          ? [figurePart("acceptFrom", "accept readings from", accepted(lower, 1), symbol, "up")]
          : []),
        ...(upper
          ? [figurePart("acceptTo", "accept readings to", accepted(upper, -1), symbol, "down")]
          : []),
      ],
      formula:
        "integral over all true values of: how often they are made × how often they read inside the acceptance limits (normal)",
      source:
        "JCGM 106:2012, clause 9, which was not opened; its worked answers were seen in programs that reproduce them",
      cautions: [
        ...(lower && upper && accepted(lower, 1) > accepted(upper, -1)
          ? ["the guard bands meet: no reading is accepted; measure with a better instrument"]
          : []),
        "shares are of all parts made; they hold for parts and readings that scatter as described",
        governs,
      ],
    });
  },
});

function size(quantity: Quantity): number {
  return Number(inBaseUnits(quantity).valueOf());
}

// Below zero where the mean itself is outside. Of a normal distribution only.
function capabilityOf(
  made: Process,
  { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY }: Partial<InspectionPlan>,
): number | undefined {
  if (made.kind !== "normal") return undefined;
  const { mean, sd } = made;
  return Math.min(upper - mean, mean - lower) / (3 * sd);
}

function processOf(
  mean: Quantity | undefined,
  spread: Quantity | undefined,
  shape: number | undefined,
  scale: Quantity | undefined,
): Process | undefined {
  if (mean && spread && shape === undefined && !scale) {
    return { kind: "normal", mean: size(mean), sd: size(spread) };
  }
  if (shape !== undefined && shape >= 1 && scale && !mean && !spread) {
    return { kind: "gamma", shape, scale: size(scale) };
  }
  return undefined;
}
