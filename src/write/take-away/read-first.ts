import { hoursText } from "../../present/format/hours.ts";
import { wrapped } from "../../present/reckon/wrapped.ts";
import { caution, type EditedAnalysis, editionNote } from "../../present/record/edition.ts";
import { builtBy } from "../../present/record/identity.ts";
import { aircraftText } from "../exports/logbook/wording.ts";
import { carriedLists } from "./carried-files.ts";

/** Name of the text that lies on top. */
export const readFirstFile = "READ-FIRST.txt";

const width = 72;

/** What a take-away is made of. */
export interface TakeAwayContents {
  readonly programVersion: string;
  readonly hasBook: boolean;
  /** Whether the journal itself is in it; of the private edition only. */
  readonly hasJournal: boolean;
}

/**
 * The text on top of a take-away: whose record it is, which edition, what to open, and how to
 * find out whether every file is the one that was listed. Lines end in CRLF, for the plainest of
 * editors.
 */
export function readFirstText(
  edited: EditedAnalysis,
  { programVersion, hasBook, hasJournal }: TakeAwayContents,
): string {
  const { analysis, edition } = edited;
  const { project } = analysis.build;
  const { build, apart } = analysis.hours.total;
  const folder = (name: string, what: string) =>
    wrapped(what, width - 12).map(
      (line, index) => `${(index === 0 ? name : "").padEnd(12)}${line}`,
    );
  const lines = [
    `${edition.toUpperCase()} EDITION`,
    "",
    ...wrapped(`${project.title}: ${aircraftText(edited)}`, width),
    ...wrapped(builtBy(analysis.build).join(" "), width),
    `As on ${analysis.asOf.date}, written by Witness Mark ${programVersion}`,
    `${hoursText(build)} hours of building, ${hoursText(apart)} of study and shop`,
    "",
    ...wrapped(editionNote(edited), width),
    "",
    "WHAT TO OPEN",
    "",
    ...folder(
      "site/",
      "Open site/index.html in any browser. It needs no network and nothing installed. Only the search page wants a server.",
    ),
    ...(hasBook ? folder("record/", "book.pdf is the whole log, to be read or printed.") : []),
    ...folder(
      hasBook ? "" : "record/",
      "The CSV files open in any spreadsheet; record.json holds everything as data and record.schema.json says what is in it. read-me.txt explains each file and column.",
    ),
    ...(hasJournal
      ? folder(
          "journal/",
          "What the builder typed, drafts too, and the original photographs with all that the camera wrote into them, the place perhaps. With the program it makes everything else anew; without it, it is plain text.",
        )
      : []),
    "",
    "WHETHER ANYTHING CHANGED",
    "",
    ...wrapped(
      `${carriedLists.table} lists this text and every file of these folders with its size and its SHA-256; ${carriedLists.digests} has the same digests for a program to compare. In this folder:`,
      width,
    ),
    "",
    `  Linux     sha256sum -c ${carriedLists.digests}`,
    `  macOS     shasum -a 256 -c ${carriedLists.digests}`,
    "  Windows   certutil -hashfile FILE SHA256",
    "",
    ...wrapped(
      "That shows whether a file is the one listed. It does not show that what it says is true, nor when it was written.",
      width,
    ),
    "",
    ...wrapped(caution, width),
  ];
  return `${lines.join("\r\n")}\r\n`;
}
