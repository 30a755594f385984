import Fraction from "fraction.js";
import { compareQuantities, type Quantity } from "../../model/quantity.ts";
import { decisionRules, type Limits } from "../../model/tolerance.ts";
import { judge } from "../judge.ts";
import { acceptanceZone, assure, guardBand, standardUncertainty } from "../uncertainty.ts";
import { governs } from "./governs.ts";
import {
  answered,
  figurePart,
  type InputProblem,
  type Part,
  refused,
  sum,
  textPart,
} from "./sum.ts";

const guards = {
  simple: "no guard band",
  "guarded by U": "guard band 2 u",
  "guarded for 95 %": "guard band 1.645 u",
} as const;

/**
 * Whether a measured value meets its limits, and what its uncertainty says about that: verdict
 * by simple acceptance, assurance and conformance probability by JCGM 106:2012.
 */
export const conformitySum = sum({
  name: "conformity",
  about: "a measured value against its limits, with its uncertainty",
  inputs: {
    value: {
      kind: "any quantity",
      about: "what was measured",
      required: true,
      example: "0.1255 in",
    },
    "at-least": {
      kind: "any quantity",
      about: "lower limit; this or `at-most`, or both",
      requiredUnless: ["at-most"],
      example: "0.125 in",
    },
    "at-most": { kind: "any quantity", about: "upper limit", example: "0.130 in" },
    uncertainty: {
      kind: "any quantity",
      about: "expanded uncertainty U from the calibration; none if not given",
      example: "0.001 in",
    },
    coverage: {
      kind: "number",
      range: "above zero",
      whole: false,
      about: "coverage factor k of U; 2 if not given, 1 for a standard uncertainty",
      example: "2",
    },
    resolution: {
      kind: "any quantity",
      about: "step of the instrument's display, to add to U",
      example: "0.0005 in",
    },
    rule: {
      kind: "choice",
      choices: decisionRules,
      about: "decision rule; simple if not given",
      example: "guarded for 95 %",
    },
  },
  example: [
    "value=0.1255 in",
    "at-least=0.125 in",
    "uncertainty=0.001 in",
    "rule=guarded for 95 %",
  ],
  reckon(values) {
    const { value, uncertainty, coverage, resolution, rule } = values;
    const [lower, upper] = [values["at-least"], values["at-most"]];
    const problems: InputProblem[] = [];
    const { dimension } = value.unit;
    for (const [name, limit] of [
      ["at-least", lower],
      ["at-most", upper],
    ] as const)
      if (limit && limit.unit.dimension !== dimension) problems.push(wrong(name, limit, value));
    for (const [name, spread] of [
      ["uncertainty", uncertainty],
      ["resolution", resolution],
    ] as const) {
      if (spread && !isSpreadOf(spread, value)) problems.push(wrong(name, spread, value));
      if (spread?.amount.lt(0))
        problems.push({
          input: name,
          message: `\`${name}\` is below zero`,
          help: ["write it without a sign"],
        });
    }
    if (!lower && !upper)
      problems.push({
        message: "`at-least` and `at-most` are both missing",
        help: ["give one limit or both"],
      });
    for (const name of ["coverage", "resolution"] as const)
      if (values[name] && !uncertainty)
        problems.push({
          input: name,
          message: `\`${name}\` goes with \`uncertainty\`, which is missing`,
          help: ["give the uncertainty of the calibration, or leave this out"],
        });
    if (problems.length === 0 && lower && upper && compareQuantities(lower, upper) > 0)
      problems.push({
        input: "at-most",
        message: `\`at-most\` of ${upper.typed} lies below \`at-least\` of ${lower.typed}`,
        help: ["exchange the two"],
      });
    if (problems.length > 0) return refused(...problems);

    const limits: Limits = { ...(lower ? { lower } : {}), ...(upper ? { upper } : {}) };
    const verdict = judge(value, limits);
    const decision = rule ?? "simple";
    const instrument = {
      ...(uncertainty ? { uncertainty } : {}),
      ...(resolution ? { resolution } : {}),
      coverage: Number((coverage ?? new Fraction(2)).valueOf()),
    };
    const known = uncertainty && standardUncertainty(instrument, value);
    const assurance = known && assure(value, limits, known, decision);
    const zone = known && acceptanceZone(limits, known, decision, value.unit);
    const { unit } = value;
    const factor = unit.factor.valueOf();
    const moved = (limit: Quantity, sign: number) => {
      const guard = known && guardBand(known, decision);
      return guard
        ? limit.amount.valueOf() + (sign * guard) / limit.unit.factor.valueOf()
        : limit.amount;
    };
    const end = (name: string, title: string, limit: Quantity, sign: 1 | -1): Part =>
      zone
        ? figurePart(name, title, moved(limit, sign), limit.unit.symbol, sign > 0 ? "up" : "down")
        : { name, title, value: { kind: "none", why: "the guard bands meet" } };
    const outside: Part[] =
      verdict.kind === "within"
        ? []
        : [
            figurePart(
              "outside",
              `${verdict.kind} the limit by`,
              verdict.by,
              stepUnit(verdict.limit),
            ),
          ];
    return answered({
      parts: [
        textPart("verdict", "verdict", verdict.kind),
        ...outside,
        ...(assurance && known
          ? [
              textPart("assurance", "conformity", assurance.kind),
              figurePart("probability", "probability of conforming", assurance.probability, ""),
              figurePart(
                "standardUncertainty",
                `standard uncertainty u, with k = ${instrument.coverage}`,
                Math.sqrt(known.variance.valueOf()) / factor,
                stepUnit(value),
              ),
              ...(lower ? [end("acceptFrom", "proven from", lower, 1)] : []),
              ...(upper ? [end("acceptTo", "proven up to", upper, -1)] : []),
            ]
          : ([
              {
                name: "assurance",
                title: "conformity",
                value: { kind: "none", why: "the uncertainty is not given" },
              },
              {
                name: "probability",
                title: "probability of conforming",
                value: { kind: "none", why: "the uncertainty is not given" },
              },
            ] satisfies Part[])),
        textPart("rule", "decision rule", `${decision}: ${guards[decision]}`),
      ],
      formula:
        "u = √((U / k)² + step² / 12); probability = 1 − P(below the lower limit) − P(above the upper limit), normal",
      source:
        "JCGM 106:2012, clauses 7 and 8, and JCGM 100:2008, 4.3.3 and F.2.2.1; neither was opened, the formulas are the standard ones",
      cautions: [
        "the verdict takes the value as written; the uncertainty decides only how sure it is",
        ...(uncertainty && !coverage
          ? ["`coverage` was not given: U is taken to have k = 2, as most certificates have it"]
          : []),
        ...(known && !zone
          ? [
              "the guard bands meet: no reading of this instrument could prove conformity; measure with a better one",
            ]
          : []),
        ...(decision === "guarded for 95 %"
          ? [
              "ISO 14253-1 of 2017 is quoted with this rule, its earlier editions with the guard band U: say which one was used",
            ]
          : []),
        governs,
      ],
    });
  },
});

function isSpreadOf({ unit }: Quantity, value: Quantity): boolean {
  const { dimension } = value.unit;
  if (unit.dimension === dimension) return true;
  if (unit.dimension === "ratio") return dimension !== "temperature";
  return unit.dimension === "temperature difference" && dimension === "temperature";
}

function wrong(input: string, typed: Quantity, value: Quantity): InputProblem {
  return {
    input,
    message: `\`${typed.typed}\` is a ${typed.unit.dimension}, but the value \`${value.typed}\` is a ${value.unit.dimension}`,
    help: [`give a ${value.unit.dimension}`],
  };
}

// A step on a thermometer is no temperature.
function stepUnit({ unit }: Quantity): string {
  return unit.dimension === "temperature" ? `Δ${unit.symbol}` : unit.symbol;
}
