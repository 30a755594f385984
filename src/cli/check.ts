import { Command } from "commander";
import { ciAnnotation } from "../present/diagnostics/ci-annotation.ts";
import { diagnosticJson } from "../present/diagnostics/json.ts";
import { journalSummary } from "../present/diagnostics/summary.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import {
  asSeenFrom,
  errorsCode,
  type JournalOptions,
  openJournal,
  withJournalOptions,
} from "./journal.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

interface CheckOptions extends JournalOptions {
  readonly json?: boolean;
  readonly strict?: boolean;
  readonly annotate?: boolean;
}

/** `witness check`: says everything that is wrong with a journal or wants attention. */
export function checkCommand(terminal: Terminal): Command {
  return withJournalOptions(new Command("check"))
    .description("read the journal and say what is wrong or wants attention")
    .option("--strict", "exit with 1 on findings too, not on errors only")
    .option("--json", "print one object: errors, findings and totals")
    .option("--annotate", "print one line per problem in the form that a CI run turns into notes")
    .action((options: CheckOptions) => {
      const journal = openJournal(options);
      const errors = asSeenFrom(journal.folder, journal.errors);
      const findings = asSeenFrom(journal.folder, journal.findings);
      const summary = journalSummary(journal.analysis, errors.length, findings.length);
      if (options.json) {
        const answer = {
          errors: errors.map(diagnosticJson),
          findings: findings.map(diagnosticJson),
          totals: summary.totals,
        };
        terminal.out(JSON.stringify(answer, undefined, 2));
      } else if (options.annotate) {
        for (const each of [...errors, ...findings]) terminal.out(ciAnnotation(each));
      } else {
        const all = asSeenFrom(journal.folder, journal.diagnostics);
        if (all.length > 0) terminal.out(`${diagnosticsText(all, terminal.paint)}\n`);
        terminal.out(summary.text);
      }
      if (errors.length > 0) terminal.exit(errorsCode(errors));
      else if (options.strict && findings.length > 0) terminal.exit(exitCodes.problems);
      else terminal.exit(exitCodes.clean);
    });
}
