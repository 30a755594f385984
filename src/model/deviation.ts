import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** What was decided about a deviation, and by whom. */
export interface Disposition {
  readonly date: CalendarDate;
  readonly text: string;
  /** Person id of who accepted it. */
  readonly by?: string;
  readonly span: Span;
}

/** What departs from the drawings. */
export interface Deviation {
  readonly id: string;
  readonly date: CalendarDate;
  readonly step?: string;
  readonly drawing: string;
  readonly planned: string;
  readonly done: string;
  readonly why: string;
  /** From the entry itself or from a later day; absent while undecided. */
  readonly disposition?: Disposition;
  readonly private: boolean;
  readonly span: Span;
}
