import { createHash } from "node:crypto";
import path from "node:path";
import type { Analysis } from "../../compute/analysis.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { packetOf } from "../../present/alteration/packet.ts";
import { packetText } from "../../present/alteration/packet-text.ts";
import { recordIndex } from "../../present/pages/record-index.ts";
import type { EditedAnalysis, Edition } from "../../present/record/edition.ts";
import { hoursLogbookRecord, hoursSchemaFile } from "../../present/record/hours-record.ts";
import { hoursSchema } from "../../present/record/hours-schema.ts";
import { journalRecord, recordSchemaFile } from "../../present/record/journal-record.ts";
import { privateEdition, publicEdition } from "../../present/record/public-edition.ts";
import { recordSchema } from "../../present/record/record-schema.ts";
import { tablesOf } from "../../present/tables/all-tables.ts";
import { writeFileWhole } from "../output.ts";
import { balancePdf } from "./balance/balance-pdf.ts";
import type { BookImprint } from "./book/book-context.ts";
import { type BookFolders, writeBook } from "./book/write-book.ts";
import { csvText } from "./csv-text.ts";
import { logbookPdf } from "./logbook/logbook-pdf.ts";
import type { Imprint } from "./logbook/title-sheet.ts";
import { aircraftText } from "./logbook/wording.ts";
import { packetPdf } from "./packet/packet-pdf.ts";
import type { Paper } from "./paper/sheet-format.ts";
import { portionPdf } from "./portion/portion-pdf.ts";
import { type ListedFile, readMeText } from "./read-me.ts";

/** How to export. */
export interface ExportOptions {
  /** Where the files go; made when it is not there. Files of other names are left alone. */
  readonly folder: string;
  readonly edition: Edition;
  readonly paper: Paper;
  readonly programVersion: string;
  /** Absent: no book is made. */
  readonly book?: BookOptions;
  /** True: the packet of an alteration and nothing else; whoever asks has seen that there is one. */
  readonly packetOnly?: boolean;
  /** Called with a file's name before it is made, and with how far a long one has come. */
  readonly progress?: (text: string) => void;
  /** Ends the work; files that are finished stay. */
  readonly signal?: AbortSignal;
}

/** What the book is made from beside the record. */
export interface BookOptions
  extends Pick<BookImprint, "sections">,
    Pick<BookFolders, "photosFolder" | "cacheFolder"> {}

/** A file that was written. */
export interface WrittenFile {
  /** In the folder that was asked for. */
  readonly path: string;
  readonly bytes: number;
  /** What it is, in a few words. */
  readonly what: string;
}

/**
 * Writes the record in every form: CSV tables, JSON with its schemas, the paper logbook, the
 * book of the build, and a text that lists them. The same analysis gives the same bytes. Each file is written whole or
 * not at all; the list comes last.
 *
 * @param diagnostics Everything that reading and checking found, in order of place.
 * @returns The files, and one finding for each photograph that the book could not show.
 * @throws MachineProblem when the system refuses to write; whatever `signal` was aborted with.
 */
export async function writeExports(
  analysis: Analysis,
  diagnostics: readonly Diagnostic[],
  options: ExportOptions,
): Promise<{
  readonly files: readonly WrittenFile[];
  readonly diagnostics: readonly Diagnostic[];
}> {
  const edited =
    options.edition === "public"
      ? publicEdition(analysis, diagnostics)
      : privateEdition(analysis, diagnostics);
  const listed: ListedFile[] = [];
  const written: WrittenFile[] = [];
  const unreadable: Diagnostic[] = [];
  let recordDigest = "";
  for await (const { name, what, data } of exportedFiles(edited, options)) {
    options.signal?.throwIfAborted();
    if (name === recordFile) recordDigest = digestOf(data);
    listed.push({ name, bytes: data.byteLength, sha256: digestOf(data), what });
    written.push(await save(options.folder, name, what, data));
  }
  if (options.book) {
    const book = await saveBook(analysis, diagnostics, options, options.book, recordDigest);
    unreadable.push(...book.diagnostics);
    listed.push(book.listed);
    written.push(book.written);
  }
  if (options.packetOnly) return { files: written, diagnostics: unreadable };
  options.progress?.("read-me.txt");
  const readMe = bytesOf(readMeText(edited, listed, options.programVersion));
  written.push(await save(options.folder, "read-me.txt", "what the files are", readMe));
  return { files: written, diagnostics: unreadable };
}

/** The book, which is too large to be held in memory. */
async function saveBook(
  analysis: Analysis,
  diagnostics: readonly Diagnostic[],
  { folder, edition, paper, programVersion, progress, signal }: ExportOptions,
  { sections, photosFolder, cacheFolder }: BookOptions,
  recordDigest: string,
) {
  const name = "book.pdf";
  progress?.(name);
  const file = path.join(folder, name);
  const { bytes, sha256, pages, ...book } = await writeBook(
    file,
    recordIndex({ analysis, diagnostics, pictures: new Map(), edition }),
    {
      paper,
      programVersion,
      recordDigest,
      sections,
    },
    {
      photosFolder,
      cacheFolder,
      ...(progress ? { progress: (text: string) => progress(`${name}: ${text}`) } : {}),
      ...(signal ? { signal } : {}),
    },
  );
  const what = `Book of the build on ${pages} pages of ${paper}: ${sections.join(", ")}.`;
  return {
    listed: { name, bytes, sha256, what },
    written: { path: file, bytes, what },
    diagnostics: book.diagnostics,
  };
}

const recordFile = "record.json";

interface MadeFile {
  readonly name: string;
  readonly what: string;
  readonly data: Uint8Array;
}

/** The files one after the other, so that only one is in memory. */
async function* exportedFiles(
  edited: EditedAnalysis,
  { paper, programVersion, packetOnly, progress }: ExportOptions,
): AsyncGenerator<MadeFile> {
  progress?.(recordFile);
  const record = bytesOf(jsonText(journalRecord(edited, programVersion)));
  const recordDigest = digestOf(record);
  yield* packetFiles(edited, { paper, programVersion, recordDigest }, progress);
  if (packetOnly) return;
  progress?.("hours-logbook.pdf");
  yield {
    name: "hours-logbook.pdf",
    what: `Hours logbook to be printed on ${paper}, with the digest of record.json on its title sheet.`,
    data: await logbookPdf(edited, { paper, programVersion, recordDigest }),
  };
  const balance = await balancePdf(edited, { paper, programVersion, recordDigest });
  if (balance) {
    progress?.("balance.pdf");
    yield {
      name: "balance.pdf",
      what: `Weight and balance report to be printed on ${paper}.`,
      data: balance,
    };
  }
  const portion = await portionPdf(edited, { paper, programVersion, recordDigest });
  if (portion) {
    progress?.("portion.pdf");
    yield {
      name: "portion.pdf",
      what: `Major-portion sheet to be printed on ${paper}.`,
      data: portion,
    };
  }
  for (const table of tablesOf(edited.analysis)) {
    const name = `${table.name}.csv`;
    progress?.(name);
    yield { name, what: `${table.title}.`, data: bytesOf(csvText(table, edited.analysis)) };
  }
  yield { name: recordFile, what: "The whole record as data.", data: record };
  yield {
    name: recordSchemaFile,
    what: "What record.json contains, as a JSON Schema (draft 2020-12).",
    data: bytesOf(jsonText(recordSchema())),
  };
  progress?.("hours.json");
  yield {
    name: "hours.json",
    what: "The rows of the hours and every total, as data.",
    data: bytesOf(jsonText(hoursLogbookRecord(edited, programVersion))),
  };
  yield {
    name: hoursSchemaFile,
    what: "What hours.json contains, as a JSON Schema (draft 2020-12).",
    data: bytesOf(jsonText(hoursSchema())),
  };
}

/** The packet of an alteration; nothing for an aircraft that is built. */
async function* packetFiles(
  edited: EditedAnalysis,
  imprint: Imprint,
  progress: ExportOptions["progress"],
): AsyncGenerator<MadeFile> {
  const packet = packetOf(edited);
  const data = await packetPdf(edited, imprint);
  if (!packet || !data) return;
  progress?.("alteration-packet.pdf");
  yield {
    name: "alteration-packet.pdf",
    what: `Draft of the papers of the alteration to be printed on ${imprint.paper}; every signature is empty.`,
    data,
  };
  yield {
    name: "alteration-packet.txt",
    what: "The same draft as plain text, to be copied from.",
    data: bytesOf(packetText(packet, aircraftText(edited))),
  };
}

async function save(
  folder: string,
  name: string,
  what: string,
  data: Uint8Array,
): Promise<WrittenFile> {
  const file = path.join(folder, name);
  await writeFileWhole(file, data);
  return { path: file, bytes: data.byteLength, what };
}

function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

function bytesOf(text: string): Uint8Array {
  return Buffer.from(text, "utf8");
}

function digestOf(data: Uint8Array): string {
  return createHash("sha256").update(data).digest("hex");
}
