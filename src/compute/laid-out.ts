import type { Deviation } from "../model/deviation.ts";
import type { Span } from "../model/diagnostic.ts";
import type { Layout, LayoutSubject } from "../model/layout.ts";
import type { Quantity } from "../model/quantity.ts";
import type { Limits, ToleranceRule } from "../model/tolerance.ts";
import type { Verdict } from "./judge.ts";
import type { LimitsFault } from "./limits.ts";
import type { NoRow, Row } from "./reckon/lay-row.ts";

/** What of a row is compared, in words. */
export const rowWords = {
  ends: "edge distance at both ends",
  near: "edge distance alongside",
  far: "edge distance on the far side",
  pitch: "pitch",
} as const;

/** One length of a layout against one rule that it names. */
export interface LayoutCheck {
  readonly subject: LayoutSubject;
  /** What was compared, in words: `edge distance at both ends`. */
  readonly what: string;
  readonly value: Quantity;
  /** The rule that governs: the one named, or the one that wins over it on the layout's step. */
  readonly rule: ToleranceRule;
  readonly over?: ToleranceRule;
  readonly limits: Limits;
  /** Why there are no limits to judge by. */
  readonly fault?: LimitsFault;
  /** Absent with a `fault`. */
  readonly verdict?: Verdict;
  /** What would have to change. */
  readonly span: Span;
}

/** How a layout stands with the rules that it names. */
export type LayoutStanding =
  | "within"
  | "out"
  | "accounted for" // a deviation with a disposition is named
  | "no rule"
  | "no row"; // the row cannot be laid out

/** A layout worked out. */
export interface LaidOut {
  readonly layout: Layout;
  /** Of a row: where its fasteners stand, in the unit of its length, or why there is none. */
  readonly row?: Row | NoRow;
  /** The least pitch that the row was laid out with; absent when a count was given without one. */
  readonly least?: Quantity;
  /** In the order of the subjects, then of the names typed. */
  readonly checks: readonly LayoutCheck[];
  readonly standing: LayoutStanding;
  readonly deviation?: Deviation;
}
