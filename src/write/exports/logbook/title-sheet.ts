import type { Minutes } from "../../../model/calendar.ts";
import { hoursText } from "../../../present/format/hours.ts";
import { caution, type EditedAnalysis, editionNote } from "../../../present/record/edition.ts";
import { identityFacts } from "../../../present/record/identity.ts";
import type { Fact, Pages } from "../paper/pages.ts";
import type { Paper } from "../paper/sheet-format.ts";
import { witnessMark } from "../paper/witness-mark.ts";
import { bookName, grouped } from "./wording.ts";

/** What the title sheet says beside what is in the record. */
export interface Imprint {
  readonly paper: Paper;
  readonly programVersion: string;
  /** SHA-256 of `record.json` of the same edition, as 64 hexadecimal digits. */
  readonly recordDigest: string;
}

/** The small print. */
const small = { face: "text", size: 7.2 } as const;

const explanations = [
  "One row per person per session, in order of date. Two people for two hours are four hours. Row numbers run through parts 1 and 2 together and are those of hours.csv. Hours are written as hours:minutes and nothing is rounded.",
  "The stage that a step's joint had reached stands in brackets. Clock times are those of the shop. A dash stands where only the hours were typed. A late entry says when it was written. An amended value shows what it was, what it is now, when it was amended and why; totals use the new value.",
  "Characters that the printed typefaces lack are spelled out, or stand as their Unicode number in brackets. The digest lets anybody check that the file record.json is the one this book was printed from: its SHA-256 must be the one above. That shows that neither was changed since. It does not show that what they say is true, nor when it was written.",
];

/**
 * The title sheet: identity, totals, edition, caution, how to read the book, contents.
 *
 * @param rows How many rows of hours the book has.
 * @param contents Names of the parts and the sheets they begin on.
 */
export function titleSheet(
  pages: Pages,
  edited: EditedAnalysis,
  imprint: Imprint,
  rows: number,
  contents: ReadonlyMap<string, number>,
): void {
  const { project } = edited.analysis.build;
  witnessMark(pages.sheet, pages.right - 44, pages.y + 52);
  pages.space(10);
  pages.heading(bookName, 60, 34);
  pages.paragraph(project.title, { face: "bold", size: 12 }, pages.right - 96);
  pages.paragraph(project.summary, { face: "text", size: 8.4 }, pages.right - 96);
  pages.space(6);
  pages.facts("Identity and totals", identity(edited, imprint, rows));
  pages.heading("Which edition this is", 50);
  pages.paragraph(editionNote(edited), small);
  pages.heading("What this book is not", 50);
  pages.paragraph(caution, small);
  pages.heading("How to read it", 50);
  for (const explanation of explanations) pages.paragraph(explanation, small);
  pages.heading("Contents", 60);
  pages.facts(
    "Contents",
    [...contents].map(([part, number]) => [part, `sheet ${number}`]),
  );
}

function identity(
  { analysis, diagnostics }: EditedAnalysis,
  { paper, programVersion, recordDigest }: Imprint,
  rows: number,
): Fact[] {
  const { build, hours, asOf } = analysis;
  const { project } = build;
  const findings = diagnostics.filter(({ severity }) => severity === "finding").length;
  const first = build.days[0];
  const last = build.days.at(-1);
  return [
    ...identityFacts(build),
    ["Work begun", project.begun],
    [
      "Entries",
      first && last ? `${build.days.length}, from ${first.date} to ${last.date}` : "none",
    ],
    ["Rows in this book", `${rows}`],
    ["Hours of the build", total(hours.total.build)],
    ["Study and shop, counted apart", total(hours.total.apart)],
    ["Judged on", asOf.date],
    ["Findings of the checks", findings === 0 ? "none" : `${findings}, listed in record.json`],
    ["Printed by", `Witness Mark ${programVersion}, on ${paper}`],
    ["SHA-256 of record.json", grouped(recordDigest, 8)],
  ];
}

function total(minutes: Minutes): string {
  return `${hoursText(minutes)} (${minutes} minutes)`;
}
