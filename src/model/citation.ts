/** How far a published value was checked when it was copied into this program. */
export type SourceStatus = "read" | "secondary" | "memory";

/** Who says so: enough for a stranger to find the place. */
export interface Citation {
  /** `AC 43.13-1B`, `sheet HS-03`, `builder's manual`. */
  readonly document: string;
  /** Edition, revision or date, as printed: `8 Sep 1998`, `rev C`. */
  readonly edition?: string;
  /** Table, paragraph, page: `table 7-1`. */
  readonly place?: string;
  /** Only for values shipped with the program. */
  readonly status?: SourceStatus;
}

/** One line: `AC 43.13-1B (8 Sep 1998), table 7-1`. */
export function citationText({ document, edition, place }: Citation): string {
  return `${document}${edition ? ` (${edition})` : ""}${place ? `, ${place}` : ""}`;
}
