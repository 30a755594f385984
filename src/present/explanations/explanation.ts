import type { Severity } from "../../model/diagnostic.ts";

/** A file of an example, as it would stand in a journal. */
export interface ExampleFile {
  /** Below the journal's folder: `days/2026/2026-03-14.md`. */
  readonly file: string;
  readonly text: string;
}

/**
 * What one kind of diagnostic means, in plain words. Names of fields and files stand in
 * backticks; there is no other markup.
 */
export interface Explanation {
  /** As printed in brackets: `expired-lot`. */
  readonly code: string;
  readonly severity: Severity;
  /** A heading: `A lot used after its last day`. */
  readonly title: string;
  /** What has been found. */
  readonly meaning: string;
  /** Why it matters. */
  readonly why: string;
  /** Ways to mend it; any one will do, unless it says otherwise. */
  readonly mend: readonly string[];
  /** Files that work, so that they can be compared with what was typed. */
  readonly example: readonly ExampleFile[];
  /** Where a mistake can hurt somebody. */
  readonly caution?: string;
}
