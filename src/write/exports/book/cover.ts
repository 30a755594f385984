import { photosOf } from "../../../model/build.ts";
import type { Minutes } from "../../../model/calendar.ts";
import { type Seal, shortSeal } from "../../../model/seal.ts";
import { dateText, monthText } from "../../../present/format/dates.ts";
import { hoursText } from "../../../present/format/hours.ts";
import { caution, editionNote } from "../../../present/record/edition.ts";
import { identityFacts } from "../../../present/record/identity.ts";
import { grouped } from "../logbook/wording.ts";
import type { Fact, Pages } from "../paper/pages.ts";
import { witnessMark } from "../paper/witness-mark.ts";
import type { BookContext } from "./book-context.ts";
import { bookName } from "./wording.ts";

/** The small print. */
const small = { face: "text", size: 7.2 } as const;

const explanations = [
  "Entries stand in order of their days and are numbered through; the number of an entry is that of its sheet on the site and does not change from one edition to another. Hours are written as hours:minutes, each person present is credited with all of them, and nothing is rounded. Study and shop are counted apart from the hours of the build.",
  "A late entry says when it was written. A corrected value shows what it was, struck through, what it is now, why, and which entry corrects it; totals use the new value. A reading stands beside its limit and who says so: the verdict is simple acceptance against the limit as written. At the foot of each page of the log stand the hours of the entries that begin on it, and the total carried forward.",
  "Characters that the printed typefaces lack are spelled out, or stand as their Unicode number in brackets. The digest lets anybody check that the file record.json is the one this book was printed from: its SHA-256 must be the one above. That shows that neither was changed since. It does not show that what they say is true, nor when it was written.",
];

/** The cover: what was built and by whom, how much of it is in here, and what this book is not. */
export function coverPage(pages: Pages, context: BookContext): void {
  const { record } = context;
  const { project } = record.analysis.build;
  witnessMark(pages.sheet, pages.right - 44, pages.y + 52);
  pages.space(10);
  pages.heading(bookName, 60, 34);
  pages.paragraph(project.title, { face: "bold", size: 12 }, pages.right - 96);
  pages.paragraph(project.summary, { face: "text", size: 8.4 }, pages.right - 96);
  pages.space(6);
  pages.facts("Identity and totals", identity(context));
  pages.heading("Which edition this is", 50);
  pages.paragraph(editionNote(record), small);
  pages.heading("What this book is not", 50);
  pages.paragraph(caution, small);
  pages.heading("How to read it", 50);
  for (const explanation of explanations) pages.paragraph(explanation, small);
}

function identity({ record, imprint }: BookContext): Fact[] {
  const { build, hours, asOf } = record.analysis;
  const { project, days } = build;
  const first = days[0];
  const last = days.at(-1);
  const late = days.filter((day) => day.late > 0).length;
  const amendments = days.reduce((sum, day) => sum + day.amendments.length, 0);
  const inspections = days.reduce((sum, day) => sum + day.inspections.length, 0);
  return [
    ...identityFacts(build),
    ["Work begun", dateText(project.begun)],
    [
      "Entries",
      first && last
        ? `${days.length}, from ${dateText(first.date)} to ${dateText(last.date)}; ${late} written late`
        : "none",
    ],
    ["Hours of the build", total(hours.total.build)],
    ["Study and shop, counted apart", total(hours.total.apart)],
    [
      "In the record",
      [
        counted(photosOf(build).length, "photograph"),
        counted(record.analysis.readings.length, "reading"),
        counted(inspections, "inspection"),
        counted(record.analysis.deviations.length, "deviation"),
        counted(amendments, "correction"),
      ].join(", "),
    ],
    ["Findings of the checks", `${record.findings.length || "none"}`],
    ["Judged on", dateText(asOf.date)],
    ["Sealed months", sealsText(build.seals)],
    ["Printed by", `Witness Mark ${imprint.programVersion}, on ${imprint.paper}`],
    ["SHA-256 of record.json", grouped(imprint.recordDigest, 8)],
  ];
}

function sealsText(seals: readonly Seal[]): string {
  const newest = seals.at(-1);
  return newest
    ? `${seals.length}; the newest is ${monthText(newest.month)}, ${shortSeal(newest)}`
    : "none";
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

function total(minutes: Minutes): string {
  return `${hoursText(minutes)} (${minutes} minutes)`;
}
