import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** An open item. */
export interface Squawk {
  readonly id: string;
  readonly date: CalendarDate;
  readonly found: string;
  readonly step?: string;
  readonly assembly?: string;
  readonly owner?: string;
  /** What was done about it, from a later day or the same. */
  readonly fixed?: { readonly date: CalendarDate; readonly text: string };
  /** When somebody looked and closed it. */
  readonly closed?: { readonly date: CalendarDate; readonly by?: string };
  readonly span: Span;
}
