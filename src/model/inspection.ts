import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** How a look came out: nothing stands against closing, or something does. */
export const inspectionResults = ["clear", "held"] as const;
export type InspectionResult = (typeof inspectionResults)[number];

/** Who looked at what, what was open to view, and what was found. */
export interface Inspection {
  readonly date: CalendarDate;
  readonly step: string;
  /** Which of the step's declared looks this was. */
  readonly look: string;
  /** Person id. */
  readonly by: string;
  readonly open: string;
  readonly findings: string;
  readonly result: InspectionResult;
  readonly span: Span;
}
