// A small journal as the pages and the exports are given it.

import { analyze } from "../../src/compute/analyze.ts";
import { type RecordIndex, recordIndex } from "../../src/present/pages/record-index.ts";
import type { Edition } from "../../src/present/record/edition.ts";
import { readSmall } from "./temporary-journal.ts";

/**
 * The index that all pages are made from, of the small registers with these files over them.
 * Throws on what reading reports: the test is wrong.
 */
export function shownJournal(
  files: Readonly<Record<string, string>>,
  edition: Edition = "public",
): RecordIndex {
  const { build, zone, diagnostics } = readSmall(files);
  if (!build || !zone || diagnostics.length > 0) {
    throw new Error(diagnostics.map(({ message }) => message).join("\n"));
  }
  const analysis = analyze(build, zone.asOf("2026-12-31"));
  return recordIndex({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures: new Map(),
    edition,
  });
}
