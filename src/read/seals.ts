import type { CalendarDate } from "../model/calendar.ts";
import { monthOf } from "../model/calendar.ts";
import { type Seal, type SealedFile, sealFolder, sealPath } from "../model/seal.ts";
import { digestOf, fileDigest } from "./digest.ts";
import type { Faults } from "./faults.ts";
import { type FoundFile, filesBelow, type JournalFolder, readBytes, readText } from "./files.ts";
import { monthOfSeal, readSeal, type TypedSeal } from "./seal-syntax.ts";
import { SourceFile } from "./source-file.ts";

/**
 * How much of the sealed photographs is read: all bytes, or only whether they are there, because
 * somebody waits and nothing is published on the strength of it. Entries are always read.
 */
export type PhotographReading = "bytes" | "names";

/** What stands on disk, to be compared with the seals. */
export interface SealedGround {
  /** Below `days`. */
  readonly dayFiles: readonly FoundFile[];
  /** Below `photos`. */
  readonly photoFiles: readonly FoundFile[];
  readonly photographs: PhotographReading;
}

/** The seals of a journal, and what they have reported already. */
export interface ReadSeals {
  /** Oldest first. */
  readonly typed: readonly TypedSeal[];
  /** Sealed photographs that are gone, by their path below `photos`. */
  readonly missingPhotos: ReadonlySet<string>;
}

/**
 * Reads every seal and compares what it names with what is there: each file's bytes, and the
 * seal before it. Entries written since are for `findAfterSeal`.
 */
export function readSeals(folder: JournalFolder, ground: SealedGround, faults: Faults): ReadSeals {
  const typed: TypedSeal[] = [];
  for (const found of filesBelow(folder, sealFolder)) {
    const read = readSealFile(folder, found, faults);
    if (read) typed.push(read);
  }
  const missingPhotos = new Set<string>();
  const days = byPath(ground.dayFiles);
  const photos = byPath(ground.photoFiles);
  for (const [index, each] of typed.entries()) {
    compareChain(each, typed[index - 1]?.seal, typed, faults);
    for (const entry of each.seal.entries) compareEntry(folder, each, entry, days, faults);
    for (const photo of each.seal.photos) {
      const file = photos.get(photo.path);
      if (!file) {
        missingPhotos.add(photo.path.replace(/^photos\//, ""));
        addMissing(each, photo, "sealed-photo-missing", [], faults);
      } else if (ground.photographs === "bytes") comparePhoto(each, photo, file, faults);
    }
  }
  return { typed, missingPhotos };
}

/** An entry that stands in the journal, drafts aside. */
export interface PresentEntry {
  readonly date: CalendarDate;
  /** As in `Span.file`. */
  readonly file: string;
  /** Where its date was typed. */
  readonly place: Seal["span"];
}

/** Reports the entries that came into a month after it was sealed, or into one before it. */
export function findAfterSeal(
  typed: readonly TypedSeal[],
  entries: readonly PresentEntry[],
  faults: Faults,
): void {
  const newest = typed.at(-1)?.seal.month;
  if (newest === undefined) return;
  const seals = new Map(typed.map(({ seal }) => [seal.month, seal]));
  for (const { date, file, place } of entries) {
    const month = monthOf(date);
    if (month > newest) continue;
    const own = seals.get(month);
    if (own?.entries.some(({ path }) => path.endsWith(`/${date}.md`))) continue;
    const seal = own ?? typed.find(({ seal: each }) => each.month > month)?.seal;
    // Its month may have had a seal that is missing now; the break of the chain says so already.
    if (!seal || (!own && seal.previous && seal.previous.month >= month)) continue;
    const name = sealPath(seal.month);
    faults.add("entry-after-seal", place, {
      message: own
        ? `\`${file}\` is not in \`${name}\`, which closed its month`
        : `\`${file}\` is of a month that had no entries when \`${name}\` was made`,
      help: [
        "tell of it in an entry of today, with the day it was; a closed month takes no new entry",
      ],
    });
  }
}

function readSealFile(
  folder: JournalFolder,
  found: FoundFile,
  faults: Faults,
): TypedSeal | undefined {
  const file = `${folder.name}/${found.path}`;
  const nowhere = new SourceFile(file, "").span(0, 1);
  const month = monthOfSeal(found.path);
  if (month === undefined || found.refused) {
    return faults.add("not-a-seal", nowhere, {
      message: `\`${found.path}\` is not ${found.refused ? "a file of the journal" : "named as a seal is"}`,
      help: [`\`${sealFolder}\` holds seals alone, named as in \`${sealPath("2026-03")}\``],
    });
  }
  const source = new SourceFile(file, readText(found.absolute));
  const typed = readSeal(source, readBytes(found.absolute), faults);
  if (typed && typed.seal.month !== month) {
    return faults.add("seal-chain-broken", typed.seal.span, {
      message: `\`${found.path}\` is the seal of ${typed.seal.month}`,
      help: [`name it \`${sealPath(typed.seal.month)}\` again, or put back the one of ${month}`],
    });
  }
  return typed;
}

function compareChain(
  { seal, previousSpan }: TypedSeal,
  before: Seal | undefined,
  all: readonly TypedSeal[],
  faults: Faults,
): void {
  const { previous } = seal;
  if (previous?.month === before?.month) {
    if (!previous || !before || previous.digest === before.digest) return;
    faults.add("seal-chain-broken", previousSpan, {
      message: `\`${sealPath(before.month)}\` is not the one that \`${sealPath(seal.month)}\` was made after`,
      notes: [
        `\`${sealPath(seal.month)}\` names it with SHA-256 ${previous.digest}`,
        `the file that is there has ${before.digest}`,
      ],
      help: [`put back \`${sealPath(before.month)}\` as it was, from a copy`],
    });
    return;
  }
  const isThere = all.some((each) => each.seal.month === previous?.month);
  const words = previous
    ? isThere
      ? `\`${sealPath(seal.month)}\` was made after \`${sealPath(previous.month)}\`, and does not follow it`
      : `\`${sealPath(previous.month)}\` is missing: \`${sealPath(seal.month)}\` was made after it`
    : `\`${sealPath(seal.month)}\` was made as the first seal, and is not the first`;
  faults.add("seal-chain-broken", previousSpan, {
    message: words,
    notes: before ? [`the seal before it here is \`${sealPath(before.month)}\``] : [],
    help: ["put the seals back as they were written, from a copy"],
  });
}

function compareEntry(
  folder: JournalFolder,
  typed: TypedSeal,
  sealed: SealedFile,
  files: ReadonlyMap<string, FoundFile>,
  faults: Faults,
): void {
  const found = files.get(sealed.path);
  const name = sealPath(typed.seal.month);
  if (!found) {
    const date = sealed.path.split("/").at(-1);
    const elsewhere = [...files.values()].find(({ path }) => path.endsWith(`/${date}`));
    const notes = elsewhere ? [`an entry of that day stands at \`${elsewhere.path}\``] : [];
    addMissing(typed, sealed, "sealed-entry-missing", notes, faults);
    return;
  }
  const bytes = readBytes(found.absolute);
  const digest = digestOf(bytes);
  if (digest === sealed.digest) return;
  const file = `${folder.name}/${found.path}`;
  const text = readText(found.absolute);
  const sealedText = [text.replaceAll("\r\n", "\n"), text.replace(/\r?\n/g, "\r\n")];
  faults.add("sealed-entry-differs", new SourceFile(file, text).span(0, 3), {
    message: `\`${found.path}\` is not as it was sealed in \`${name}\``,
    notes: [
      ...differing(typed, sealed, digest),
      ...(sealedText.some((each) => digestOf(each) === sealed.digest)
        ? ["only the line ends differ: an editor or git turned them into others"]
        : []),
    ],
    help: [
      "put the entry back as it was, from a copy",
      "to correct a sealed day, write `amendments` in an entry of today: both values stay readable",
    ],
  });
}

function comparePhoto(typed: TypedSeal, sealed: SealedFile, file: FoundFile, faults: Faults): void {
  const digest = fileDigest(file.absolute);
  if (digest === sealed.digest) return;
  faults.add("sealed-photo-differs", spanOf(typed, sealed), {
    message: `\`${sealed.path}\` is not as it was sealed in \`${sealPath(typed.seal.month)}\``,
    notes: differing(typed, sealed, digest),
    help: [
      "put the original back, from the camera or a copy; a turned or trimmed one gets a name of its own",
    ],
  });
}

function addMissing(
  typed: TypedSeal,
  sealed: SealedFile,
  code: "sealed-entry-missing" | "sealed-photo-missing",
  notes: readonly string[],
  faults: Faults,
): void {
  faults.add(code, spanOf(typed, sealed), {
    message: `\`${sealed.path}\` was sealed in \`${sealPath(typed.seal.month)}\` and is not there`,
    notes,
    help: ["put it back where it was, from a copy"],
  });
}

function differing(typed: TypedSeal, { path, digest }: SealedFile, now: string): string[] {
  const place = typed.spans.get(path) ?? typed.seal.span;
  return [`${place.file}:${place.line} has SHA-256 ${digest}`, `the file that is there has ${now}`];
}

function spanOf({ seal, spans }: TypedSeal, { path }: SealedFile): Seal["span"] {
  return spans.get(path) ?? seal.span;
}

function byPath(files: readonly FoundFile[]): Map<string, FoundFile> {
  return new Map(files.filter(({ refused }) => !refused).map((file) => [file.path, file]));
}
