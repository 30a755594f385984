import type { Diagnostic, Severity } from "../../model/diagnostic.ts";

/** A diagnostic as `--json` prints it. Codes are stable; messages are for people. */
export interface DiagnosticJson {
  readonly code: string;
  readonly severity: Severity;
  /** As in the terminal: relative to the folder that holds the journal's folder. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, in UTF-16 code units. */
  readonly column: number;
  readonly message: string;
  readonly notes: readonly string[];
  readonly help: readonly string[];
}

/** A diagnostic as plain data, texts exactly as the check returned them. */
export function diagnosticJson(diagnostic: Diagnostic): DiagnosticJson {
  const { code, severity, span, message, notes, help } = diagnostic;
  const { file, line, column } = span;
  return { code, severity, file, line, column, message, notes, help };
}
