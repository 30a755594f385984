import Fraction from "fraction.js";
import { asTyped, compareQuantities } from "../../model/quantity.ts";
import { amountIn } from "./amount-in.ts";
import { fromSet, sourceText } from "./from-set.ts";
import { governs } from "./governs.ts";
import { type KeepOut, layRow } from "./lay-row.ts";
import { noRow } from "./no-row.ts";
import {
  answered,
  type Figure,
  figurePart,
  figuresPart,
  type InputProblem,
  refused,
  sum,
  type Words,
} from "./sum.ts";

const sizes = { D: "diameter" } as const;
const pitchSets = ["pitch-3d-navy", "pitch-army-tm"] as const;

/**
 * A row of rivets from end to end: how many, at what even pitch, and where each one sits. The
 * minimum pitch is never undercut, the edge distance is kept at both ends, and the row reads
 * the same from either end.
 */
export const rivetRowSum = sum({
  name: "rivet-row",
  about: "count, even pitch and places of the rivets in a row",
  inputs: {
    length: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "the row from end to end of the piece",
      required: true,
      example: "6 in",
    },
    diameter: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "nominal rivet diameter D",
      required: true,
      example: "1/8 in",
    },
    edge: {
      kind: "length in sizes",
      sizes,
      about: "from each end to the centre of the nearest rivet",
      required: true,
      example: "2D",
    },
    "pitch-min": {
      kind: "length in sizes",
      sizes,
      about: "least distance from centre to centre; or name a `rule`",
      requiredUnless: ["rule"],
      example: "3D",
    },
    "pitch-max": {
      kind: "length in sizes",
      sizes,
      about: "greatest distance from centre to centre",
      example: "8D",
    },
    rule: {
      kind: "choice",
      choices: pitchSets,
      about: "published rule set that gives the least pitch",
      example: "pitch-3d-navy",
    },
    count: {
      kind: "number",
      range: "above zero",
      whole: true,
      about: "exactly so many rivets; without it, as many as the least pitch allows",
      example: "11",
    },
    pitch: {
      kind: "length in sizes",
      sizes,
      about: "instead of `count`: the even pitch closest to this one",
      example: "0.5 in",
    },
    "keep-out": {
      kind: "stretches",
      about: "stretches from the same end where no rivet centre may be",
      example: "2.0-2.6 in",
    },
  },
  example: ["length=6 in", "diameter=1/8 in", "edge=2D", "pitch-min=3D"],
  reckon(values) {
    const { length, diameter, edge, rule, count, pitch } = values;
    const stretches = values["keep-out"] ?? [];
    const [typedMin, max] = [values["pitch-min"], values["pitch-max"]];
    const problems: InputProblem[] = [];

    const given = { D: diameter, ...(rule === "pitch-army-tm" ? { between: "rivets" } : {}) };
    const set = rule && fromSet(rule, given);
    const setMin = set?.lower;
    const min =
      typedMin && setMin && compareQuantities(setMin, typedMin) > 0 ? setMin : (typedMin ?? setMin);
    if (!min)
      problems.push({
        input: "pitch-min",
        message: "`pitch-min` is missing: how close may two rivets stand",
        help: ["give it as in `pitch-min=3D`, or name a published rule as in `rule=pitch-3d-navy`"],
      });
    if (count && pitch)
      problems.push({
        input: "pitch",
        message: "`count` and `pitch` are both given",
        help: ["give one of them; the other one follows"],
      });
    if (min && max && compareQuantities(max, min) < 0)
      problems.push({
        input: "pitch-max",
        message: `\`pitch-max\` of ${asTyped(max)} is below the least pitch of ${asTyped(min)}`,
        help: ["exchange the two, or drop one"],
      });
    if (min && pitch && compareQuantities(pitch, min) < 0)
      problems.push({
        input: "pitch",
        message: `\`pitch\` of ${asTyped(pitch)} is below the least pitch of ${asTyped(min)}`,
        help: ["ask for a wider pitch; the least pitch is not undercut"],
      });
    if (max && pitch && compareQuantities(pitch, max) > 0)
      problems.push({
        input: "pitch",
        message: `\`pitch\` of ${asTyped(pitch)} is above \`pitch-max\` of ${asTyped(max)}`,
        help: ["ask for a closer pitch"],
      });
    for (const { from, to } of stretches)
      if (compareQuantities(from, length) >= 0)
        problems.push({
          input: "keep-out",
          message: `the stretch from ${asTyped(from)} to ${asTyped(to)} lies beyond the row of ${asTyped(length)}`,
          help: ["measure it from the end that the row is measured from"],
        });
    if (!min || problems.length > 0) return refused(...problems);

    const { unit } = length;
    const keepOuts: KeepOut[] = stretches.map(({ from, to }) => ({
      from: amountIn(from, unit),
      to: amountIn(to, unit),
    }));
    const row = layRow({
      length: length.amount,
      edge: amountIn(edge, unit),
      hole: amountIn(diameter, unit),
      pitchMin: amountIn(min, unit),
      ...(max ? { pitchMax: amountIn(max, unit) } : {}),
      ...(pitch ? { pitch: amountIn(pitch, unit) } : {}),
      ...(count ? { count: Number(count.valueOf()) } : {}),
      keepOuts,
    });
    const figure = (value: Fraction): Figure => ({ value, unit: unit.symbol });
    if (!row.ok)
      return refused(
        noRow(row.why, figure, {
          least: figure(amountIn(min, unit)),
          length: figure(length.amount),
        }),
      );

    const rivets = row.positions.length;
    const shank = amountIn(diameter, unit);
    const lost = row.mostWithout - rivets;
    return answered({
      parts: [
        figurePart("count", "count", new Fraction(rivets), "rivets"),
        row.pitch
          ? figurePart("pitch", "pitch", row.pitch, unit.symbol)
          : {
              name: "pitch",
              title: "pitch",
              value: { kind: "none", why: "one rivet has none" },
            },
        ...(row.pitch
          ? [figurePart("diameters", "pitch in diameters", row.pitch.div(shank), "D")]
          : []),
        figuresPart("positions", "places from one end", row.positions, unit.symbol),
      ],
      formula: "pitch = (length − 2 edge) / (rivets − 1); places = edge + n × pitch",
      source: [
        "arithmetic on the limits given",
        `edge ${asTyped(edge)}`,
        min === typedMin ? `least pitch ${asTyped(min)}` : "",
        set ? `least pitch by ${set.set}: ${sourceText(set.citation)}` : "",
        max ? `greatest pitch ${asTyped(max)}` : "",
      ]
        .filter(Boolean)
        .join("; "),
      cautions: [
        ...(rivets === 1
          ? ["two rivets at the least pitch do not fit: one stands in the middle"]
          : []),
        ...(keepOuts.length > 0 && lost > 0 && !count && !pitch
          ? [
              `without the stretches kept out ${row.mostWithout} rivets would fit: ${lost} fewer make a weaker joint, which the drawing has to allow`,
            ]
          : []),
        ...below(amountIn(edge, unit).div(shank), 2, "edge distance"),
        ...below(amountIn(min, unit).div(shank), 3, "least pitch"),
        "edge distance and pitch are measured to the centre of the rivet; for countersunk rivets some sources want 2.5 D to the edge",
        ...(set?.advice ?? []).filter((advice) => !advice.startsWith("general information")),
        governs,
      ],
    });
  },
});

function below(diameters: Fraction, usual: number, what: string): Words[] {
  if (diameters.gte(usual)) return [];
  return [
    [
      `the ${what} is `,
      { value: diameters, unit: "D" },
      `, below the ${usual} D of Army TM 10-5410-229-13&P, par. 5-6(3)(b)`,
    ],
  ];
}
