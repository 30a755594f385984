import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** Something fastened only for now: cleco, tape, clamp, temporary bolt. */
export interface Hold {
  /** As declared, or `YYYY-MM-DD.hN`, N counting the day's holds from 1. */
  readonly id: string;
  readonly date: CalendarDate;
  readonly step: string;
  readonly with: string;
  readonly count?: number;
  readonly where?: string;
  readonly span: Span;
}

/** The end of a hold. A release that names a step ends all its holds of earlier and equal date. */
export interface Release {
  readonly date: CalendarDate;
  readonly hold?: string;
  readonly step?: string;
  readonly span: Span;
}
