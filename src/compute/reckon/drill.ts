import Fraction from "fraction.js";
import {
  drillSizesCitation,
  letterDrills,
  numberDrills,
} from "../../model/published/drill-sizes.ts";
import { metricDrills, metricDrillsCitation } from "../../model/published/metric-drills.ts";
import { exactText } from "../../model/quantity.ts";
import { unitOf } from "../../model/unit.ts";
import { amountIn } from "./amount-in.ts";
import { fromSet, sourceText } from "./from-set.ts";
import { governs } from "./governs.ts";
import { answered, figurePart, type Part, refused, rowsPart, sum, textPart } from "./sum.ts";

const inch = unitOf("in");
const si: ReadonlySet<string> = new Set(["mm", "cm", "m", "µm"]);

/** A drill as a shop calls it. */
interface CalledDrill {
  readonly call: string;
  readonly series: (typeof seriesNames)[number];
  readonly inches: Fraction;
  readonly seen: string;
}

const seen = {
  read: "seen in a tool maker's table or a manual",
  secondary: "seen in sellers' tables",
  memory: "not seen in a source",
} as const;

const seriesNames = ["number", "letter", "fraction", "metric"] as const;

const drills: readonly CalledDrill[] = [
  ...numberDrills.map(
    ({ name, inches, status }): CalledDrill => ({
      call: `No. ${name}`,
      series: "number",
      inches,
      seen: seen[status],
    }),
  ),
  ...letterDrills.map(
    ({ name, inches, status }): CalledDrill => ({
      call: `letter ${name}`,
      series: "letter",
      inches,
      seen: seen[status],
    }),
  ),
  ...Array.from({ length: 64 }, (_, index): CalledDrill => {
    const inches = new Fraction(index + 1, 64);
    return { call: `${inches.toFraction()} in`, series: "fraction", inches, seen: "exact" };
  }),
  ...metricDrills.map(
    (millimetres): CalledDrill => ({
      call: `${exactText(millimetres)} mm`,
      series: "metric",
      inches: millimetres.div("25.4"),
      seen: "by the rule of BS 328, as quoted by others",
    }),
  ),
].toSorted((a, b) => a.inches.compare(b.inches));

const choices = [...seriesNames, "all"] as const;

/**
 * The drill nearest to a size, every one of them where several are equally near, or the drills
 * in use for a rivet, each practice apart.
 */
export const drillSum = sum({
  name: "drill",
  about: "the drill nearest to a size, or the drills for a rivet",
  inputs: {
    size: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "the hole wanted",
      requiredUnless: ["rivet"],
      example: "0.1300 in",
    },
    rivet: {
      kind: "quantity",
      dimension: "length",
      range: "above zero",
      about: "instead of `size`: the diameter of a solid rivet",
      example: "1/8 in",
    },
    series: {
      kind: "choice",
      choices,
      about:
        "only drills of this series, or `all`; if not given, all for a size in millimetres and all but the metric ones for a size in inches",
      example: "number",
    },
  },
  example: ["size=0.1300 in"],
  reckon({ size, rivet, series }) {
    if (rivet && !size) {
      if (series)
        return refused({
          input: "series",
          message: "`series` goes with `size`; for a rivet the practices name their drills",
          help: ["leave it out"],
        });
      const rows = [
        { practice: "common practice today", limits: fromSet("rivet-hole-modern", { D: rivet }) },
        { practice: "1940s service manual", limits: fromSet("rivet-hole-1940s", { D: rivet }) },
      ].flatMap(({ practice, limits }) =>
        limits?.nominal ? [{ practice, limits, hole: limits.nominal }] : [],
      );
      if (rows.length === 0)
        return refused({
          input: "rivet",
          message: `neither practice has a drill for a ${rivet.typed} rivet`,
          help: [
            "the sizes are 1/16, 3/32, 1/8, 5/32, 3/16 and 1/4 in; for another hole give `size`",
          ],
        });
      return answered({
        parts: [
          rowsPart(
            "drills",
            "drills",
            rows.map(({ practice, limits, hole }) => {
              const call = drills.find(
                (each) => each.series !== "fraction" && each.inches.equals(hole.amount),
              );
              return [
                textPart("name", "drill", call?.call ?? limits.notes.join(", ")),
                figurePart("diameter", "diameter", hole.amount, "in"),
                figurePart(
                  "clearance",
                  "over the rivet",
                  hole.amount.sub(amountIn(rivet, inch)),
                  "in",
                ),
                textPart("practice", "practice", practice),
                textPart("source", "source", sourceText(limits.citation)),
              ];
            }),
          ),
        ],
        formula: "looked up; nothing is reckoned but the clearance",
        source: rows.map(({ limits }) => sourceText(limits.citation)).join("; "),
        cautions: [
          "the two practices differ by one number drill for most rivets; the drawing or the rivet maker says which hole",
          "these are sizes to drill, without limits for the hole",
          governs,
        ],
      });
    }
    if (!size || rivet)
      return refused({
        message: size ? "`size` and `rivet` are both given" : "`size` or `rivet` is missing",
        help: ["give one of them: `size` for the nearest drill, `rivet` for the drills in use"],
      });

    const wanted = amountIn(size, inch);
    const isMetric = si.has(size.unit.symbol);
    const wantedSeries = series ?? (isMetric ? "all" : "inch");
    const among = drills.filter(
      (drill) =>
        wantedSeries === "all" ||
        (wantedSeries === "inch" ? drill.series !== "metric" : drill.series === wantedSeries),
    );
    const unit = isMetric ? "mm" : "in";
    const shown = (inches: Fraction) => (isMetric ? inches.mul("25.4") : inches);
    const off = (drill: CalledDrill) => drill.inches.sub(wanted);
    const least = among.map((drill) => off(drill).abs()).reduce((a, b) => (b.lt(a) ? b : a));
    const nearest = among.filter((drill) => off(drill).abs().equals(least));
    const below = among.filter((drill) => drill.inches.lt(wanted)).at(-1);
    const above = among.find((drill) => drill.inches.gt(wanted));
    const outside = !below || !above ? !nearest.some((drill) => off(drill).equals(0)) : false;
    const row = (drill: CalledDrill): Part[] => [
      textPart("name", "drill", drill.call),
      figurePart("diameter", "diameter", shown(drill.inches), unit),
      figurePart("difference", "off the size wanted", shown(off(drill)), unit),
      textPart("seen", "checked", drill.seen),
    ];
    const only =
      new Set(nearest.map(({ inches }) => inches.toFraction())).size === 1 ? nearest[0] : undefined;
    return answered({
      ...(only ? { result: { value: shown(only.inches), unit } } : {}),
      parts: [
        rowsPart("drills", nearest.length > 1 ? "equally near" : "nearest", nearest.map(row)),
        ...(below ? [rowsPart("below", "next below", [row(below)])] : []),
        ...(above ? [rowsPart("above", "next above", [row(above)])] : []),
      ],
      formula: "the smallest difference in diameter",
      source: `${drillSizesCitation.document}, number and letter series, as tool makers print it, row by row as marked; fractions: exact sixty-fourths up to 1 in${wantedSeries === "all" || wantedSeries === "metric" ? `; metric: ${sourceText(metricDrillsCitation)}` : ""}`,
      cautions: [
        ...(outside ? ["the size lies outside the drills listed; the nearest one is far off"] : []),
        ...(wantedSeries === "inch"
          ? ["metric drills were not looked at: `series=all` or `series=metric` does"]
          : []),
        ...(among.some((drill) => drill.series === "metric")
          ? [
              "which metric sizes are made is a quotation of BS 328; makers sell more of them, and shops hold fewer",
            ]
          : []),
        "a drill cuts a hole larger than itself; measure a test hole where it matters",
        governs,
      ],
    });
  },
});
