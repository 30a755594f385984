import type { MeasuredValue, Reading } from "../model/measurement.ts";
import { compareQuantities, type Quantity, subtract } from "../model/quantity.ts";
import type { FigureKind } from "../model/tolerance.ts";

/** A value and the reading it belongs to. */
export interface FigurePart {
  readonly reading: Reading;
  readonly value: MeasuredValue;
}

/** One figure made of several values: always the larger less the smaller. */
export interface FigureValue {
  /** Never below zero; of temperatures a temperature difference. */
  readonly quantity: Quantity;
  /** The two values it is made of, the larger one first. */
  readonly larger: FigurePart;
  readonly smaller: FigurePart;
}

/**
 * The figures that a rule judges in place of single values, exactly.
 *
 * A `difference` is taken between two readings, value by value in the order typed, or between
 * the two values of one reading. A `range` and a `run-out` are taken over all values together,
 * from the highest to the lowest.
 *
 * @param readings What the figure is made of, in the order named.
 * @returns Nothing when the values cannot be taken together: too few, not as many on one side as
 *   on the other, or of different kinds. Reading has reported that.
 * @example 14.381 in against 14.372 in gives a difference of 0.009 in
 */
export function figuresOf(kind: FigureKind, readings: readonly Reading[]): readonly FigureValue[] {
  const series = readings.map((reading) =>
    reading.values.map((value): FigurePart => ({ reading, value })),
  );
  const all = series.flat();
  const [first] = all;
  if (!first || !all.every((part) => dimensionOf(part) === dimensionOf(first))) return [];
  if (kind === "difference") return pairsOf(series).map(([left, right]) => apart(left, right));
  const highest = all.reduce((most, part) => (compare(part, most) > 0 ? part : most), first);
  const lowest = all.reduce((least, part) => (compare(part, least) < 0 ? part : least), first);
  return all.length < 2 ? [] : [apart(highest, lowest)];
}

type Pair = readonly [left: FigurePart, right: FigurePart];

function pairsOf(series: readonly (readonly FigurePart[])[]): readonly Pair[] {
  const [left, right, ...more] =
    series.length === 1 ? (series[0] ?? []).map((part) => [part]) : series;
  if (!left || !right || more.length > 0 || left.length !== right.length) return [];
  return left.flatMap((part, index) => {
    const other = right[index];
    return other ? [[part, other] as const] : [];
  });
}

function apart(left: FigurePart, right: FigurePart): FigureValue {
  const [larger, smaller] = compare(left, right) < 0 ? [right, left] : [left, right];
  return { quantity: subtract(larger.value.quantity, smaller.value.quantity), larger, smaller };
}

function compare(left: FigurePart, right: FigurePart): number {
  return compareQuantities(left.value.quantity, right.value.quantity);
}

function dimensionOf({ value }: FigurePart): string {
  return value.quantity.unit.dimension;
}
