import { Command } from "commander";
import { type PortionLedger, proposedPortion } from "../compute/ledgers/portion.ts";
import type { Split } from "../model/portion.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { portionJson, portionText } from "../present/portion/portion-text.ts";
import { nearestName } from "../read/nearest-name.ts";
import { proposedSplit } from "../read/proposed-split.ts";
import {
  asSeenFrom,
  counted,
  errorsCode,
  type JournalOptions,
  openWithEntries,
  UsageProblem,
  withJournalOptions,
} from "./journal.ts";
import type { Terminal } from "./terminal.ts";

interface PortionOptions extends JournalOptions {
  readonly whatIf: readonly string[];
  readonly json?: boolean;
}

/** `witness portion`: the major-portion sheet, and what a change would do to it. */
export function portionCommand(terminal: Terminal): Command {
  return withJournalOptions(new Command("portion"))
    .description("add up the major-portion sheet, and try out other divisions without saving them")
    .option(
      "--what-if <division>",
      'try a division, as "F1=kit 0.3, paid 0.2, fabrication 0.5"; may be given again',
      (value: string, before: readonly string[]) => [...before, value],
      [],
    )
    .option("--json", "print the same as one object")
    .action((options: PortionOptions) => {
      const { folder, analysis, errors } = openWithEntries(options, [], new Date(), "names");
      if (!analysis || errors.length > 0) {
        terminal.out(diagnosticsText(asSeenFrom(folder, errors), terminal.paint));
        terminal.err(`\n${counted(errors.length, "error")}: nothing was added up`);
        terminal.exit(errorsCode(errors));
        return;
      }
      const { portion: now } = analysis;
      if (!now) {
        throw new UsageProblem(
          "the journal keeps no major-portion sheet",
          analysis.build.project.basis === "alteration"
            ? ["an alteration has none: it is work on a type-certificated aircraft"]
            : ["put `tasks.csv` and `portion.yaml` into the journal; the README shows both"],
        );
      }
      const proposals = proposalsFor(now, options.whatIf);
      const answer = {
        now,
        ...(proposals.size > 0 ? { after: proposedPortion(now, proposals) } : {}),
        tried: [...proposals.keys()],
      };
      terminal.out(
        options.json ? JSON.stringify(portionJson(answer), undefined, 2) : portionText(answer),
      );
    });
}

function proposalsFor(
  { tasks }: PortionLedger,
  typed: readonly string[],
): ReadonlyMap<string, Split | undefined> {
  const proposals = new Map<string, Split | undefined>();
  for (const text of typed) {
    const read = proposedSplit(text);
    if ("why" in read) throw new UsageProblem(read.why, [read.help]);
    if (!tasks.has(read.task)) {
      const nearest = nearestName(read.task, tasks.keys());
      throw new UsageProblem(`no task is called \`${read.task}\``, [
        nearest ? `did you mean \`${nearest}\`?` : "tasks.csv lists them",
      ]);
    }
    if (proposals.has(read.task)) {
      throw new UsageProblem(`task \`${read.task}\` is tried out twice`, [
        "give each task one division",
      ]);
    }
    proposals.set(read.task, read.split);
  }
  return proposals;
}
