import { Document, isScalar, type Scalar, visit, YAMLMap, YAMLSeq } from "yaml";
import type { CalendarDate } from "../../model/calendar.ts";
import type { WorkKind } from "../../model/session.ts";

/** A session to be written down: `from` and `to`, or `hours`. */
export interface NewSession {
  readonly assembly: string;
  readonly step?: string;
  readonly who: readonly string[];
  /** `HH:MM` on the 24-hour clock. */
  readonly from?: string;
  readonly to?: string;
  /** `H:MM`. */
  readonly hours?: string;
  readonly kind: WorkKind;
  readonly stage?: string;
  readonly note?: string;
}

/** An entry to be written down. */
export interface NewEntry {
  readonly date: CalendarDate;
  /** `YYYY-MM-DD HH:MM`. */
  readonly written?: string;
  /** The file that the sessions come from, when nobody typed them. */
  readonly imported?: string;
  readonly title?: string;
  readonly sessions: readonly NewSession[];
  readonly next: readonly string[];
  readonly prose: string;
}

/**
 * The text of a day entry, as a builder would type it: one line to a session, clock times in
 * quotes, the keys in the order of the manual. It reads back as what was given, the prose
 * without blank lines before and behind it.
 */
export function entryText(entry: NewEntry): string {
  const { date, written, imported, title, prose, sessions, next } = entry;
  const document = new Document({}, { version: "1.2" });
  for (const [key, value] of Object.entries({ date, written, imported, title })) {
    if (value !== undefined) document.set(key, document.createNode(value));
  }
  if (sessions.length > 0) {
    document.set("sessions", listOf(sessions.map((each) => flow(document.createNode(each)))));
  }
  if (next.length > 0) document.set("next", document.createNode(next));
  quoteWhatOthersMisread(document);
  const yaml = document
    .toString({ lineWidth: 0, flowCollectionPadding: true })
    .replace(/^( {2}- \{ assembly: .*\bwho: \[) ([\w., -]*) \]/gm, "$1$2]");
  return `---\n${yaml}---\n${prose.trim() === "" ? "" : `${prose.trim()}\n`}`;
}

function listOf(items: readonly unknown[]): YAMLSeq {
  const list = new YAMLSeq();
  for (const item of items) list.add(item);
  return list;
}

function flow(node: unknown): unknown {
  if (node instanceof YAMLMap || node instanceof YAMLSeq) node.flow = true;
  return node;
}

// Clock times are numbers to base 60 for some readers of YAML; quotes keep them text everywhere.
function quoteWhatOthersMisread(document: Document): void {
  visit(document, {
    Scalar: (_key, node: Scalar) => {
      if (isScalar(node) && /^\d{1,4}:\d\d/.test(String(node.value))) node.type = "QUOTE_DOUBLE";
    },
  });
}
