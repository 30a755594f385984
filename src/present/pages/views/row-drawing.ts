import type Fraction from "fraction.js";
import { rowWords } from "../../../compute/laid-out.ts";
import { amountIn } from "../../../compute/reckon/amount-in.ts";
import type { Row } from "../../../compute/reckon/lay-row.ts";
import type { FastenerRow } from "../../../model/layout.ts";
import type { ClecoColour } from "../../../model/published/cleco-colours.ts";
import type { Quantity } from "../../../model/quantity.ts";
import { lengthText } from "../../format/layout-lengths.ts";
import { clecoView } from "./cleco-view.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** A dimension along the row. */
export interface AlongDimension {
  readonly from: Percent;
  readonly to: Percent;
  /** Half-way between the two. */
  readonly middle: Percent;
  /** Pixels from the top. */
  readonly y: number;
  readonly text: string;
  /** Outside the limits of a rule; the text says so too. */
  readonly out: boolean;
  /** Where the text stands; beside the arrows where there is no room between them. */
  readonly place: "between" | "right" | "left";
}

/** A dimension across the row, to the right of the piece. */
export interface AcrossDimension {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly out: boolean;
}

/** A stretch that is hatched, and how far fasteners stay clear of it. */
export interface KeptOutDrawing {
  readonly tag: string;
  readonly x: Percent;
  readonly width: Percent;
  readonly middle: Percent;
  readonly clear?: { readonly x: Percent; readonly width: Percent };
}

/**
 * A row drawn as wide as its frame: along the row to one scale, with what is alike left out in
 * the middle of a long one; across it, and the marks of the fasteners, not to scale. Heights are
 * in pixels.
 */
export interface RowDrawing {
  readonly kind: "row";
  readonly height: number;
  readonly top: number;
  readonly bottom: number;
  /** The line of the row. */
  readonly line: number;
  /** Whether the edge above, and that below, is where the row's piece ends. */
  readonly edges: { readonly far: boolean; readonly near: boolean };
  readonly colour: ClecoColour;
  readonly fasteners: readonly { readonly x: Percent; readonly number?: string }[];
  /** Where the drawing is broken. */
  readonly breaks: readonly Percent[];
  readonly keepOuts: readonly KeptOutDrawing[];
  readonly along: readonly AlongDimension[];
  readonly across: readonly AcrossDimension[];
}

const top = 24;
const band = { open: 84, sided: 104 } as const;
const tier = 24;
/** As many marks as stand side by side on a narrow screen. */
const mostShown = 24;
const shownAtEnds = 5;
/** Percent of the width that a break takes. */
const breakWidth = 7;
/** Least distance of two numbers, in percent of the width. */
const numberWidth = 9;
/** A text goes between its arrows from this width on, in percent. */
const textWidth = 46;

/**
 * Draws a row that was laid out.
 * @param broken What of it is outside the limits of a rule, in the words of `rowWords`.
 */
export function rowDrawing(
  piece: FastenerRow,
  row: Row,
  broken: ReadonlySet<string> = new Set(),
): RowDrawing {
  const { unit, amount } = piece.length.length;
  const symbol = unit.symbol;
  const inUnit = (quantity: Quantity) => amountIn(quantity, unit);
  const places = row.positions.map(Number);
  const length = Number(amount);
  const keepOuts = piece.keepOuts.map(({ from, to, clear }) => {
    const margin = clear ? Number(inUnit(clear.length)) : 0;
    return { from: Number(inUnit(from)), to: Number(inUnit(to)), margin };
  });
  const view = windowsOf(places, length, row.pitch, keepOuts);
  const scale = scaleOf(view);
  const span = (from: number, to: number) => ({
    x: percent(scale(from)),
    width: percent(scale(to) - scale(from)),
  });

  const sided = piece.side !== undefined;
  const bottom = top + (sided ? band.sided : band.open);
  const line = lineOf(piece, bottom);
  const [first = 0] = places;
  const last = places.at(-1) ?? first;
  const text = (value: Fraction) => lengthText(value, symbol);
  const edge = row.positions[0];
  const spaces = places.length - 1;
  const between = row.pitch?.mul(spaces);

  const dimension = (
    from: number,
    to: number,
    words: string,
    { place, of }: { place?: AlongDimension["place"]; of?: string } = {},
  ) => {
    const [start, end] = [scale(from), scale(to)];
    const out = of !== undefined && broken.has(of);
    return {
      from: percent(start),
      to: percent(end),
      middle: percent((start + end) / 2),
      text: out ? `${words}, out` : words,
      out,
      place: place ?? placeOf(start, end),
    };
  };
  const ends = (place: "left" | "right") => ({ place, of: rowWords.ends });
  const tiers: Omit<AlongDimension, "y">[][] = [
    edge ? [dimension(0, first, `edge ${text(edge)}`, ends("right"))] : [],
    // On a narrow screen the two would meet on one line.
    edge && spaces > 0 ? [dimension(last, length, `edge ${text(edge)}`, ends("left"))] : [],
    row.pitch
      ? [dimension(first, places[1] ?? last, `pitch ${text(row.pitch)}`, { of: rowWords.pitch })]
      : [],
    ...piece.keepOuts.map(({ from, to }, index) => [
      dimension(
        Number(inUnit(from)),
        Number(inUnit(to)),
        `K${index + 1}: ${from.typed} to ${to.typed}`,
      ),
    ]),
    between && spaces > 1 ? [dimension(first, last, `${spaces} spaces: ${text(between)}`)] : [],
    [dimension(0, length, `${piece.length.typed} over all`, { place: "between" })],
  ];
  const used = tiers.filter((each) => each.length > 0);

  return {
    kind: "row",
    height: bottom + used.length * tier + 14,
    top,
    bottom,
    line,
    edges: { near: sided, far: sided && piece.width !== undefined },
    colour: clecoView(piece.diameter).colour,
    fasteners: numbered(places, view, scale),
    breaks: view.slice(1).map(({ from }) => percent(scale(from) - breakWidth / 2)),
    keepOuts: keepOuts.map(({ from, to, margin }, index) => ({
      tag: `K${index + 1}`,
      ...span(from, to),
      middle: percent((scale(from) + scale(to)) / 2),
      ...(margin > 0
        ? { clear: span(Math.max(0, from - margin), Math.min(length, to + margin)) }
        : {}),
    })),
    along: used.flatMap((each, index) =>
      each.map((drawn) => ({ ...drawn, y: bottom + (index + 1) * tier })),
    ),
    across: acrossOf(piece, line, bottom, broken),
  };
}

interface Window {
  readonly from: number;
  readonly to: number;
}

// What is shown of the row: all of it, or its ends and what is kept out between them.
function windowsOf(
  places: readonly number[],
  length: number,
  evenPitch: Fraction | undefined,
  keepOuts: readonly (Window & { readonly margin: number })[],
): Window[] {
  const pitch = Number(evenPitch ?? 0);
  const inner = places[shownAtEnds - 1];
  const outer = places[places.length - shownAtEnds];
  if (places.length <= mostShown || inner === undefined || outer === undefined)
    return [{ from: 0, to: length }];
  const windows = [
    { from: 0, to: inner + pitch / 2 },
    ...keepOuts.map(({ from, to, margin }) => ({
      from: Math.max(0, from - margin - 1.5 * pitch),
      to: Math.min(length, to + margin + 1.5 * pitch),
    })),
    { from: outer - pitch / 2, to: length },
  ].toSorted((a, b) => a.from - b.from);
  const merged: Window[] = [];
  for (const each of windows) {
    const before = merged.at(-1);
    // A break that leaves out less than it takes would only hide something.
    if (before && each.from <= before.to + 3 * pitch)
      merged.splice(-1, 1, { from: before.from, to: Math.max(before.to, each.to) });
    else merged.push(each);
  }
  return merged;
}

// From a place along the row to percent of the width; what is left out shares the break's room.
function scaleOf(view: readonly Window[]): (place: number) => number {
  const shown = view.reduce((sum, { from, to }) => sum + to - from, 0);
  const perUnit = (100 - breakWidth * (view.length - 1)) / shown;
  return (place) => {
    let left = 0;
    for (const [index, { from, to }] of view.entries()) {
      if (place <= to)
        return place < from ? left - breakWidth / 2 : left + (place - from) * perUnit;
      left += (to - from) * perUnit + (index < view.length - 1 ? breakWidth : 0);
    }
    return 100;
  };
}

// Each one that is shown, every so many of them with its number, the first and the last always.
function numbered(
  places: readonly number[],
  view: readonly Window[],
  scale: (place: number) => number,
): RowDrawing["fasteners"] {
  const shown = places
    .map((place, index) => ({ place, number: index + 1, x: scale(place) }))
    .filter(({ place }) => view.some(({ from, to }) => place >= from && place <= to));
  const end = shown.at(-1)?.x ?? 100;
  let written = Number.NEGATIVE_INFINITY;
  return shown.map(({ number, x }) => {
    const isEnd = number === 1 || number === places.length;
    const isFree = x - written >= numberWidth && end - x >= numberWidth;
    if (!isEnd && !isFree) return { x: percent(x) };
    written = x;
    return { x: percent(x), number: `${number}` };
  });
}

function placeOf(from: number, to: number): AlongDimension["place"] {
  if (to - from >= textWidth) return "between";
  return 100 - to >= from ? "right" : "left";
}

// Where the row runs between its edges: to scale as far as there is room for the figures.
function lineOf({ side, width }: FastenerRow, bottom: number): number {
  const height = bottom - top;
  if (!side) return top + height / 2;
  if (!width) return bottom - height * 0.42;
  const unit = side.length.unit;
  const share = Number(side.length.amount) / Number(amountIn(width.length, unit));
  return Math.round(bottom - height * Math.min(0.72, Math.max(0.28, share)));
}

function acrossOf(
  { side, width }: FastenerRow,
  line: number,
  bottom: number,
  broken: ReadonlySet<string>,
): AcrossDimension[] {
  if (!side) return [];
  const { amount, unit } = side.length;
  return [
    ...(width
      ? [
          {
            from: top,
            to: line,
            text: lengthText(amountIn(width.length, unit).sub(amount), unit.symbol),
            out: broken.has(rowWords.far),
          },
        ]
      : []),
    {
      from: line,
      to: bottom,
      text: lengthText(amount, unit.symbol),
      out: broken.has(rowWords.near),
    },
  ];
}
