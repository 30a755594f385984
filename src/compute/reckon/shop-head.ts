import type { Quantity } from "../../model/quantity.ts";
import { convert } from "../../model/quantity.ts";
import { unitOf } from "../../model/unit.ts";
import { judge } from "../judge.ts";
import { fromSet, type SetLimits, sourceText } from "./from-set.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type Part, rowsPart, sum, textPart } from "./sum.ts";

const inch = unitOf("in");
const sets = [
  { name: "driven-head-1.5d", title: "1.5 D rule" },
  { name: "driven-head-mil", title: "MIL sizes" },
  { name: "driven-head-1940s", title: "1940s nominal sizes" },
] as const;

/**
 * How wide and how high a driven head has to be, each published rule set apart, and what each
 * says of a head that was measured.
 */
export const shopHeadSum = sum({
  name: "shop-head",
  about: "limits of a driven rivet head, each rule set apart",
  inputs: {
    diameter: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "nominal rivet diameter D",
      required: true,
      example: "1/8 in",
    },
    width: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "diameter of a head that was measured",
      example: "0.170 in",
    },
    height: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "height of a head that was measured",
      example: "0.055 in",
    },
  },
  example: ["diameter=1/8 in", "width=0.170 in", "height=0.055 in"],
  reckon({ diameter, width, height }) {
    const rows = sets.flatMap(({ name, title }) => {
      const across = fromSet(name, { of: "diameter", D: diameter });
      const high = fromSet(name, { of: "height", D: diameter });
      if (!across || !high) return [];
      const row: Part[] = [
        textPart("name", "rule set", title),
        ...limitParts(across, "Diameter", "diameter"),
        ...limitParts(high, "Height", "height"),
        ...verdictParts(across, width, "widthVerdict", "measured diameter"),
        ...verdictParts(high, height, "heightVerdict", "measured height"),
        textPart("set", "name of the rule set", name),
        textPart("source", "source", sourceText(across.citation)),
      ];
      return [{ row, across }];
    });
    const silent = sets.filter(({ name }) => !rows.some(({ across }) => across.set === name));
    return answered({
      parts: [
        rowsPart(
          "ruleSets",
          "rule sets",
          rows.map(({ row }) => row),
        ),
      ],
      formula:
        "1.5 D rule: diameter at least 1.5 D, height at least 0.5 D; the others are looked up",
      source: rows.map(({ across }) => sourceText(across.citation)).join("; "),
      cautions: [
        ...silent.map(({ title }) => `no ${title} for a ${diameter.typed} rivet`),
        "the sources disagree: a head may pass one set and fail another, so the drawing or manual has to name the set",
        "the 1.5 D rule names no greatest height; too flat a head is over-driven all the same",
        governs,
      ],
    });
  },
});

function limitParts(
  { lower, upper, nominal }: SetLimits,
  what: "Diameter" | "Height",
  words: string,
): Part[] {
  const part = (name: string, title: string, quantity: Quantity | undefined): Part[] =>
    quantity ? [figurePart(name, title, convert(quantity, inch).amount, "in")] : [];
  return [
    ...part(`least${what}`, `${words} at least`, lower),
    ...part(`most${what}`, `${words} at most`, upper),
    ...part(`nominal${what}`, `${words} to aim at`, nominal),
  ];
}

function verdictParts(
  limits: SetLimits,
  measured: Quantity | undefined,
  name: string,
  title: string,
): Part[] {
  if (!measured) return [];
  if (!limits.lower && !limits.upper)
    return [textPart(name, title, "not judged: no limits printed")];
  return [textPart(name, title, judge(measured, limits).kind)];
}
