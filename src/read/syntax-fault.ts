/** Why a text could not be read, and where in it. */
export interface SyntaxFault {
  readonly ok: false;
  /** What would have been right here, to stand behind "expected": `a unit behind 0.19`. */
  readonly expected: string;
  /** Where the fault begins, in characters (UTF-16) from the start of the text; the first is 0. */
  readonly offset: number;
  /** How many characters are meant; at least 1, also at the end of the text. */
  readonly length: number;
  /** What to do. */
  readonly help: readonly string[];
}

/** Builds a fault that is at least one character long. */
export function syntaxFault(
  expected: string,
  offset: number,
  length: number,
  ...help: string[]
): SyntaxFault {
  return { ok: false, expected, offset, length: Math.max(1, length), help };
}
