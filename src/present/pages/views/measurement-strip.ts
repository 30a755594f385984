import type { JudgedReading } from "../../../compute/analysis.ts";
import type { Instrument } from "../../../model/instrument.ts";
import type { Quantity } from "../../../model/quantity.ts";

/** A place on a drawing as wide as its frame: `47.5%`. */
export type Percent = string;

/** One value drawn on the strip. */
export interface StripMark {
  readonly x: Percent;
  readonly out: boolean;
  /** Half the instrument's expanded uncertainty either way, drawn as a bar; absent: unknown. */
  readonly spread?: { readonly x: Percent; readonly width: Percent };
  /** Only on the outermost marks, so that no two words meet. */
  readonly label?: { readonly text: string; readonly anchor: "start" | "middle" | "end" };
}

/**
 * A reading as a drawing: the allowed band between its limits is 60 % of the width, so that
 * one glance at any two strips compares them.
 */
export interface MeasurementStrip {
  readonly lower?: { readonly x: Percent; readonly text: string };
  readonly upper?: { readonly x: Percent; readonly text: string };
  readonly nominal?: Percent;
  readonly band: { readonly x: Percent; readonly width: Percent };
  /** From the broken limit to the farthest value outside. */
  readonly outside: readonly { readonly x: Percent; readonly width: Percent }[];
  readonly marks: readonly StripMark[];
}

const bandStart = 20;
const bandEnd = 80;

/** The strip of a reading; `undefined` when there is no limit to draw it against. */
export function measurementStrip(
  { values, limits }: Pick<JudgedReading, "values" | "limits">,
  instrument?: Instrument,
  nominal?: Quantity,
): MeasurementStrip | undefined {
  const { lower, upper } = limits;
  const low = lower && position(lower);
  const high = upper && position(upper);
  if ((low === undefined && high === undefined) || values.length === 0) return undefined;
  const measured = values.map(({ value }) => position(value.quantity));
  const scale = scaleOf(low, high, measured);
  const place = (value: number) => Math.min(98, Math.max(2, scale(value)));
  const uncertainty = instrument?.uncertainty && extent(instrument.uncertainty);
  const labelled = outermost(measured.map(place));
  const start = low === undefined ? 2 : bandStart;
  const end = high === undefined ? 98 : bandEnd;

  return {
    ...(lower ? { lower: { x: percent(bandStart), text: lower.typed } } : {}),
    ...(upper ? { upper: { x: percent(bandEnd), text: upper.typed } } : {}),
    ...(nominal ? { nominal: percent(place(position(nominal))) } : {}),
    band: { x: percent(start), width: percent(end - start) },
    outside: [
      ...stretch(bandStart, place(Math.min(...measured)), low !== undefined, -1),
      ...stretch(bandEnd, place(Math.max(...measured)), high !== undefined, 1),
    ],
    marks: values.map(({ value, verdict }, index) => {
      const at = measured[index] ?? 0;
      const x = place(at);
      const anchor = labelled.get(index);
      return {
        x: percent(x),
        out: verdict.kind !== "within",
        ...(uncertainty === undefined
          ? {}
          : { spread: spreadOf(place(at - uncertainty), place(at + uncertainty)) }),
        ...(anchor === undefined ? {} : { label: { text: value.quantity.typed, anchor } }),
      };
    }),
  };
}

// One end missing: the band then runs to the edge, and the scale is set by how far the
// values lie from the limit there is.
function scaleOf(
  low: number | undefined,
  high: number | undefined,
  measured: readonly number[],
): (value: number) => number {
  const width = bandEnd - bandStart;
  if (low !== undefined && high !== undefined) {
    const span = high - low || Math.abs(high) / 10 || 1;
    return (value) => bandStart + (width * (value - low)) / span;
  }
  const limit = low ?? high ?? 0;
  const reach = Math.max(
    ...measured.map((value) => Math.abs(value - limit)),
    Math.abs(limit) / 4,
    Number.MIN_VALUE,
  );
  return low !== undefined
    ? (value) => bandStart + (width * (value - limit)) / reach
    : (value) => bandEnd + (width * (value - limit)) / reach;
}

function stretch(limit: number, farthest: number, broken: boolean, direction: 1 | -1) {
  const size = (farthest - limit) * direction;
  if (!broken || size <= 0) return [];
  return [{ x: percent(Math.min(limit, farthest)), width: percent(size) }];
}

// The least to the left of its mark and the most to the right of it, unless that would leave
// the drawing; where both then want the same room, the most goes without.
function outermost(places: readonly number[]): Map<number, "start" | "middle" | "end"> {
  const left = Math.min(...places);
  const right = Math.max(...places);
  const least = places.indexOf(left);
  const most = places.indexOf(right);
  if (left === right) return new Map([[least, keptInside("middle", left)]]);
  const labels = new Map([[least, keptInside("end", left)]]);
  const last = keptInside("start", right);
  if (last !== labels.get(least) || right - left > widest) labels.set(most, last);
  return labels;
}

/** As wide as a label gets on a narrow screen. */
const widest = 36;

function keptInside(anchor: "start" | "middle" | "end", x: number): "start" | "middle" | "end" {
  if (x < 16) return "start";
  return x > 84 ? "end" : anchor;
}

function spreadOf(from: number, to: number): { readonly x: Percent; readonly width: Percent } {
  return { x: percent(from), width: percent(to - from) };
}

// Only for drawing: comparisons are made exactly, elsewhere.
function position({ amount, unit }: Quantity): number {
  return amount.mul(unit.factor).add(unit.offset).valueOf();
}

function extent({ amount, unit }: Quantity): number {
  return amount.mul(unit.factor).valueOf();
}

/** To a tenth of a percent of the width, about a pixel. */
export function percent(value: number): Percent {
  return `${Math.round(value * 10) / 10}%`;
}
