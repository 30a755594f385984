/** What a stretch of a message is, so that a terminal may colour it. */
export type Part = "error" | "finding" | "place" | "frame" | "caret" | "note" | "help";

/** Colours a stretch of text; returns the text itself where there is no colour. */
export type Paint = (part: Part, text: string) => string;

/** No colour at all. */
export const unpainted: Paint = (_part, text) => text;
