// Small layouts to start from, and what becomes of them in a build.

import { analyze } from "../../src/compute/analyze.ts";
import type { LaidOut } from "../../src/compute/laid-out.ts";
import type { Row } from "../../src/compute/reckon/lay-row.ts";
import type { Build } from "../../src/model/build.ts";
import type { CutOut, FastenerRow, Layout, StatedLength } from "../../src/model/layout.ts";
import { asOf, day, smallBuild, someDay, span } from "./small-build.ts";
import { quantity } from "./typed-quantity.ts";

/** A length as typed. */
export function stated(typed: string, as = typed): StatedLength {
  return { typed: as, length: quantity(typed), span: span({ text: as, length: as.length }) };
}

/** Names of rules to be held against. */
export function named(...names: readonly string[]) {
  return names.map((name) => ({ name, span: span() }));
}

/** Twelve rivets of 1/8 in over 6 in, 5/16 in from the ends, checked by nothing. */
export function fastenerRow(overrides: Partial<FastenerRow> = {}): FastenerRow {
  return {
    kind: "row",
    length: stated("6.000 in"),
    diameter: quantity("1/8 in"),
    edge: stated("0.3125 in", "2.5 D"),
    keepOuts: [],
    check: { edge: [], pitch: [] },
    ...(overrides.pitch || overrides.pitchMin || overrides.check
      ? {}
      : { count: { value: 12, span: span() } }),
    ...overrides,
  };
}

/** An opening of 8 in by 5 1/2 in, checked by nothing. */
export function cutOut(overrides: Partial<CutOut> = {}): CutOut {
  return {
    kind: "cut-out",
    shape: "rectangle",
    length: stated("8 in"),
    width: stated("5 1/2 in"),
    corner: stated("3/8 in"),
    check: { corner: [], finish: [] },
    ...overrides,
  };
}

/** A layout of a piece, on `someDay`. */
export function layout(piece: Layout["piece"], overrides: Partial<Layout> = {}): Layout {
  return {
    date: someDay,
    number: 1,
    title: "Upper flange",
    piece,
    line: 0,
    span: span(),
    ...overrides,
  };
}

/** What becomes of one layout in a build. */
export function laidOut(piece: Layout["piece"] | Layout, build: Partial<Build> = {}): LaidOut {
  const made = "piece" in piece ? piece : layout(piece);
  const whole = smallBuild({ days: [day({ layouts: [made] })], ...build });
  const [result] = analyze(whole, asOf("2026-12-31")).layouts;
  if (!result) throw new Error("the layout was lost");
  return result;
}

/** A row that could be laid out. */
export function rowOf(piece: FastenerRow, build?: Partial<Build>): Row {
  const { row } = laidOut(piece, build);
  if (!row?.ok) throw new Error(`no row: ${JSON.stringify(row?.why.kind)}`);
  return row;
}
