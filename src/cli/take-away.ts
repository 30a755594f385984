import { join, resolve } from "node:path";
import type { Analysis } from "../compute/analysis.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { BookSection } from "../present/book/book-sections.ts";
import { fileSize } from "../present/format/file-size.ts";
import type { Edition } from "../present/record/edition.ts";
import { privateEdition, publicEdition } from "../present/record/public-edition.ts";
import { filesBelow, filesDirectlyIn } from "../read/files.ts";
import type { Paper } from "../write/exports/paper/sheet-format.ts";
import { writeExports } from "../write/exports/write-exports.ts";
import { withLock } from "../write/lock.ts";
import { copyFileWhole, removeFile, writeFileWhole } from "../write/output.ts";
import { swapInSite, swapMarkers } from "../write/site-swap.ts";
import {
  type CarriedFile,
  carriedFiles,
  carriedLists,
  writeCarriedLists,
} from "../write/take-away/carried-files.ts";
import { readFirstFile, readFirstText } from "../write/take-away/read-first.ts";
import { fillSite, lockFile } from "./build-site.ts";
import { counted, type Journal } from "./journal.ts";

/** How to make a take-away. */
export interface TakeAwayOptions {
  /** Holds the folder; made when absent. */
  readonly outFolder: string;
  readonly edition: Edition;
  readonly paper: Paper;
  /** None: no book. */
  readonly book: readonly BookSection[];
  readonly programVersion: string;
  readonly progress: (text: string) => void;
  readonly note: (text: string) => void;
  readonly signal?: AbortSignal;
}

/** A take-away that was made. */
export interface TakeAway {
  readonly folder: string;
  readonly files: readonly CarriedFile[];
  /** SHA-256 of the list of digests. */
  readonly digest: string;
  /** Photographs that could not be shown. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The editions never share a folder, and each folder says which it is. */
export function takeAwayFolder(outFolder: string, edition: Edition): string {
  return join(outFolder, `${edition}-take-away`);
}

// For a host; from a stick they lead nowhere.
const forHosts = ["404.html", "_headers", ".htaccess", "robots.txt", "sitemap.xml"];

// What a journal is made of. Anything else that lies in its folder is not taken along.
const journalFolders = ["days", "photos", "videos", "seals", "inbox"];
const journalFile = /^(?:[^/]+\.(?:ya?ml|csv)|\.gitattributes)$/;

/**
 * Makes one folder with everything in it, to be carried on a stick: a text to be read first, the
 * site, the exports with the book, in the private edition the journal itself, and a list of all
 * files. It is made beside the present one and swapped in once it is whole.
 * @throws As `buildSite` does.
 */
export async function makeTakeAway(
  journal: Journal,
  analysis: Analysis,
  options: TakeAwayOptions,
): Promise<TakeAway> {
  const { outFolder, edition, note } = options;
  const folder = takeAwayFolder(outFolder, edition);
  const fill = (next: string) => fillTakeAway(journal, analysis, options, next);
  const made = await withLock(lockFile(outFolder), () => swapInSite(folder, fill, { note }), note);
  return { folder, ...made };
}

async function fillTakeAway(
  journal: Journal,
  analysis: Analysis,
  options: TakeAwayOptions,
  next: string,
): Promise<Omit<TakeAway, "folder">> {
  const { edition, paper, book, programVersion, progress } = options;
  const signal = options.signal ? { signal: options.signal } : {};
  const site = join(next, "site");
  const built = await fillSite(
    journal,
    analysis,
    { ...options, progress: (text) => progress(`site: ${text}`) },
    site,
  );
  for (const name of forHosts) await removeFile(join(site, name));
  const { diagnostics } = await writeExports(analysis, journal.diagnostics, {
    folder: join(next, "record"),
    edition,
    paper,
    programVersion,
    ...(book.length > 0
      ? {
          book: {
            sections: book,
            photosFolder: join(journal.folder.absolute, "photos"),
            cacheFolder: resolve(".witness-cache", "photos"),
          },
        }
      : {}),
    progress: (text) => progress(`record: ${text}`),
    ...signal,
  });
  if (edition === "private") await copyJournal(journal, join(next, "journal"), options);
  const edit = edition === "public" ? publicEdition : privateEdition;
  const contents = {
    programVersion,
    hasBook: book.length > 0,
    hasJournal: edition === "private",
  };
  const readFirst = readFirstText(edit(analysis, journal.diagnostics), contents);
  await writeFileWhole(join(next, readFirstFile), readFirst);
  const files = await carriedFiles(
    next,
    [...swapMarkers, ...Object.values(carriedLists)],
    (file, of) => progress(`list of files: ${file} of ${of}`),
    options.signal,
  );
  const digest = await writeCarriedLists(next, files);
  return { files, digest, diagnostics: oncePerPlace([...built.diagnostics, ...diagnostics]) };
}

async function copyJournal(
  { folder }: Journal,
  to: string,
  { progress, signal }: TakeAwayOptions,
): Promise<void> {
  const files = [
    ...filesDirectlyIn(folder).filter(({ path }) => journalFile.test(path)),
    ...journalFolders.flatMap((name) => filesBelow(folder, name)),
  ].filter(({ refused }) => refused === undefined);
  for (const [index, { path, absolute }] of files.entries()) {
    signal?.throwIfAborted();
    progress(`journal: ${index + 1} of ${files.length}: ${path}`);
    await copyFileWhole(absolute, join(to, path));
  }
}

// Site and book may stumble over the same photograph.
function oncePerPlace(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const places = new Map(
    diagnostics.map((each) => [`${each.span.file}:${each.span.line}:${each.span.column}`, each]),
  );
  return [...places.values()];
}

/** What is said when a take-away is made: where it is, how much, and the digest of its list. */
export function takeAwayText({ folder, files, digest }: TakeAway): string {
  const parts = new Map<string, { count: number; bytes: number }>();
  for (const file of files) {
    const part = file.path.includes("/") ? `${file.path.split("/")[0]}/` : file.path;
    const { count, bytes } = parts.get(part) ?? { count: 0, bytes: 0 };
    parts.set(part, { count: count + 1, bytes: bytes + file.bytes });
  }
  return [
    `take-away: ${folder}`,
    ...[...parts].map(
      ([part, { count, bytes }]) =>
        `  ${part.padEnd(16)}${fileSize(bytes).padStart(9)}  ${counted(count, "file")}`,
    ),
    `${carriedLists.digests}: SHA-256 ${digest}`,
  ].join("\n");
}
