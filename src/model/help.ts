import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Tenths } from "./portion.ts";

/** How help was given. Instruction is kept apart from both: the teacher does not do the task. */
export const helpKinds = ["paid help", "unpaid help", "instruction"] as const;
export type HelpKind = (typeof helpKinds)[number];

/** Help that somebody gave, over one or more days. */
export interface HelpEntry {
  readonly id: string;
  readonly person: string;
  readonly kind: HelpKind;
  readonly from: CalendarDate;
  /** Inclusive; the same as `from` for one day. */
  readonly to: CalendarDate;
  readonly what: string;
  readonly place?: string;
  /** Share of each task in tenths, by the task's id; of paid help only. */
  readonly shares: ReadonlyMap<string, Tenths>;
  /** Number of the bill; never in the public edition. */
  readonly invoice?: string;
  readonly note?: string;
  readonly span: Span;
}

/** The register of help. */
export interface Help {
  /** By first day. */
  readonly entries: readonly HelpEntry[];
  readonly span: Span;
}
