import { Command, InvalidArgumentError } from "commander";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import type { Edition } from "../present/record/edition.ts";
import type { PhotographReading } from "../read/seals.ts";
import { builtText } from "./build.ts";
import { buildSite, outFolderOf, siteFolderOf } from "./build-site.ts";
import {
  asSeenFrom,
  type Journal,
  type JournalOptions,
  openWithEntries,
  refusePublicOfPrivate,
  withEditionOption,
  withJournalOptions,
} from "./journal.ts";
import { previewCommand as watchAndServe } from "./preview.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

interface PreviewVerbOptions extends JournalOptions {
  readonly out: string;
  readonly edition: Edition;
  readonly port: number;
}

/** `witness preview`: shows the site on this computer and builds it again after every save. */
export function previewVerb(terminal: Terminal): Command {
  return withEditionOption(withJournalOptions(new Command("preview")))
    .description("show the site on this computer only, and build it again after every save")
    .option("--port <number>", "where to listen", asPort, 4173)
    .action(async (options: PreviewVerbOptions) => {
      const first = openWithEntries(options, [], new Date(), "names");
      // All bytes of the sealed photographs are read until they were found good once.
      let photographs: PhotographReading = "bytes";
      if (first.analysis) refusePublicOfPrivate(first.analysis, options.edition);
      const outFolder = outFolderOf(first, options.out);
      await watchAndServe({
        journalFolder: first.folder.absolute,
        siteFolder: siteFolderOf(outFolder, options.edition),
        port: options.port,
        print: terminal.out,
        rebuild: async (signal) => {
          const journal = openWithEntries(options, [], new Date(), photographs);
          if (journal.errors.length > 0 || !journal.analysis) return refused(journal, terminal);
          refusePublicOfPrivate(journal.analysis, options.edition);
          photographs = "names";
          const built = await buildSite(journal, journal.analysis, {
            outFolder,
            edition: options.edition,
            progress: terminal.progress,
            note: terminal.err,
            signal,
          });
          return { ok: true, text: builtText(journal, built) };
        },
      });
      terminal.exit(exitCodes.clean);
    });
}

function refused({ folder, errors }: Journal, { paint }: Terminal) {
  return { ok: false, text: diagnosticsText(asSeenFrom(folder, errors), paint) };
}

function asPort(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new InvalidArgumentError("Write a number from 1 to 65535, or 0 for any free one.");
}
