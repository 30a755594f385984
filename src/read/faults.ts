import type { Diagnostic, Span } from "../model/diagnostic.ts";
import { sealFaults } from "../model/seal.ts";

/** Everything that reading can find wrong, by name. Each has its page and its example. */
export const readerFaults = [
  "missing-file",
  "front-matter-missing",
  "front-matter-too-large",
  "code-front-matter",
  "not-yaml",
  "duplicate-key",
  "forbidden-key",
  "alias-or-anchor",
  "comment-swallows-text",
  "unknown-key",
  "missing-key",
  "wrong-shape",
  "not-a-date",
  "not-a-time",
  "time-in-gap",
  "time-in-fold",
  "not-a-duration",
  "not-a-number",
  "not-a-choice",
  "not-an-id",
  "not-a-quantity",
  "not-an-expression",
  "not-a-table",
  "not-a-zone",
  "wrong-dimension",
  "unknown-name",
  "unknown-rule-set",
  "rule-does-not-win",
  "unmatched-readings",
  "not-a-layout",
  "duplicate-id",
  "duplicate-day",
  "date-differs-from-file-name",
  "path-leaves-journal",
  "missing-photo",
  "missing-video",
  "not-a-link",
  "name-not-portable",
  "empty-day",
  "amendment-does-not-match",
  "identity-differs",
  "not-csv",
  "duplicate-row",
  "not-a-share",
  "not-a-split",
  "portion-of-an-alteration",
  "not-an-alteration",
  ...sealFaults,
] as const;
export type ReaderFault = (typeof readerFaults)[number];

/** What a fault says beside its name and place. */
export interface FaultText {
  readonly message: string;
  readonly label?: string;
  readonly notes?: readonly string[];
  readonly help?: readonly string[];
}

/** Collects what reading finds wrong, so that one run reports all of it. */
export class Faults {
  readonly #found: Diagnostic[] = [];

  /** Adds an error and returns `undefined`, so that a reader can `return faults.add(…)`. */
  add(code: ReaderFault, span: Span, { message, label, notes, help }: FaultText): undefined {
    this.#found.push({
      code,
      severity: "error",
      span,
      message,
      ...(label === undefined ? {} : { label }),
      notes: notes ?? [],
      help: help ?? [],
    });
    return undefined;
  }

  get found(): readonly Diagnostic[] {
    return this.#found;
  }
}
