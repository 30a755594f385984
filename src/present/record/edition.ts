import type { Analysis } from "../../compute/analysis.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";

/** Who an output is for. The public one leaves private things out and says so. */
export const editions = ["public", "private"] as const;
export type Edition = (typeof editions)[number];

/** How many of each thing an edition leaves out. All zero in the private edition. */
export interface LeftOut {
  /** Days shown by their hours alone. */
  readonly days: number;
  readonly sessionNotes: number;
  /** People shown as a role, or as initials. */
  readonly names: number;
  readonly readings: number;
  readonly lots: number;
  readonly photos: number;
  readonly videos: number;
  readonly deviations: number;
  readonly loadingCases: number;
  /** Numbers of bills for help. */
  readonly invoices: number;
  /** Cures, holds, releases, squawks and inspections of private days. */
  readonly otherRecords: number;
  readonly amendments: number;
  /** Findings whose words are withheld; the findings themselves stay in the list. */
  readonly findingWords: number;
  /** Drafts and other files of the journal that are not published, unnamed here. */
  readonly omittedFiles: number;
}

/** What an edition shows, ready for tables, records and paper: nothing private is left in it. */
export interface EditedAnalysis {
  readonly edition: Edition;
  readonly analysis: Analysis;
  /** Of the reading and of the checks, in order of place. */
  readonly diagnostics: readonly Diagnostic[];
  readonly leftOut: LeftOut;
}

/** The words every output carries: what it is not, and what governs instead. */
export const caution =
  "General information kept by the builder. The drawings, the manufacturer, local rules and a licensed person govern. Nothing here is signed, certified or accepted by the program that printed it.";

const counted: readonly (readonly [keyof LeftOut, string, string])[] = [
  ["days", "day shown by its hours alone", "days shown by their hours alone"],
  ["sessionNotes", "session note", "session notes"],
  ["names", "name replaced by a role or initials", "names replaced by roles or initials"],
  ["readings", "reading", "readings"],
  ["lots", "lot", "lots"],
  ["photos", "photo", "photos"],
  ["videos", "recording", "recordings"],
  ["deviations", "deviation", "deviations"],
  ["loadingCases", "loading case", "loading cases"],
  ["invoices", "invoice number", "invoice numbers"],
  ["otherRecords", "other record of a private day", "other records of private days"],
  ["amendments", "amendment", "amendments"],
  ["findingWords", "finding without its words", "findings without their words"],
  ["omittedFiles", "draft or unread file", "drafts or unread files"],
];

/** What was left out, as words: `2 days shown by their hours alone, 1 photo`; empty when nothing. */
export function leftOutText(leftOut: LeftOut): string {
  return counted
    .filter(([key]) => leftOut[key] > 0)
    .map(([key, one, many]) => `${leftOut[key]} ${leftOut[key] === 1 ? one : many}`)
    .join(", ");
}

/** One or two sentences that say which edition this is and what it lacks. */
export function editionNote({ edition, leftOut }: Pick<EditedAnalysis, "edition" | "leftOut">) {
  if (edition === "private") {
    return "Private edition: everything in the journal, drafts excepted. It is meant for the inspector and does not go where the site goes.";
  }
  const without = leftOutText(leftOut);
  return `Public edition: an edition of the record, not the whole of it. ${
    without ? `Left out or replaced: ${without}.` : "Nothing private had to be left out."
  } All hours are counted.`;
}
