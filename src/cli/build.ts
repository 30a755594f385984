import { Command, InvalidArgumentError } from "commander";
import { journalSummary } from "../present/diagnostics/summary.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import type { Edition } from "../present/record/edition.ts";
import { type BuiltSite, buildSite, outFolderOf, photosToEncode } from "./build-site.ts";
import { interruptSignal } from "./interrupted.ts";
import {
  asSeenFrom,
  counted,
  errorsCode,
  type Journal,
  type JournalOptions,
  openJournal,
  refusePublicOfPrivate,
  withEditionOption,
  withJournalOptions,
} from "./journal.ts";
import { inLeanProcess, wantsLeanProcess } from "./lean-process.ts";
import { type ExitCode, exitCodes, type Terminal } from "./terminal.ts";

interface BuildOptions extends JournalOptions {
  readonly out: string;
  readonly edition: Edition;
  readonly base?: string;
}

/** `witness build`: checks a journal and builds its site. */
export function buildCommand(terminal: Terminal): Command {
  return withEditionOption(withJournalOptions(new Command("build")))
    .description("check the journal and build its site into out/NAME/site")
    .option(
      "--base <address>",
      "where the site will stand, for feeds and shared links (default: `address` in project.yaml)",
      asAddress,
    )
    .action(async (options: BuildOptions) => {
      const journal = openJournal(options);
      if (journal.errors.length > 0 || !journal.analysis) {
        terminal.out(diagnosticsText(asSeenFrom(journal.folder, journal.errors), terminal.paint));
        terminal.err(
          `\n${counted(journal.errors.length, "error")}: nothing was published, the last good site is still in place`,
        );
        terminal.exit(errorsCode(journal.errors));
        return;
      }
      refusePublicOfPrivate(journal.analysis, options.edition);
      if (wantsLeanProcess(await photosToEncode(journal, options.edition))) {
        terminal.exit((await inLeanProcess()) as ExitCode);
        return;
      }
      const built = await buildSite(journal, journal.analysis, {
        outFolder: outFolderOf(journal, options.out),
        edition: options.edition,
        ...(options.base === undefined ? {} : { base: options.base }),
        progress: terminal.progress,
        note: terminal.err,
        signal: interruptSignal(),
      });
      terminal.out(builtText(journal, built));
      if (built.diagnostics.length > 0) {
        terminal.err(
          `\n${diagnosticsText(asSeenFrom(journal.folder, built.diagnostics), terminal.paint)}`,
        );
        terminal.exit(exitCodes.problems);
      }
    });
}

/** Reads the address of a site; it ends in a slash. */
function asAddress(text: string): string {
  if (URL.canParse(text) && /^https?:$/.test(new URL(text).protocol)) {
    return text.replace(/\/*$/, "/");
  }
  throw new InvalidArgumentError("Write it with https://, as in https://journal.example/.");
}

/** What a build says when it is done: what was found, and where the site is. */
export function builtText(journal: Journal, built: BuiltSite): string {
  const summary = journalSummary(
    journal.analysis,
    journal.errors.length,
    journal.findings.length + built.diagnostics.length,
  );
  const byCode = new Map<string, number>();
  for (const { code } of [...journal.findings, ...built.diagnostics]) {
    byCode.set(code, (byCode.get(code) ?? 0) + 1);
  }
  const found = [...byCode].map(([code, count]) => `  ${String(count).padStart(3)}  ${code}`);
  return [
    summary.text,
    ...found,
    `site: ${built.folder} (${counted(built.pages, "page")}, ${counted(built.pictures, "photograph")}, ${built.encoded} encoded now)`,
  ].join("\n");
}
