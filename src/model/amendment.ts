import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";

/** A correction to an earlier day. The old value stays readable; totals use the new one. */
export interface Amendment {
  /** The day whose entry carries the correction. */
  readonly date: CalendarDate;
  /** The day corrected. */
  readonly day: CalendarDate;
  /** Path of the value, as in `sessions[2].hours`, counted from 1. */
  readonly field: string;
  readonly was: string;
  readonly now: string;
  readonly why: string;
  /** Present where it corrects a reading. */
  readonly reading?: AmendedReading;
  readonly span: Span;
}

/** The reading that an amendment corrects. */
export interface AmendedReading {
  readonly id: string;
  /** The values it had before, in the order typed; empty where they were not what was corrected. */
  readonly values: readonly Quantity[];
}
