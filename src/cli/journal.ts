import { basename, dirname, relative, resolve } from "node:path";
import { type Command, InvalidArgumentError, Option } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import { analyze } from "../compute/analyze.ts";
import { type CalendarDate, type CalendarMonth, isCalendarDate } from "../model/calendar.ts";
import { byPlace, type Diagnostic } from "../model/diagnostic.ts";
import { isSealFault } from "../model/seal.ts";
import { type Edition, editions } from "../present/record/edition.ts";
import { foldersIn, isJournal, type JournalFolder, journalFolder } from "../read/files.ts";
import { nearestName } from "../read/nearest-name.ts";
import { readBuild, type UnwrittenEntry } from "../read/read-build.ts";
import type { PhotographReading } from "../read/seals.ts";
import { dateIn } from "../read/zone-clock.ts";
import { type ExitCode, exitCodes } from "./terminal.ts";
import { UsageProblem } from "./usage-problem.ts";

export { UsageProblem };

/** What every verb that reads a journal takes. */
export interface JournalOptions {
  readonly journal: string;
  readonly asOf?: CalendarDate;
}

/** A journal read and judged. */
export interface Journal {
  readonly folder: JournalFolder;
  /** Absent when reading found errors that leave nothing to judge. */
  readonly analysis?: Analysis;
  /** Everything found, in order of place. */
  readonly diagnostics: readonly Diagnostic[];
  readonly errors: readonly Diagnostic[];
  readonly findings: readonly Diagnostic[];
}

/** Adds `--journal` and `--as-of`. */
export function withJournalOptions(command: Command): Command {
  return command
    .option("--journal <dir>", "the journal's folder", "content")
    .option(
      "--as-of <date>",
      "judge the journal as on this day, YYYY-MM-DD (default: today)",
      asDate,
    );
}

/** Adds `--out` and `--edition`, which every verb that writes files takes. */
export function withEditionOption(command: Command): Command {
  return command
    .option("--out <dir>", "where out/NAME goes, NAME being the journal folder's name", "out")
    .addOption(
      new Option("--edition <edition>", "for whom; the private one holds what is private too")
        .choices([...editions])
        .default("public"),
    );
}

/**
 * Nothing of a private project is made for the public.
 * @throws UsageProblem when that is asked for.
 */
export function refusePublicOfPrivate({ build }: Analysis, edition: Edition): void {
  if (!build.project.private || edition === "private") return;
  throw new UsageProblem("the project is private, so nothing of it is made for the public", [
    "add `--edition private` for the edition that holds everything",
    "or take `private: true` out of project.yaml",
  ]);
}

/** How a run ends that found errors: 4 when a sealed record differs, 1 otherwise. */
export function errorsCode(errors: readonly Diagnostic[]): ExitCode {
  return errors.some(({ code }) => isSealFault(code)) ? exitCodes.sealed : exitCodes.problems;
}

/** Reads a month argument. */
export function asMonth(text: string): CalendarMonth {
  if (/^\d{4}-(0[1-9]|1[0-2])$/.test(text)) return text;
  throw new InvalidArgumentError("Write it as in 2026-03.");
}

/** A number of things in words: `1 error`, `2 errors`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** Reads a date argument. */
export function asDate(text: string): CalendarDate {
  if (isCalendarDate(text)) return text;
  throw new InvalidArgumentError("Write it as in 2026-03-14; the day has to exist.");
}

/**
 * Reads and judges a journal. Checks run even when reading found errors, so that one run says
 * everything; totals are then not compared, because what could not be read is missing from them.
 * @throws UsageProblem when there is no such folder, or it is no journal.
 */
export function openJournal(options: JournalOptions, now = new Date()): Journal {
  return openWithEntries(options, [], now);
}

/**
 * The same, as if entries that are not on disk yet had been written already.
 * @param photographs How much of the sealed photographs is read.
 */
export function openWithEntries(
  { journal, asOf }: JournalOptions,
  drafts: readonly UnwrittenEntry[],
  now = new Date(),
  photographs: PhotographReading = "bytes",
): Journal {
  const folder = journalAt(journal);
  const { build, zone, diagnostics: read } = readBuild(folder, drafts, photographs);
  if (!build || !zone) return sorted(folder, read);
  const date = asOf ?? build.project.judgedOn ?? dateIn(zone.zone, now);
  const analysis = analyze(build, zone.asOf(date));
  const judged = analysis.diagnostics.filter(
    ({ code }) => read.length === 0 || code !== "total-differs",
  );
  return { ...sorted(folder, [...read, ...judged]), analysis };
}

// The journal's folder, or the way to it.
function journalAt(path: string): JournalFolder {
  const folder = journalFolder(path);
  if (folder && isJournal(folder)) return folder;
  const above = dirname(resolve(path));
  const around = [...new Set([process.cwd(), above, resolve(path)])].flatMap((place) =>
    [place, ...foldersIn(place)].filter((each) => isJournal({ absolute: each })),
  );
  const journals = [...new Set(around)].map((each) => relative(process.cwd(), each) || ".");
  const nearest = nearestName(
    basename(path),
    journals.map((each) => basename(each)),
  );
  const meant = journals.find((each) => basename(each) === nearest);
  throw new UsageProblem(
    folder
      ? `\`${path}\` is not a journal: it has no \`project.yaml\``
      : `there is no folder \`${path}\``,
    meant
      ? [`did you mean \`--journal ${meant}\`?`]
      : journals.length > 0
        ? [`journals here: ${journals.map((each) => `\`--journal ${each}\``).join(", ")}`]
        : ["go to the folder that holds the journal, or name the journal: `--journal DIR`"],
  );
}

function sorted(folder: JournalFolder, all: readonly Diagnostic[]): Journal {
  const diagnostics = all.toSorted(byPlace);
  return {
    folder,
    diagnostics,
    errors: diagnostics.filter(({ severity }) => severity === "error"),
    findings: diagnostics.filter(({ severity }) => severity === "finding"),
  };
}

/** The same diagnostics with paths as they can be opened from the working folder. */
export function asSeenFrom(
  folder: JournalFolder,
  diagnostics: readonly Diagnostic[],
  workingFolder = process.cwd(),
): Diagnostic[] {
  const seen = (file: string) => fileSeenFrom(folder, file, workingFolder);
  // Places in notes, such as `content/lots.yaml:2`.
  const place = new RegExp(`(?<![\\w./-])${escaped(folder.name)}/[^\\s:\`]+(?=:\\d)`, "g");
  return diagnostics.map((each) => ({
    ...each,
    span: { ...each.span, file: seen(each.span.file) },
    notes: each.notes.map((note) => note.replace(place, seen)),
  }));
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

/** A file as in `Span.file`, as it can be opened from the working folder. */
export function fileSeenFrom(
  folder: JournalFolder,
  file: string,
  workingFolder = process.cwd(),
): string {
  const above = relative(workingFolder, dirname(resolve(folder.absolute)));
  return above === "" ? file : `${above.split("\\").join("/")}/${file}`;
}
