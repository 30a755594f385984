import { join, relative } from "node:path";
import { Command } from "commander";
import { type SealRefusal, sealing } from "../compute/sealing.ts";
import type { CalendarMonth } from "../model/calendar.ts";
import { type SealContent, sealPath, shortSeal } from "../model/seal.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { hoursText } from "../present/format/hours.ts";
import { sealText } from "../present/seals/seal-text.ts";
import { digestOf } from "../read/digest.ts";
import { sealedFiles } from "../read/sealed-files.ts";
import { MachineProblem } from "../write/machine-problem.ts";
import { createFile } from "../write/output.ts";
import {
  asMonth,
  asSeenFrom,
  counted,
  errorsCode,
  type JournalOptions,
  openJournal,
  UsageProblem,
  withJournalOptions,
} from "./journal.ts";
import type { Terminal } from "./terminal.ts";

interface SealOptions extends JournalOptions {
  readonly dryRun?: boolean;
  readonly json?: boolean;
}

/** `witness seal MONTH`: closes a month with hashes and totals. */
export function sealCommand(terminal: Terminal, programVersion: string): Command {
  return withJournalOptions(new Command("seal"))
    .argument("<month>", "the month to be closed, as 2026-03", asMonth)
    .description("close a month: write the hashes of its entries and photographs, and its totals")
    .option("--dry-run", "print the seal and write nothing")
    .option("--json", "print one object: the seal's file, its text and its digest")
    .action(async (month: CalendarMonth, options: SealOptions) => {
      const { folder, analysis, errors } = openJournal(options);
      if (!analysis || errors.length > 0) {
        terminal.out(diagnosticsText(asSeenFrom(folder, errors), terminal.paint));
        terminal.err(`\n${counted(errors.length, "error")}: nothing was sealed`);
        terminal.exit(errorsCode(errors));
        return;
      }
      const undigested = sealing(analysis, month);
      if (isRefusal(undigested)) throw new UsageProblem(undigested.why, undigested.help);
      const files = [...undigested.entries, ...undigested.photos];
      const sealed = sealedFiles(folder, files, (done, total) =>
        terminal.progress(`digests: ${done} of ${total}`),
      );
      const content: SealContent = {
        ...undigested,
        version: programVersion,
        entries: sealed.slice(0, undigested.entries.length),
        photos: sealed.slice(undigested.entries.length),
      };
      const text = sealText(content);
      const file = join(folder.absolute, sealPath(month));
      const seen = relative(process.cwd(), file);
      if (!options.dryRun && !(await createFile(file, text))) {
        throw new MachineProblem("in use", `\`${seen}\` is there already`, [
          "`npm run witness -- check` says what is the matter with it",
        ]);
      }
      const digest = digestOf(text);
      if (options.json) {
        const answer = { file: seen, written: !options.dryRun, digest, text };
        terminal.out(JSON.stringify(answer, undefined, 2));
        return;
      }
      if (options.dryRun) {
        terminal.out(text.trimEnd());
        return;
      }
      terminal.out(`wrote ${seen}`);
      terminal.out(sealedText(content, shortSeal({ digest })));
      const left = omittedIn(analysis.build.omissions, month);
      for (const omission of left) terminal.err(`not sealed: ${omission}`);
    });
}

function isRefusal(answer: object | SealRefusal): answer is SealRefusal {
  return "why" in answer;
}

function sealedText({ month, entries, photos, inMonth, toDate }: SealContent, short: string) {
  return [
    `seal of ${month}: ${short}`,
    `${counted(entries.length, "day")}, ${counted(photos.length, "photograph")}, ${hoursText(inMonth.build)} h of building, ${hoursText(toDate.build)} h to date`,
    "what a seal proves: that nothing in it was changed since, as long as somebody else has its digest",
    "send the twelve digits to somebody, or print the month page; the seal does not prove the date",
  ].join("\n");
}

function omittedIn(
  omissions: readonly { readonly file: string; readonly why: string }[],
  month: CalendarMonth,
): string[] {
  return omissions
    .filter(({ file }) => file.split("/").at(-1)?.startsWith(month))
    .map(({ file, why }) => `${file}: ${why}; published later it would be an entry after the seal`);
}
