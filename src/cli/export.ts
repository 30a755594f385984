import { join, resolve } from "node:path";
import { Command, InvalidArgumentError, Option } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { noPacketReason } from "../present/alteration/packet.ts";
import {
  type BookSection,
  bookSections,
  chosenSections,
  sectionContents,
} from "../present/book/book-sections.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { fileSize } from "../present/format/file-size.ts";
import type { Edition } from "../present/record/edition.ts";
import { nearestName } from "../read/nearest-name.ts";
import { type WrittenFile, writeExports } from "../write/exports/write-exports.ts";
import { withLock } from "../write/lock.ts";
import { lockFile, outFolderOf } from "./build-site.ts";
import { interruptSignal } from "./interrupted.ts";
import {
  asSeenFrom,
  counted,
  errorsCode,
  type Journal,
  type JournalOptions,
  openJournal,
  refusePublicOfPrivate,
  UsageProblem,
  withEditionOption,
  withJournalOptions,
} from "./journal.ts";
import { makeTakeAway, takeAwayText } from "./take-away.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

interface ExportOptions extends JournalOptions {
  readonly out: string;
  readonly edition: Edition;
  readonly paper: "a4" | "letter";
  readonly packet?: true;
  readonly takeAway?: true;
  /** None: no book. */
  readonly book: readonly BookSection[];
}

/** `witness export`: writes the logbook of hours and the record as PDF, CSV and JSON. */
export function exportCommand(terminal: Terminal, programVersion: string): Command {
  return withEditionOption(withJournalOptions(new Command("export")))
    .description(
      "write the book, the logbook and the record as PDF, CSV and JSON into out/NAME/exports",
    )
    .addOption(
      new Option("--paper <size>", "paper of the printed book and logbook")
        .choices(["a4", "letter"])
        .default("a4"),
    )
    .addOption(
      new Option("--book <sections>", "sections of the book, parted by commas, or `none`")
        .argParser(bookArgument)
        .default(bookSections, "all"),
    )
    .addOption(
      new Option("--packet", "only the draft of the papers of an alteration").conflicts("takeAway"),
    )
    .option(
      "--take-away",
      "one folder for a stick: all of this with the site, in out/NAME/EDITION-take-away",
    )
    .addHelpText("after", sectionsHelp)
    .action(async (options: ExportOptions) => {
      const journal = openJournal(options);
      if (journal.errors.length > 0 || !journal.analysis) {
        terminal.out(diagnosticsText(asSeenFrom(journal.folder, journal.errors), terminal.paint));
        terminal.err(
          `\n${counted(journal.errors.length, "error")}: nothing was exported; the files of the last export are as they were`,
        );
        terminal.exit(errorsCode(journal.errors));
        return;
      }
      const { analysis, diagnostics } = journal;
      refusePublicOfPrivate(analysis, options.edition);
      if (options.packet) refuseWithoutPacket(analysis);
      const outFolder = outFolderOf(journal, options.out);
      const common = {
        edition: options.edition,
        paper: options.paper === "letter" ? ("Letter" as const) : ("A4" as const),
        programVersion,
        progress: terminal.progress,
        signal: interruptSignal(),
      };
      if (options.takeAway) {
        const takeAway = await makeTakeAway(journal, analysis, {
          ...common,
          outFolder,
          book: options.book,
          note: terminal.err,
        });
        terminal.out(takeAwayText(takeAway));
        complainOf(takeAway.diagnostics, journal, terminal);
        return;
      }
      const folder = exportsFolder(outFolder, options.edition);
      const { files, diagnostics: unreadable } = await withLock(
        lockFile(outFolder),
        () =>
          writeExports(analysis, diagnostics, {
            ...common,
            folder,
            ...(options.packet ? { packetOnly: true } : {}),
            ...(options.book.length > 0 && !options.packet
              ? {
                  book: {
                    sections: options.book,
                    photosFolder: join(journal.folder.absolute, "photos"),
                    cacheFolder: resolve(".witness-cache", "photos"),
                  },
                }
              : {}),
          }),
        terminal.err,
      );
      terminal.out(exportedText(folder, files));
      complainOf(unreadable, journal, terminal);
    });
}

// Photographs that could not be shown: the rest is there, and the run ends with a problem.
function complainOf(
  unreadable: readonly Diagnostic[],
  { folder }: Journal,
  terminal: Terminal,
): void {
  if (unreadable.length === 0) return;
  terminal.err(`\n${diagnosticsText(asSeenFrom(folder, unreadable), terminal.paint)}`);
  terminal.exit(exitCodes.problems);
}

const sectionsHelp = [
  "\nSections of the book:",
  ...bookSections.map((section) => `  ${section.padEnd(12)}${sectionContents[section]}`),
].join("\n");

/** Reads `--book`. */
function bookArgument(list: string): readonly BookSection[] {
  if (list.trim() === "none") return [];
  const chosen = chosenSections(list);
  if ("sections" in chosen) return chosen.sections;
  if ("unknown" in chosen) {
    const nearest = nearestName(chosen.unknown, bookSections);
    throw new InvalidArgumentError(
      `There is no section \`${chosen.unknown}\`${nearest === undefined ? "." : `; did you mean \`${nearest}\`?`} Sections: ${bookSections.join(", ")}.`,
    );
  }
  throw new InvalidArgumentError("The index gives pages of the log: name `log` as well.");
}

// The packet is for work on a finished aircraft; asked for by name, its absence has a reason.
function refuseWithoutPacket({ build: { project } }: Analysis): void {
  const reason = noPacketReason(project);
  if (reason === undefined) return;
  throw new UsageProblem(reason, [
    "the packet is for work on a finished type-certificated aircraft",
    "leave `--packet` out: the book and the logbook are the record of an aircraft that is built",
  ]);
}

/** Where an edition's files go. The private ones never stand among those that may be handed on. */
export function exportsFolder(outFolder: string, edition: Edition): string {
  return join(outFolder, edition === "private" ? "private-exports" : "exports");
}

function exportedText(folder: string, files: readonly WrittenFile[]): string {
  const rows = files.map(({ path, bytes, what }) => ({
    name: path.slice(folder.length + 1),
    size: fileSize(bytes),
    what,
  }));
  const widest = (of: (row: (typeof rows)[number]) => string) =>
    Math.max(0, ...rows.map((row) => of(row).length));
  const names = widest(({ name }) => name);
  const sizes = widest(({ size }) => size);
  return [
    `exports: ${folder}`,
    ...rows.map(
      ({ name, size, what }) => `  ${name.padEnd(names)}  ${size.padStart(sizes)}  ${what}`,
    ),
  ].join("\n");
}
