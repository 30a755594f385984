import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";

/** A length as typed, such as `2.5 D`, and what it comes to. Above zero. */
export interface StatedLength {
  /** As typed: `2.5 D`, `3/8 in`. */
  readonly typed: string;
  readonly length: Quantity;
  readonly span: Span;
}

/** A rule that a layout names: its id in `rules.yaml`, or the name of a shipped rule set. */
export interface NamedRule {
  readonly name: string;
  readonly span: Span;
}

/** What a rule named by a layout may be held against. */
export const layoutSubjects = ["edge", "pitch", "corner", "finish"] as const;
export type LayoutSubject = (typeof layoutSubjects)[number];

/** A stretch of a row in which no fastener may be centred; its two ends are allowed. */
export interface KeptOut {
  /** From the left end of the row; `from` lies before `to`, and both before the other end. */
  readonly from: Quantity;
  readonly to: Quantity;
  /** How far fasteners stay clear of it on either side. */
  readonly clear?: StatedLength;
  /** What is in the way: `stringer`. */
  readonly what?: string;
}

/** A row of fasteners at an even pitch, the same from either end. */
export interface FastenerRow {
  readonly kind: "row";
  /** From end to end of the piece. */
  readonly length: StatedLength;
  /** Part number as typed: `AN470AD4-5`. */
  readonly fastener?: string;
  /** Nominal shank diameter D. */
  readonly diameter: Quantity;
  /** The hole that is drilled for it. */
  readonly hole?: StatedLength;
  /** From each end of the piece to the centre of the nearest fastener. */
  readonly edge: StatedLength;
  /** Exactly so many fasteners; absent: as many as the least pitch allows. */
  readonly count?: { readonly value: number; readonly span: Span };
  /** The even pitch closest to this one. Not together with `count`. */
  readonly pitch?: StatedLength;
  readonly pitchMin?: StatedLength;
  readonly pitchMax?: StatedLength;
  /** From the line of the row to the nearer edge alongside it. */
  readonly side?: StatedLength;
  /** Across the row, from edge to edge; more than `side`. */
  readonly width?: StatedLength;
  readonly keepOuts: readonly KeptOut[];
  readonly check: { readonly edge: readonly NamedRule[]; readonly pitch: readonly NamedRule[] };
}

/** Shapes of a cut-out. A slot has two half circles for ends. */
export const cutOutShapes = ["rectangle", "circle", "slot"] as const;
export type CutOutShape = (typeof cutOutShapes)[number];

/** An opening in a sheet. */
export interface CutOut {
  readonly kind: "cut-out";
  readonly shape: CutOutShape;
  /** Over all; of a circle its diameter. */
  readonly length: StatedLength;
  /** Across; of a circle its diameter. Not more than `length` in a slot. */
  readonly width: StatedLength;
  /** Radius of the corners; of a circle its own, of a slot that of its ends. */
  readonly corner: StatedLength;
  /** Diameter of the hole drilled in each corner before it is cut, where that makes the radius. */
  readonly cornerHole?: StatedLength;
  /** Roughness Ra of the cut edge. */
  readonly finish?: StatedLength;
  readonly check: { readonly corner: readonly NamedRule[]; readonly finish: readonly NamedRule[] };
}

/** A part to be marked out: a block called `layout` in a day's prose. */
export interface Layout {
  readonly date: CalendarDate;
  /** Counts the layouts of the day, from 1. */
  readonly number: number;
  readonly title: string;
  readonly step?: string;
  /** Drawing and revision that it is taken from. */
  readonly drawing?: string;
  /** Thickness of the sheet, which limits call `t`. */
  readonly sheet?: Quantity;
  readonly note?: string;
  readonly piece: FastenerRow | CutOut;
  /** Id of the deviation that accounts for a rule it breaks. */
  readonly deviation?: string;
  readonly deviationSpan?: Span;
  /** Line of the day's prose on which the block begins, counted from 0. */
  readonly line: number;
  /** Where the title was typed. */
  readonly span: Span;
}

/** The sizes that limits of a layout's rules may be in terms of. */
export function layoutSizes({ piece, sheet }: Pick<Layout, "piece" | "sheet">) {
  return new Map<string, Quantity>([
    ...(piece.kind === "row" ? [["D", piece.diameter] as const] : []),
    ...(sheet ? [["t", sheet] as const] : []),
  ]);
}
