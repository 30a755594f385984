import type { Diagnostic } from "../../../model/diagnostic.ts";
import { places } from "../addresses.ts";
import type { Links } from "../links.ts";
import type { Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** What wants attention on the aircraft. */
export interface FindingView {
  readonly number: number;
  /** The check's name as words: `reading out of limits`. */
  readonly title: string;
  readonly message: string;
  readonly notes: readonly string[];
  /** What to write in which entry; only the private edition says it. */
  readonly help: readonly string[];
  /** The sheet it is about; absent when it is about a register. */
  readonly day?: Mention;
}

/** A finding as the pages show it; `number` counts those of one page from 1. */
export function findingView(
  record: RecordIndex,
  links: Links,
  { code, message, notes, help, span }: Diagnostic,
  number: number,
): FindingView {
  const date = record.dateByFile.get(span.file);
  const day = date === undefined ? registerSheet(record, links, span.file) : links.day(date);
  return {
    number,
    title: code.replaceAll("-", " "),
    message: onPage(message),
    notes: notes.map(onPage),
    help: record.edition === "private" ? help.map(onPage) : [],
    ...(day ? { day } : {}),
  };
}

function registerSheet(record: RecordIndex, links: Links, file: string): Mention | undefined {
  const { balance, portion } = record.analysis;
  if (balance?.register.span.file === file) {
    return { text: "Weight and balance", href: links.to(places.balance) };
  }
  if (portion?.register.span.file === file) {
    return { text: "Major-portion sheet", href: links.to(places.portion) };
  }
  return undefined;
}

// Backquotes and places in files are for the terminal; on a page the words stand by themselves.
function onPage(text: string): string {
  return text.replaceAll("`", "").replace(/(?:: | at )?\S+\.(?:md|yaml):\d+(?::\d+)?/g, "");
}
