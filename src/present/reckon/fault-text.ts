import type { Words } from "../../compute/reckon/sum.ts";
import { displayWidth } from "../diagnostics/display-width.ts";
import { type Paint, unpainted } from "../diagnostics/paint.ts";
import { printable } from "../diagnostics/printable.ts";
import { wordsText } from "../format/reckoned.ts";

/** What is wrong with the inputs of a sum. */
export interface InputFault {
  /** The argument as typed, and which part of it is meant. */
  readonly place?: { readonly text: string; readonly offset: number; readonly length: number };
  readonly message: Words;
  readonly help: readonly Words[];
}

/**
 * A fault as the terminal shows it: the message, the argument as typed with carets under what
 * is meant, then what to do. No line end at the end.
 */
export function faultText({ place, message, help }: InputFault, paint: Paint = unpainted): string {
  const lines = [`${paint("error", "error:")} ${printable(wordsText(message))}`];
  if (place) {
    const shown = printable(place.text);
    const before = displayWidth(shown.slice(0, place.offset));
    const meant = displayWidth(shown.slice(place.offset, place.offset + place.length));
    const bar = paint("frame", "|");
    lines.push(`  ${bar} ${shown}`);
    lines.push(`  ${bar} ${" ".repeat(before)}${paint("caret", "^".repeat(Math.max(1, meant)))}`);
  }
  for (const advice of help)
    lines.push(`  ${paint("help", "= help:")} ${printable(wordsText(advice))}`);
  return lines.join("\n");
}
