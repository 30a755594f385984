import type Fraction from "fraction.js";

/** A stretch of the calendar as a maker states it: `9 months`, `180 days`. Months differ in days. */
export interface CalendarSpan {
  readonly typed: string;
  readonly count: Fraction;
  /** Years are twelve months, weeks seven days. */
  readonly of: "months" | "days";
}
