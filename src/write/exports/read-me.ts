import { caution, type EditedAnalysis, editionNote } from "../../present/record/edition.ts";
import { builtBy } from "../../present/record/identity.ts";
import { tablesOf } from "../../present/tables/all-tables.ts";
import { aircraftText } from "./logbook/wording.ts";

/** A file as listed for the reader. */
export interface ListedFile {
  readonly name: string;
  readonly bytes: number;
  /** 64 hexadecimal digits. */
  readonly sha256: string;
  readonly what: string;
}

const width = 78;

/**
 * The text that lies beside the exported files: which edition they are, what each file is, how
 * to check that it is unchanged, and what every column means. Lines end in CRLF, for the
 * plainest of editors.
 */
export function readMeText(
  edited: EditedAnalysis,
  files: readonly ListedFile[],
  programVersion: string,
): string {
  const { analysis } = edited;
  const { project } = analysis.build;
  const lines = [
    ...wrapped(`${project.title}: ${aircraftText(edited)}`),
    ...wrapped(builtBy(analysis.build).join(" ")),
    `Record judged on ${analysis.asOf.date}, exported by Witness Mark ${programVersion}`,
    "",
    ...wrapped(editionNote(edited)),
    "",
    ...wrapped(caution),
    "",
    "FILES",
    "",
    ...files.flatMap(({ name, bytes, sha256, what }) => [
      `${name} (${bytes} bytes)`,
      ...wrapped(what, "  "),
      `  SHA-256 ${sha256}`,
      "",
    ]),
    ...wrapped(
      "The digests let anybody check that a file is the one listed here. They do not show that what it says is true, nor when it was written.",
    ),
    "",
    "HOW TO READ THE CSV FILES",
    "",
    ...wrapped(
      "UTF-8 with a byte order mark, commas, CRLF, column names in the first line. Minutes are whole numbers and are the truth: every total is a sum of them. An apostrophe before a text keeps a spreadsheet from running it as a formula or turning it into a number, a date or a time, as it would turn 1/8, 3-16, 10e5 and 0015; take the apostrophe off to get the text as typed. An empty cell means unknown or none, never zero. Numbers have a decimal point: where the spreadsheet asks for the language of the file, say English and UTF-8, or it may take 0.262 for 262.",
    ),
    "",
    ...tablesOf(analysis).flatMap(({ name, title, heads }) => [
      `${name}.csv: ${title}`,
      "",
      ...heads.flatMap(({ key, means }) => wrapped(`${key}: ${means}`, "  ", "      ")),
      "",
    ]),
  ];
  return `${lines.join("\r\n").trimEnd()}\r\n`;
}

/** Lines no longer than a terminal is wide, broken at spaces. */
function wrapped(text: string, first = "", rest = first): string[] {
  const lines: string[] = [];
  let current = first;
  for (const word of text.split(" ")) {
    const isBlank = current.trim() === "";
    if (!isBlank && current.length + 1 + word.length > width) {
      lines.push(current);
      current = `${rest}${word}`;
    } else {
      current = isBlank ? `${current}${word}` : `${current} ${word}`;
    }
  }
  return [...lines, current];
}
