import { existsSync, statSync } from "node:fs";
import { basename, join, relative } from "node:path";
import { Command } from "commander";
import type { Diagnostic } from "../model/diagnostic.ts";
import { diagnosticJson } from "../present/diagnostics/json.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { Faults } from "../read/faults.ts";
import { readText } from "../read/files.ts";
import { type InboxDay, type InboxReading, readInbox } from "../read/inbox-rows.ts";
import { SourceFile } from "../read/source-file.ts";
import { clockIn, dateIn } from "../read/zone-clock.ts";
import { createEntries } from "../write/entries/create-entries.ts";
import { entryText } from "../write/entries/entry-text.ts";
import {
  asSeenFrom,
  counted,
  errorsCode,
  type Journal,
  openWithEntries,
  UsageProblem,
} from "./journal.ts";
import { exitCodes, type Terminal } from "./terminal.ts";

interface InboxOptions {
  readonly journal: string;
  readonly map: string;
  readonly write?: boolean;
  readonly dryRun?: boolean;
  readonly json?: boolean;
}

/** `witness inbox TABLE`: brings the hours of an older log into the journal. */
export function inboxCommand(terminal: Terminal, now: () => Date = () => new Date()): Command {
  return new Command("inbox")
    .argument("<table>", "the older log as CSV, its first line naming the columns")
    .description("bring the hours of an older log into the journal, all of them or none")
    .requiredOption("--map <file>", "what its columns and values mean")
    .option("--journal <dir>", "the journal's folder", "content")
    .option("--write", "write the entries; without it nothing is written")
    .option("--dry-run", "show what would be written, as without --write")
    .option("--json", "print one object: the entries, what is there already, and what is wrong")
    .action(async (table: string, options: InboxOptions) => {
      if (options.write && options.dryRun) {
        throw new UsageProblem("`--write` and `--dry-run` contradict each other", ["keep one"]);
      }
      const at = now();
      const before = openWithEntries({ journal: options.journal }, [], at, "names");
      const { analysis, folder, errors } = before;
      if (!analysis) {
        terminal.out(diagnosticsText(asSeenFrom(folder, errors), terminal.paint));
        terminal.err("\nnothing was written; put right what is above first");
        terminal.exit(errorsCode(errors));
        return;
      }
      const faults = new Faults();
      const files = { table: sourceAt(table), mapping: sourceAt(options.map) };
      const reading = readInbox(files, analysis.build, faults);
      const { zone } = analysis.build.project;
      const entries = reading.days.map((day) => ({
        day,
        path: `days/${day.date.slice(0, 4)}/${day.date}.md`,
        text: entryText({
          date: day.date,
          written: clockIn(zone, at),
          imported: basename(table),
          sessions: day.sessions,
          next: [],
          prose: "",
        }),
      }));
      const judged = judge(before, entries, options.journal, dateIn(zone, at), at, faults.found);
      const writes = options.write === true && judged.refusing.length === 0 && entries.length > 0;
      if (writes) {
        await createEntries(
          join(folder.absolute, "days"),
          entries.map(({ path, text }) => ({ path: path.slice("days/".length), text })),
        );
      }
      if (judged.all.length > 0) terminal.exit(errorsCode(judged.all));
      else terminal.exit(exitCodes.clean);

      if (options.json) {
        const answer = {
          entries: entries.map(({ path, text, day }) => ({
            file: seenFrom(join(folder.absolute, path)),
            lines: day.rows.map(({ line }) => line),
            text,
          })),
          written: writes,
          known: reading.known.map(({ date, row }) => ({ date, line: row.line })),
          twins: reading.twins.map(({ line }) => line),
          unused: reading.unused,
          errors: judged.all.map(diagnosticJson),
        };
        terminal.out(JSON.stringify(answer, undefined, 2));
        return;
      }
      if (judged.refusing.length > 0) {
        terminal.out(diagnosticsText(judged.refusing, terminal.paint));
        terminal.err(`\n${counted(judged.refusing.length, "error")}: nothing was written`);
        return;
      }
      terminal.out(shown(reading, entries, before, writes));
      if (judged.all.length > 0) {
        terminal.err(`\n${diagnosticsText(judged.all, terminal.paint)}`);
        terminal.err("\ntotals that later days vouch for are others now: look, and correct them");
      }
      if (!writes && entries.length > 0) {
        terminal.err("\nnothing was written; `--write` behind the same command writes it");
      }
    });
}

interface Entry {
  readonly day: InboxDay;
  readonly path: string;
  readonly text: string;
}

interface Judged {
  readonly all: readonly Diagnostic[];
  /** Without the totals that earlier hours make differ: those are for the builder to look at. */
  readonly refusing: readonly Diagnostic[];
}

// What is wrong with the table, or with the journal once the entries are in it.
function judge(
  before: Journal,
  entries: readonly Entry[],
  journal: string,
  today: string,
  at: Date,
  faults: readonly Diagnostic[],
): Judged {
  if (faults.length > 0) return { all: faults, refusing: faults };
  const after = openWithEntries({ journal, asOf: today }, entries, at, "names");
  const known = new Set(before.errors.map(sameness));
  const rowsOf = new Map(
    entries.map(({ path, day }) => [`${before.folder.name}/${path}`, day.rows]),
  );
  const fresh = after.errors
    .filter((each) => !known.has(sameness(each)))
    .map((each) => ({ ...each, notes: [...each.notes, ...origin(rowsOf.get(each.span.file))] }));
  const all = asSeenFrom(before.folder, fresh);
  return { all, refusing: all.filter(({ code }) => code !== "total-differs") };
}

function origin(rows: InboxDay["rows"] | undefined): string[] {
  if (!rows) return [];
  return [`from ${rows.map(({ file, line }) => `${file}:${line}`).join(", ")}`];
}

function sameness({ code, span, message }: Diagnostic): string {
  return [code, span.file, span.text, message].join("\n");
}

function shown(
  { known, twins, unused }: InboxReading,
  entries: readonly Entry[],
  { folder }: Journal,
  written: boolean,
): string {
  const sessions = entries.reduce((sum, { day }) => sum + day.sessions.length, 0);
  const lines = (rows: readonly { readonly line: number }[]) =>
    `line${rows.length === 1 ? "" : "s"} ${inRuns(rows.map(({ line }) => line))}`;
  return [
    ...entries.flatMap(({ path, text, day }) => [
      `${written ? "wrote " : ""}${seenFrom(join(folder.absolute, path))}, from ${lines(day.rows)}`,
      ...(written ? [] : [text.trimEnd().replace(/^/gm, "  "), ""]),
    ]),
    `${counted(entries.length, "day")}, ${counted(sessions, "session")} ${written ? "written" : "to be written"}`,
    ...(known.length > 0 ? [`in the journal already: ${lines(known.map(({ row }) => row))}`] : []),
    ...(twins.length > 0 ? [`taken once, because they say the same: ${lines(twins)}`] : []),
    ...(unused.length > 0 ? [`columns not used: ${unused.join(", ")}`] : []),
  ].join("\n");
}

// `2, 3, 7 to 40`: what follows on itself for long is not told one by one.
function inRuns(lines: readonly number[]): string {
  const runs: number[][] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    if (last?.at(-1) === line - 1) last.push(line);
    else runs.push([line]);
  }
  return runs
    .map((run) => (run.length > 3 ? `${run[0]} to ${run.at(-1)}` : run.join(", ")))
    .join(", ");
}

function sourceAt(path: string): SourceFile {
  if (!existsSync(path) || !statSync(path).isFile()) {
    throw new UsageProblem(`there is no file \`${path}\``, ["name it as seen from this folder"]);
  }
  return new SourceFile(path, readText(path));
}

function seenFrom(path: string): string {
  return relative(process.cwd(), path) || ".";
}
