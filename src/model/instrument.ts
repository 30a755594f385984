import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Quantity } from "./quantity.ts";

/** One calibration of an instrument. */
export interface Calibration {
  readonly on: CalendarDate;
  /** Last day on which the instrument may be used on the strength of it; absent: no due date. */
  readonly due?: CalendarDate;
  readonly by?: string;
  readonly span: Span;
}

/** What was measured with. */
export interface Instrument {
  readonly id: string;
  readonly title: string;
  readonly resolution?: Quantity;
  /** Expanded uncertainty U of the calibration. */
  readonly uncertainty?: Quantity;
  /** Coverage factor k of `uncertainty`, as typed; 2 when the register is silent. */
  readonly coverage: number;
  /** Oldest first. Empty: this instrument is not under calibration. */
  readonly calibrations: readonly Calibration[];
  readonly span: Span;
}

/**
 * The calibration in force on a day: the newest made on or before it.
 * @returns `undefined` when there was none yet.
 */
export function calibrationOn(instrument: Instrument, date: CalendarDate): Calibration | undefined {
  return instrument.calibrations.findLast(({ on }) => on <= date);
}
