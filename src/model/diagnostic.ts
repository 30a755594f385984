/** A place in a file of the journal, as the builder's editor counts: lines and columns from 1. */
export interface Span {
  /** Path relative to the folder that holds the journal's folder, with `/` between parts. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** How many characters are meant; at least 1. */
  readonly length: number;
  /** The whole line as typed, without its line end. */
  readonly text: string;
}

/**
 * How bad it is. An `error` means that the journal cannot be believed: nothing is published.
 * A `finding` means that the aircraft wants attention: the site is built and shows it.
 */
export type Severity = "error" | "finding";

/** One fault, as data. `present/diagnostics` words it for the terminal. */
export interface Diagnostic {
  /** The check's name, such as `overlapping-sessions`. */
  readonly code: string;
  readonly severity: Severity;
  readonly span: Span;
  /** What is wrong: lower case, no full stop, values with units, names in backticks. */
  readonly message: string;
  /** A few words under the caret. */
  readonly label?: string;
  /** Evidence: the limit, the publication, the other entry. */
  readonly notes: readonly string[];
  /** What to do; names the field to fill, never proposes a measured value. */
  readonly help: readonly string[];
  /** True when it speaks of something private; the public edition then withholds its words. */
  readonly private?: boolean;
}

/** Where something was typed, to point at it from a note: `content/days/2026/2026-03-14.md:17`. */
export function placeText({ file, line }: Span): string {
  return `${file}:${line}`;
}

/**
 * Orders diagnostics by file, line, column, then code.
 * @returns Negative, zero or positive, as `Array.prototype.sort` wants it.
 */
export function byPlace(a: Diagnostic, b: Diagnostic): number {
  return (
    compareText(a.span.file, b.span.file) ||
    a.span.line - b.span.line ||
    a.span.column - b.span.column ||
    compareText(a.code, b.code)
  );
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
