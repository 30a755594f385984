import { join } from "node:path";
import { Command, Option } from "commander";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { fileSize } from "../present/format/file-size.ts";
import type { Edition } from "../present/record/edition.ts";
import { type WrittenFile, writeExports } from "../write/exports/write-exports.ts";
import { withLock } from "../write/lock.ts";
import { lockFile, outFolderOf } from "./build-site.ts";
import {
  asSeenFrom,
  counted,
  errorsCode,
  type JournalOptions,
  openJournal,
  withEditionOption,
  withJournalOptions,
} from "./journal.ts";
import type { Terminal } from "./terminal.ts";

interface ExportOptions extends JournalOptions {
  readonly out: string;
  readonly edition: Edition;
  readonly paper: "a4" | "letter";
}

/** `witness export`: writes the logbook of hours and the record as PDF, CSV and JSON. */
export function exportCommand(terminal: Terminal, programVersion: string): Command {
  return withEditionOption(withJournalOptions(new Command("export")))
    .description("write the logbook and the record as PDF, CSV and JSON into out/NAME/exports")
    .addOption(
      new Option("--paper <size>", "paper of the printed logbook")
        .choices(["a4", "letter"])
        .default("a4"),
    )
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
      const outFolder = outFolderOf(journal, options.out);
      const folder = exportsFolder(outFolder, options.edition);
      const { files } = await withLock(
        lockFile(outFolder),
        () =>
          writeExports(analysis, diagnostics, {
            folder,
            edition: options.edition,
            paper: options.paper === "letter" ? "Letter" : "A4",
            programVersion,
            progress: terminal.progress,
          }),
        terminal.err,
      );
      terminal.out(exportedText(folder, files));
    });
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
