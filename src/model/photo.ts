import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** A photograph named by a day. */
export interface Photo {
  readonly date: CalendarDate;
  /** Path below the journal's `photos` folder, with `/` between parts. */
  readonly file: string;
  readonly caption: string;
  /** Alternative text; the caption stands in when absent. */
  readonly alt?: string;
  readonly step?: string;
  readonly assembly?: string;
  /** Person ids of who can be seen. */
  readonly shows: readonly string[];
  readonly private: boolean;
  readonly span: Span;
}
