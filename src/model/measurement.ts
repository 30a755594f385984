import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";

/** One measured value as typed. */
export interface MeasuredValue {
  readonly quantity: Quantity;
  readonly span: Span;
}

/** Another reading that a reading names, by its id. */
export interface NamedReading {
  readonly reading: string;
  readonly span: Span;
}

/** One reading: one or more values of the same thing, against the same rule. */
export interface Reading {
  /** As declared, or `YYYY-MM-DD.rN`, N counting the day's readings from 1. */
  readonly id: string;
  readonly date: CalendarDate;
  readonly step?: string;
  readonly assembly?: string;
  /** What was measured: `shop head diameter`. */
  readonly what: string;
  /** Where: `rib 4 row A`. */
  readonly at?: string;
  readonly rule?: string;
  readonly instrument?: string;
  /** In the order typed; empty where it is made of other readings. */
  readonly values: readonly MeasuredValue[];
  /** The readings it is made of, in the order named; absent: it has values of its own. */
  readonly of?: readonly NamedReading[];
  /** What a rule's table is entered with: its own, otherwise that of the day's conditions. */
  readonly temperature?: { readonly quantity: Quantity; readonly from: "reading" | "day" };
  /** Friction drag to be added to a torque rule's limits (AC 43.13-1B par. 7-40d). */
  readonly drag?: Quantity;
  /** Declared sizes such as `D`, over those of the rule. */
  readonly sizes: ReadonlyMap<string, Quantity>;
  /** Id of the reading this one replaces. */
  readonly supersedes?: string;
  /** Id of the deviation that accounts for it. */
  readonly deviation?: string;
  readonly private: boolean;
  readonly span: Span;
  readonly instrumentSpan?: Span;
  readonly supersedesSpan?: Span;
  readonly deviationSpan?: Span;
}
