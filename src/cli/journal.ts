import { dirname, relative, resolve } from "node:path";
import { type Command, InvalidArgumentError, Option } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import { analyze } from "../compute/analyze.ts";
import { type CalendarDate, isCalendarDate } from "../model/calendar.ts";
import { byPlace, type Diagnostic } from "../model/diagnostic.ts";
import { type JournalFolder, journalFolder } from "../read/files.ts";
import { readBuild, type UnwrittenEntry } from "../read/read-build.ts";
import { dateIn } from "../read/zone-clock.ts";

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

/** A command used in a way it cannot be: exit code 2. */
export class UsageProblem extends Error {
  override readonly name = "UsageProblem";

  constructor(
    message: string,
    readonly help: readonly string[] = [],
  ) {
    super(message);
  }
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
        .choices(["public", "private"])
        .default("public"),
    );
}

/** Reads a date argument. */
export function asDate(text: string): CalendarDate {
  if (isCalendarDate(text)) return text;
  throw new InvalidArgumentError("Write it as in 2026-03-14; the day has to exist.");
}

/**
 * Reads and judges a journal. Checks run even when reading found errors, so that one run says
 * everything; totals are then not compared, because what could not be read is missing from them.
 * @throws UsageProblem when there is no such folder.
 */
export function openJournal(options: JournalOptions, now = new Date()): Journal {
  return openWithEntry(options, undefined, now);
}

/** The same, as if an entry that is not on disk yet had been written already. */
export function openWithEntry(
  { journal, asOf }: JournalOptions,
  draft: UnwrittenEntry | undefined,
  now = new Date(),
): Journal {
  const folder = journalFolder(journal);
  if (!folder) {
    throw new UsageProblem(`there is no folder \`${journal}\``, [
      "name the journal's folder: `--journal content`",
    ]);
  }
  const { build, zone, diagnostics: read } = readBuild(folder, draft);
  if (!build || !zone) return sorted(folder, read);
  const date = asOf ?? build.project.judgedOn ?? dateIn(zone.zone, now);
  const analysis = analyze(build, zone.asOf(date));
  const judged = analysis.diagnostics.filter(
    ({ code }) => read.length === 0 || code !== "total-differs",
  );
  return { ...sorted(folder, [...read, ...judged]), analysis };
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
  const above = relative(workingFolder, dirname(resolve(folder.absolute)));
  if (above === "") return [...diagnostics];
  return diagnostics.map((each) => ({
    ...each,
    span: { ...each.span, file: `${above.split("\\").join("/")}/${each.span.file}` },
  }));
}
