import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { ContinuedHeading } from "./published/alteration-paperwork.ts";

/** A document that the work is done to. */
export interface DataReference {
  readonly document: string;
  /** Revision, edition or date, as printed on it. */
  readonly revision: string;
  readonly title?: string;
  /** Sheet, paragraph or page. */
  readonly place?: string;
  /** Who issued it. */
  readonly from?: string;
  readonly note?: string;
  readonly span: Span;
}

/** A test of the altered aircraft or of a part of it. */
export interface AlterationTest {
  readonly id: string;
  readonly what: string;
  readonly step?: string;
  /** Absent while it has not been made. */
  readonly date?: CalendarDate;
  /** Person id. */
  readonly by?: string;
  readonly result?: string;
  readonly span: Span;
}

/** What the builder says of an alteration beside its entries: the register `alteration.yaml`. */
export interface Alteration {
  readonly title: string;
  /** Where on the aircraft. */
  readonly where: string;
  /** Maker of the aircraft, as on its data plate. */
  readonly maker?: string;
  /** The work in the builder's words, one paragraph each. */
  readonly work: readonly string[];
  /** In the order typed. */
  readonly data: readonly DataReference[];
  /** In the order typed. */
  readonly tests: readonly AlterationTest[];
  /** How it goes together with earlier changes of the aircraft. */
  readonly earlierChanges?: string;
  /** What of the flight manual the work changes. */
  readonly flightManual?: string;
  /** Ids of the changes of equipment that belong to it; absent: all. */
  readonly changes?: readonly string[];
  /** What stands under each heading, as far as something was typed. */
  readonly continued: ReadonlyMap<ContinuedHeading, string>;
  readonly span: Span;
}
