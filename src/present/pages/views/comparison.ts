import type { Figure, JudgedReading, JudgedValue } from "../../../compute/analysis.ts";
import type { Quantity } from "../../../model/quantity.ts";
import { computedText } from "../../format/quantity.ts";
import type { Links } from "../links.ts";
import type { Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { type Percent, percent } from "./measurement-strip.ts";
import { type ReadingView, readingView } from "./reading-view.ts";

/** One of the two sides. */
export interface ComparisonSide {
  /** As typed. */
  readonly value: string;
  /** Where it was measured, with a link to its reading; the words are never empty. */
  readonly where: Mention;
}

/**
 * Two values held against each other. On the drawing the first stands in the middle, and the
 * band around it is where the second may lie.
 */
export interface Comparison {
  readonly of: ReadingView;
  readonly first: ComparisonSide;
  readonly second: ComparisonSide;
  readonly difference: string;
  readonly out: boolean;
  readonly drawing?: {
    readonly first: Percent;
    readonly second: Percent;
    readonly band: { readonly x: Percent; readonly width: Percent };
  };
}

const middle = 50;
/** Half the width of the band, in per cent of the drawing. */
const reach = 30;

/** Every pair of values whose difference is judged, in the order given; replaced ones are left out. */
export function comparisons(
  record: RecordIndex,
  links: Links,
  readings: readonly JudgedReading[],
): Comparison[] {
  return readings.flatMap((judged) => {
    const { figure, values, standing } = judged;
    if (figure?.kind !== "difference" || standing === "superseded") return [];
    const of = readingView(record, links, judged);
    return values.map((value, index): Comparison => {
      const [first, second] = pairOf(figure, index);
      const drawing = drawingOf(judged, first?.quantity, second?.quantity);
      return {
        of,
        first: sideOf(links, figure, 0, first?.quantity),
        second: sideOf(links, figure, 1, second?.quantity),
        difference: computedText(value.value.quantity),
        out: value.verdict.kind !== "within",
        ...(drawing ? { drawing } : {}),
      };
    });
  });
}

type Pair = readonly [JudgedValue["value"] | undefined, JudgedValue["value"] | undefined];

function pairOf({ of }: Figure, index: number): Pair {
  const [left, right] = of;
  return right ? [left?.values[index], right.values[index]] : [left?.values[0], left?.values[1]];
}

function sideOf(
  links: Links,
  { of }: Figure,
  index: number,
  quantity: Quantity | undefined,
): ComparisonSide {
  const reading = of[index] ?? of[0];
  const mention = reading ? links.reading(reading.id) : { text: "" };
  const ownValues = of.length === 1;
  const text = ownValues ? (index === 0 ? "first value" : "second value") : reading?.at;
  return { value: quantity?.typed ?? "", where: { ...mention, text: text ?? mention.text } };
}

// How far the second lies from the first, as a part of what is allowed.
function drawingOf(
  { limits: { upper } }: JudgedReading,
  first: Quantity | undefined,
  second: Quantity | undefined,
): Comparison["drawing"] {
  if (!upper || !first || !second || upper.amount.lte(0)) return undefined;
  const allowed = upper.amount.mul(upper.unit.factor).valueOf();
  const x = middle + (reach * (position(second) - position(first))) / allowed;
  return {
    first: percent(middle),
    second: percent(Math.min(98, Math.max(2, x))),
    band: { x: percent(middle - reach), width: percent(2 * reach) },
  };
}

// Only for drawing: comparisons are made exactly, elsewhere.
function position({ amount, unit }: Quantity): number {
  return amount.mul(unit.factor).add(unit.offset).valueOf();
}
