import { Option } from "commander";
import type { Analysis } from "../compute/analysis.ts";
import { type HoursSelection, selectedHours } from "../compute/hours-selection.ts";
import type { CalendarMonth } from "../model/calendar.ts";
import { type Role, roles } from "../model/person.ts";
import { type WorkKind, workKinds } from "../model/session.ts";
import { diagnosticsText } from "../present/diagnostics/terminal-text.ts";
import { hoursSumJson, hoursSumText } from "../present/hours/hours-sum.ts";
import { sessionAmendments } from "../present/tables/hours.ts";
import { nearestName } from "../read/nearest-name.ts";
import {
  asDate,
  asMonth,
  asSeenFrom,
  counted,
  errorsCode,
  fileSeenFrom,
  type JournalOptions,
  openWithEntries,
  UsageProblem,
} from "./journal.ts";
import type { Terminal } from "./terminal.ts";

/** What may be said beside `witness explain hours`. */
export interface HoursOptions extends JournalOptions {
  readonly assembly?: string;
  readonly step?: string;
  readonly person?: string;
  readonly role?: Role;
  readonly kind?: WorkKind;
  readonly month?: CalendarMonth;
  readonly json?: boolean;
}

/** The options of `witness explain hours`; each of them means nothing to another explanation. */
export const hoursOptions: readonly Option[] = [
  new Option("--journal <dir>", "hours: the journal's folder").default(undefined, "content"),
  new Option("--as-of <date>", "hours: judge the journal as on this day").argParser(asDate),
  new Option("--assembly <id>", "hours: booked to this assembly and everything below it"),
  new Option("--step <id>", "hours: booked to this step"),
  new Option("--person <id>", "hours: of this person"),
  new Option("--role <role>", "hours: in this role").choices([...roles]),
  new Option("--kind <kind>", "hours: of this kind of work").choices([...workKinds]),
  new Option("--month <month>", "hours: in this month, as 2026-03").argParser(asMonth),
];

/** Prints a sum of hours line by line. */
export function explainHours(options: HoursOptions, terminal: Terminal): void {
  const { journal, asOf, json, ...selection } = options;
  const opened = openWithEntries(
    { journal: journal ?? "content", ...(asOf === undefined ? {} : { asOf }) },
    [],
    new Date(),
    "names",
  );
  const { folder, analysis, errors } = opened;
  if (!analysis) {
    terminal.out(diagnosticsText(asSeenFrom(folder, errors), terminal.paint));
    terminal.exit(errorsCode(errors));
    return;
  }
  refuseUnknown(analysis, selection);
  const sum = {
    ...selectedHours(analysis, selection),
    selection,
    amendments: sessionAmendments(analysis.build.days),
    seen: (file: string) => fileSeenFrom(folder, file),
  };
  terminal.out(json ? JSON.stringify(hoursSumJson(sum), undefined, 2) : hoursSumText(sum));
  if (errors.length > 0) {
    terminal.err(
      `\n${counted(errors.length, "error")} in the journal: what could not be read is not in the sum; \`npm run witness -- check\` says more`,
    );
    terminal.exit(errorsCode(errors));
  }
}

function refuseUnknown({ build }: Analysis, { assembly, step, person }: HoursSelection): void {
  const named = [
    ["--assembly", "assembly", assembly, build.assemblies],
    ["--step", "step", step, build.steps],
    ["--person", "person", person, build.people],
  ] as const;
  for (const [flag, what, name, known] of named) {
    if (name === undefined || known.has(name)) continue;
    const nearest = nearestName(name, known.keys());
    throw new UsageProblem(`no ${what} is called \`${name}\``, [
      nearest
        ? `did you mean \`${flag} ${nearest}\`?`
        : `known here: ${[...known.keys()].join(", ")}`,
    ]);
  }
}
