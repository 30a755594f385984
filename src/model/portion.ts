import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** Tenths of a point; whole. */
export type Tenths = number;

/**
 * Who a task's point is shared between, in the order of the sheet: the maker of the kit, of a
 * component or of a part; help that was paid for; assembly and fabrication by amateurs.
 */
export const creditColumns = ["kit", "paid", "assembly", "fabrication"] as const;
export type CreditColumn = (typeof creditColumns)[number];

/** One point, divided: the four shares come to ten tenths. */
export type Split = Readonly<Record<CreditColumn, Tenths>>;

/** A task is one point. */
export const tenthsOfATask: Tenths = 10;

/** A line of the sheet. */
export interface Task {
  readonly id: string;
  readonly section: string;
  readonly title: string;
  /** Added by the builder, because the list has no such line; then when and why. */
  readonly added?: { readonly date: CalendarDate; readonly why: string };
  /** The kit's share as the list itself gives it. */
  readonly listed?: Tenths;
  readonly span: Span;
}

/** How a task's point was divided from some day on. */
export interface SplitEntry {
  readonly task: string;
  readonly date: CalendarDate;
  /** Absent: the task does not apply to this aircraft. */
  readonly split?: Split;
  /** Why it does not apply, or why an earlier division was changed. */
  readonly why?: string;
  /** What the kit's share rests on: an evaluation, a record of the part. */
  readonly source?: string;
  /** Made from a used or salvaged assembly of a type-certificated aircraft. */
  readonly salvage: boolean;
  readonly note?: string;
  readonly span: Span;
}

/** Which list of tasks it is; printed with every copy. */
export interface TaskList {
  readonly title: string;
  readonly year?: string;
  /** The type of aircraft that the list is for. */
  readonly aircraft: string;
  /** Where the builder has it from. */
  readonly from: string;
  readonly loaded: CalendarDate;
}

/** The sheet on which the tasks of a build are shared out. */
export interface Portion {
  readonly list: TaskList;
  /** By id: those of the list in its order, then the added ones. */
  readonly tasks: ReadonlyMap<string, Task>;
  /** By date; those of one task never share a date. */
  readonly splits: readonly SplitEntry[];
  /** Steps whose sessions count as claiming a task. */
  readonly steps: ReadonlyMap<string, readonly string[]>;
  readonly span: Span;
}
