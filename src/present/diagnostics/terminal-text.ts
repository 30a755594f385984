import type { Diagnostic, Span } from "../../model/diagnostic.ts";
import { displayWidth, signsOf } from "./display-width.ts";
import { type Paint, unpainted } from "./paint.ts";
import { printable } from "./printable.ts";

/** Lines longer than this are shown as a window around the place, in columns. */
const widestExcerpt = 160;

/**
 * One diagnostic as the terminal shows it: place, severity, check and message; the line as
 * typed, with carets under what is meant; then notes and help. No line end at the end.
 *
 * Carets stand right under wide signs, combining accents and tabs. Signs that a terminal would
 * obey are shown as pictures of themselves.
 *
 * @param paint Colours each part; by default nothing is coloured.
 */
export function diagnosticText(diagnostic: Diagnostic, paint: Paint = unpainted): string {
  const { code, severity, span, message, label, notes, help } = diagnostic;
  const place = `${printable(span.file)}:${span.line}:${span.column}:`;
  const number = String(span.line);
  const margin = " ".repeat(number.length);
  const bar = paint("frame", "|");
  const { line, before, carets } = excerpt(span);
  const pointer = [carets, ...(label === undefined ? [] : [printable(label)])].join(" ");
  return [
    `${paint("place", place)} ${paint(severity, `${severity}[${code}]:`)} ${printable(message)}`,
    `${margin} ${bar}`,
    `${paint("frame", number)} ${bar}${line === "" ? "" : ` ${line}`}`,
    `${margin} ${bar} ${before}${paint("caret", pointer)}`,
    ...notes.map((note) => `${margin} ${paint("note", "= note:")} ${printable(note)}`),
    ...help.map((advice) => `${margin} ${paint("help", "= help:")} ${printable(advice)}`),
  ].join("\n");
}

/** Several diagnostics, an empty line between them. Empty text for none. */
export function diagnosticsText(diagnostics: readonly Diagnostic[], paint?: Paint): string {
  return diagnostics.map((diagnostic) => diagnosticText(diagnostic, paint)).join("\n\n");
}

interface Excerpt {
  readonly line: string;
  /** What brings the carets under their place: spaces, and tabs where the line has tabs. */
  readonly before: string;
  readonly carets: string;
}

function excerpt({ text, column, length }: Span): Excerpt {
  const shown = printable(text);
  const start = Math.min(column - 1, shown.length);
  const parts = {
    before: shown.slice(0, start),
    meant: shown.slice(start, start + length),
    after: shown.slice(start + length),
  };
  if (displayWidth(shown) > widestExcerpt) shorten(parts);
  const { before, meant, after } = parts;
  return {
    line: `${before}${meant}${after}`,
    before: signsOf(before)
      .map(({ text: sign, width }) => (sign === "\t" ? sign : " ".repeat(width)))
      .join(""),
    carets: "^".repeat(Math.max(1, displayWidth(meant))),
  };
}

function shorten(parts: { before: string; meant: string; after: string }): void {
  const third = Math.floor(widestExcerpt / 3);
  const before = signsOf(parts.before);
  const meant = signsOf(parts.meant);
  const after = signsOf(parts.after);
  const joined = (signs: { text: string }[]) => signs.map(({ text }) => text).join("");
  if (before.length > third) parts.before = `…${joined(before.slice(-third))}`;
  if (meant.length > third) parts.meant = `${joined(meant.slice(0, third))}…`;
  if (after.length > third) parts.after = `${joined(after.slice(0, third))}…`;
}
