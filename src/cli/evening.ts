import { basename, join, relative } from "node:path";
import { Command, InvalidArgumentError } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import { addDays, type CalendarDate } from "../model/calendar.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { workKinds } from "../model/session.ts";
import { diagnosticJson } from "../present/diagnostics/json.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { type EveningOffer, eveningOffer, eveningThanks } from "../present/evening/offer.ts";
import { spokenDate } from "../read/spoken-time.ts";
import { clockIn, dateIn } from "../read/zone-clock.ts";
import { createEntry } from "../write/entries/create-entry.ts";
import { entryText, type NewEntry } from "../write/entries/entry-text.ts";
import {
  missingFlags,
  type SessionFlags,
  sessionFromFlags,
  speakOfSession,
  wholeSession,
  withLoneBuilder,
} from "./evening-flags.ts";
import { askEvening } from "./evening-questions.ts";
import { asSeenFrom, errorsCode, type Journal, openWithEntries, UsageProblem } from "./journal.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

/** What may be said on the command line in place of being asked. */
export interface EveningOptions extends SessionFlags {
  readonly journal: string;
  readonly date?: string;
  readonly title?: string;
  readonly text?: string;
  readonly next?: readonly string[];
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
    .option(
      "--date <date>",
      "the day it is for, as 2026-03-14 or yesterday (default: today; before 04:00 yesterday)",
      asDay,
    )
    .option("--title <text>", "a title")
    .option("--assembly <id>", "what was worked on; not needed beside --step")
    .option("--step <id>", "which step of it")
    .option("--who <ids>", "who worked, with commas between; a lone builder need not be named")
    .option("--from <time>", "when work began, as in 18:40 or 640p")
    .option("--to <time>", "when it ended; before --from means past midnight")
    .option("--hours <duration>", "how long, as in 1:15 or 90min, in place of from and to")
    .option("--kind <kind>", `which kind of work: ${workKinds.join(", ")}`)
    .option("--stage <stage>", "how far the step's joint is now")
    .option("--text <prose>", "what went on")
    .option("--next <line>", "what comes next; may be repeated", collect)
    .option("--again", "the same assembly, step, people and kind as last time")
    .option("--no-input", "ask nothing; fail when something is missing")
    .option("--dry-run", "print the entry and write nothing")
    .option("--json", "print one object: the file, its text, and what the checks say of it")
    .action(async (options: EveningOptions) => {
      const at = now();
      const before = openWithEntries({ journal: options.journal }, [], at, "names");
      const { analysis } = before;
      if (!analysis) {
        terminal.out(diagnosticsText(asSeenFrom(before.folder, before.errors), terminal.paint));
        terminal.err("\nnothing was written; put right what is above first");
        terminal.exit(exitCodes.problems);
        return;
      }
      const { zone } = analysis.build.project;
      const date = eveningDate(options.date, zone, at);
      refuseFinished(analysis, dateIn(zone, at), options);
      refuseTaken(before, analysis, date);
      const offer = eveningOffer(analysis, date);
      const entry = await entryFrom(options, analysis, date, offer, terminal);
      const written = { ...entry, written: clockIn(zone, at) };
      await finish(written, { before, options, terminal, at, today: dateIn(zone, at) });
    });
}

/** Reads a day argument; what `yesterday` is waits for the journal's zone. */
function asDay(text: string): string {
  if (spokenDate(text, "2000-01-01")) return text;
  throw new InvalidArgumentError(
    "Write it as in 2026-03-14, or `yesterday`; the day has to exist.",
  );
}

// Work after midnight still belongs to the evening before.
function eveningDate(named: string | undefined, zone: string, at: Date): CalendarDate {
  const today = dateIn(zone, at);
  const evening = clockIn(zone, at).slice(11) < "04:00" ? addDays(today, -1) : today;
  return named === undefined ? evening : (spokenDate(named, today) ?? evening);
}

// In a journal that is judged on a fixed day, an entry written now would be in the future.
function refuseFinished({ build }: Analysis, today: CalendarDate, options: EveningOptions): void {
  const { judgedOn } = build.project;
  if (judgedOn === undefined || judgedOn >= today || options.dryRun) return;
  throw new UsageProblem(`this journal is judged on ${judgedOn}, as a finished one is`, [
    "take `judged-on` out of project.yaml to go on with it",
    "`--dry-run` shows an entry without writing it",
  ]);
}

function refuseTaken({ folder }: Journal, { build }: Analysis, date: CalendarDate): void {
  const day = build.days.find((each) => each.date === date);
  const omitted = build.omissions.find(({ file }) => basename(file) === `${date}.md`);
  const taken = day?.file ?? omitted?.file;
  if (taken === undefined) return;
  const file = seenFrom(join(folder.absolute, "..", taken));
  throw new UsageProblem(`there is an entry for ${date} already: ${file}`, [
    "add to it with any editor; `npm run witness -- check` reads it again",
    "or name another day: `--date YYYY-MM-DD`",
  ]);
}

async function entryFrom(
  options: EveningOptions,
  analysis: Analysis,
  date: CalendarDate,
  offer: EveningOffer,
  terminal: Terminal,
): Promise<NewEntry> {
  const spoken = sessionFromFlags(options, analysis, offer);
  const complete = withLoneBuilder(spoken, analysis);
  const missing = missingFlags(complete, options);
  const words = options.text !== undefined && options.text.trim() !== "";
  const wordsOnly = words && !speakOfSession(options);
  const mayAsk = terminal.interactive && options.input && !options.json;
  if (missing.length > 0 && mayAsk) {
    return askEvening({ analysis, date, offer, options, spoken });
  }
  if (missing.length > 0 && !wordsOnly) {
    throw new UsageProblem(`nobody can be asked here, and this is missing: ${missing.join(", ")}`, [
      "name it on the command line, as in `--assembly wing --kind assemble --hours 1:15`",
      ...namesToChooseFrom(missing, analysis),
      "`--again` takes assembly, step, people and kind from the last session",
      "`--text` alone makes an entry of words",
    ]);
  }
  const session = wordsOnly ? undefined : wholeSession(complete);
  return {
    date,
    ...(options.title === undefined ? {} : { title: options.title }),
    sessions: session ? [session] : [],
    next: options.next ?? [],
    prose: options.text ?? "",
  };
}

function namesToChooseFrom(missing: readonly string[], { build }: Analysis): string[] {
  const names = [
    ["--assembly", "assemblies", [...build.assemblies.keys()]],
    ["--who", "people", [...build.people.keys()]],
    ["--kind", "kinds", workKinds],
  ] as const;
  return names
    .filter(([flag]) => missing.includes(flag))
    .map(([, what, ids]) => `${what}: ${ids.join(", ")}`);
}

interface Finish {
  /** The journal without the entry. */
  readonly before: Journal;
  readonly options: EveningOptions;
  readonly terminal: Terminal;
  readonly at: Date;
  readonly today: CalendarDate;
}

// Reads the journal as it will be with the entry in it, and writes only what can be believed.
async function finish(entry: NewEntry, given: Finish): Promise<void> {
  const { before, options, terminal, at, today } = given;
  const { folder } = before;
  const path = `days/${entry.date.slice(0, 4)}/${entry.date}.md`;
  const text = entryText(entry);
  const judged = { journal: options.journal, asOf: today };
  const after = openWithEntries(judged, [{ path, text }], at, "names");
  const known = new Set(before.errors.map(sameness));
  const fresh = after.errors.filter((each) => !known.has(sameness(each)));
  // More hours on an earlier day change a total that a later day vouches for. The entry is not
  // at fault, and the builder has to look at that sum.
  const refusing = fresh.filter(({ code }) => code !== "total-differs");
  const file = join(folder.absolute, path);
  const findings = after.findings.filter(({ span }) => span.file === `${folder.name}/${path}`);
  const errors = asSeenFrom(folder, fresh);
  const writes = refusing.length === 0 && !options.dryRun;
  if (writes) await createEntry(file, text);
  if (fresh.length > 0) terminal.exit(errorsCode(fresh));

  const { out, err, paint } = terminal;
  if (options.json) {
    const found = asSeenFrom(folder, findings).map(diagnosticJson);
    const answer = {
      file: seenFrom(file),
      written: writes,
      text,
      errors: errors.map(diagnosticJson),
      findings: found,
    };
    out(JSON.stringify(answer, undefined, 2));
    return;
  }
  if (refusing.length > 0) {
    err(diagnosticsText(errors, paint));
    err("\nnothing was written; this is the entry, to be put right and said again:\n");
    err(text.trimEnd());
    return;
  }
  if (options.dryRun) out(text.trimEnd());
  else {
    out(`wrote ${seenFrom(file)}`);
    for (const line of after.analysis ? eveningThanks(after.analysis, entry.date) : []) out(line);
    const journal = options.journal === "content" ? "" : ` --journal ${options.journal}`;
    out(`see it: npm run witness -- preview${journal}`);
  }
  const wanting = asSeenFrom(folder, [...fresh, ...findings]);
  if (wanting.length > 0) err(`\n${diagnosticsText(wanting, paint)}`);
  if (fresh.length > 0) {
    err("\na total that a later day vouches for is another one now: look at both, and correct it");
  }
}

// Lines move when an entry grows; what is the same fault stays in the same words.
function sameness({ code, span, message }: Diagnostic): string {
  return [code, span.file, span.text, message].join("\n");
}

function seenFrom(path: string): string {
  return relative(process.cwd(), path) || ".";
}
