import type { CalendarDate, Moment } from "./calendar.ts";
import type { Citation } from "./citation.ts";
import type { Span } from "./diagnostic.ts";

/** A wait: something was mixed and may not be loaded before it is ready. */
export interface Cure {
  readonly date: CalendarDate;
  readonly step: string;
  readonly lot?: string;
  readonly mixed: Moment;
  /** When the joint was closed and fastened. */
  readonly closed?: Moment;
  readonly ready: Moment;
  /** Who says how long. */
  readonly citation?: Citation;
  readonly note?: string;
  readonly span: Span;
  readonly lotSpan?: Span;
}
