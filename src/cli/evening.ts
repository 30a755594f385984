import { basename, join } from "node:path";
import { Command } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import { addDays, type CalendarDate } from "../model/calendar.ts";
import { type WorkKind, workKinds } from "../model/session.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { type EveningOffer, eveningOffer, eveningThanks } from "../present/evening/offer.ts";
import { nearestName } from "../read/nearest-name.ts";
import { spokenDuration, spokenTime } from "../read/spoken-time.ts";
import { clockIn, dateIn } from "../read/zone-clock.ts";
import { createEntry } from "../write/entries/create-entry.ts";
import { entryText, type NewEntry, type NewSession } from "../write/entries/entry-text.ts";
import { askEvening } from "./evening-questions.ts";
import {
  asDate,
  asSeenFrom,
  type Journal,
  openJournal,
  openWithEntry,
  UsageProblem,
} from "./journal.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

/** What may be said on the command line in place of being asked. */
export interface EveningOptions {
  readonly journal: string;
  readonly date?: CalendarDate;
  readonly title?: string;
  readonly assembly?: string;
  readonly step?: string;
  readonly who?: string;
  readonly from?: string;
  readonly to?: string;
  readonly hours?: string;
  readonly kind?: string;
  readonly stage?: string;
  readonly text?: string;
  readonly next?: readonly string[];
  readonly again?: boolean;
  readonly input: boolean;
  readonly dryRun?: boolean;
  readonly json?: boolean;
}

/** `witness evening`: writes the entry of a day from a few answers. */
export function eveningCommand(terminal: Terminal, now: () => Date = () => new Date()): Command {
  const collect = (line: string, lines: readonly string[] = []) => [...lines, line];
  return new Command("evening")
    .description("write today's entry from a few questions, or from flags alone")
    .option("--journal <dir>", "the journal's folder", "content")
    .option("--date <date>", "the day it is for (default: today; before 04:00 yesterday)", asDate)
    .option("--title <text>", "a title")
    .option("--assembly <id>", "what was worked on")
    .option("--step <id>", "which step of it")
    .option("--who <ids>", "who worked, with commas between")
    .option("--from <time>", "when work began, as in 18:40 or 640p")
    .option("--to <time>", "when it ended")
    .option("--hours <duration>", "how long, as in 1:15, in place of from and to")
    .option("--kind <kind>", `which kind of work: ${workKinds.join(", ")}`)
    .option("--stage <stage>", "how far the step's joint is now")
    .option("--text <prose>", "what went on")
    .option("--next <line>", "what comes next; may be repeated", collect)
    .option("--again", "the same assembly, step, people and kind as last time")
    .option("--no-input", "ask nothing; fail when something is missing")
    .option("--dry-run", "print the entry and write nothing")
    .option("--json", "print one object: the file and what was written")
    .action(async (options: EveningOptions) => {
      const at = now();
      const journal = openJournal({ journal: options.journal }, at);
      const { analysis } = journal;
      if (!analysis) {
        terminal.out(diagnosticsText(asSeenFrom(journal.folder, journal.errors), terminal.paint));
        terminal.exit(exitCodes.problems);
        return;
      }
      const date = options.date ?? eveningDate(analysis, at);
      const existing = analysis.build.days.find((day) => day.date === date);
      const omitted = analysis.build.omissions.find(({ file }) => basename(file) === `${date}.md`);
      const taken = existing?.file ?? omitted?.file;
      if (taken) {
        throw new UsageProblem(`there is an entry for ${date} already: ${taken}`, [
          "add to it with any editor; `witness check` reads it again",
          "or name another day: `--date YYYY-MM-DD`",
        ]);
      }
      const offer = eveningOffer(analysis, date);
      const ask = terminal.interactive && options.input && !options.json;
      const entry = ask
        ? await askEvening({ analysis, date, offer, options })
        : entryFromFlags(options, analysis, date, offer);
      await finish(
        { ...entry, written: clockIn(analysis.build.project.zone, at) },
        {
          journal,
          options,
          terminal,
          at,
        },
      );
    });
}

// Work after midnight still belongs to the evening before.
function eveningDate({ build }: Analysis, at: Date): CalendarDate {
  const { zone } = build.project;
  const today = dateIn(zone, at);
  return clockIn(zone, at).slice(11) < "04:00" ? addDays(today, -1) : today;
}

interface Finish {
  readonly journal: Journal;
  readonly options: EveningOptions;
  readonly terminal: Terminal;
  readonly at: Date;
}

// Reads the journal as it will be with the entry in it, and writes only what can be believed.
async function finish(entry: NewEntry, { journal, options, terminal, at }: Finish): Promise<void> {
  const { folder } = journal;
  const path = `days/${entry.date.slice(0, 4)}/${entry.date}.md`;
  const text = entryText(entry);
  const after = openWithEntry({ journal: options.journal }, { path, text }, at);
  const file = `${folder.name}/${path}`;
  const errors = after.errors.filter(({ span }) => span.file === file);
  if (errors.length > 0) {
    terminal.err(diagnosticsText(asSeenFrom(folder, errors), terminal.paint));
    terminal.err("\nnothing was written; say it again with the lines above put right");
    terminal.exit(exitCodes.problems);
    return;
  }
  const target = join(folder.absolute, path);
  if (!options.dryRun) await createEntry(target, text);
  if (options.json) {
    terminal.out(JSON.stringify({ file: target, written: !options.dryRun, text }, undefined, 2));
    return;
  }
  if (options.dryRun) terminal.out(text);
  else {
    terminal.out(`wrote ${target}`);
    for (const line of after.analysis ? eveningThanks(after.analysis, entry.date) : []) {
      terminal.out(line);
    }
    terminal.out(`see it: npm run witness -- preview --journal ${options.journal}`);
  }
  const findings = after.findings.filter(({ span }) => span.file === file);
  if (findings.length > 0) {
    terminal.err(`\n${diagnosticsText(asSeenFrom(folder, findings), terminal.paint)}`);
  }
}

function entryFromFlags(
  options: EveningOptions,
  analysis: Analysis,
  date: CalendarDate,
  { last, people }: EveningOffer,
): NewEntry {
  const repeated = options.again ? last : undefined;
  const assembly = options.assembly ?? repeated?.assembly;
  const step = options.step ?? (options.assembly ? undefined : repeated?.step);
  const kind = options.kind ?? repeated?.kind;
  const timed = options.hours !== undefined || options.from !== undefined;
  const missing = [
    assembly === undefined && step === undefined ? "--assembly" : undefined,
    kind === undefined ? "--kind" : undefined,
    timed ? undefined : "--hours, or --from and --to",
  ].filter((flag) => flag !== undefined);
  const wordsOnly = options.text !== undefined && missing.length === 3;
  if (missing.length > 0 && !wordsOnly) {
    throw new UsageProblem(`nobody can be asked here, and this is missing: ${missing.join("; ")}`, [
      "name it on the command line, as in `--assembly wing --kind assemble --hours 1:15`",
      "`--again` takes assembly, step, people and kind from the last entry",
    ]);
  }
  const sessions: NewSession[] = [];
  if (!wordsOnly) {
    sessions.push({
      assembly: assembly ?? analysis.build.steps.get(step ?? "")?.assembly ?? "",
      ...(step === undefined ? {} : { step }),
      who: options.who?.split(",").map((id) => id.trim()) ?? people,
      ...timeFromFlags(options),
      kind: kindNamed(kind ?? ""),
      ...(options.stage === undefined ? {} : { stage: options.stage }),
    });
  }
  return {
    date,
    ...(options.title === undefined ? {} : { title: options.title }),
    sessions,
    next: options.next ?? [],
    prose: options.text ?? "",
  };
}

function timeFromFlags({
  from,
  to,
  hours,
}: EveningOptions): Pick<NewSession, "from" | "to" | "hours"> {
  if (hours !== undefined) {
    const read = spokenDuration(hours);
    if (!read)
      throw new UsageProblem(`\`${hours}\` is not a duration`, ["write it as in `--hours 1:15`"]);
    return { hours: read };
  }
  const begin = spokenTime(from ?? "");
  const end = spokenTime(to ?? "");
  if (!begin || !end) {
    throw new UsageProblem(`\`--from ${from ?? ""} --to ${to ?? ""}\` are not two times of day`, [
      "write them as in `--from 18:40 --to 21:05`, or `--from 640p --to 905p`",
    ]);
  }
  return { from: begin, to: end };
}

function kindNamed(text: string): WorkKind {
  const kind = workKinds.find((each) => each === text);
  if (kind) return kind;
  const nearest = nearestName(text, workKinds);
  throw new UsageProblem(`\`${text}\` is not a kind of work`, [
    nearest ? `did you mean \`--kind ${nearest}\`?` : `write one of: ${workKinds.join(", ")}`,
  ]);
}
