import type { Build } from "../../model/build.ts";
import type { Help, HelpEntry, HelpKind } from "../../model/help.ts";
import type { HoursLine } from "../analysis.ts";

/** A row of help with the hours that sessions have of it. */
export interface HelpState {
  readonly entry: HelpEntry;
  /** Of that person in that role, within the days of the row. */
  readonly lines: readonly HoursLine[];
  readonly minutes: number;
}

/** Help that sessions have and no row tells of: one person, one role, one day. */
export interface UnlistedHelp {
  readonly person: string;
  readonly kind: HelpKind;
  readonly date: string;
  readonly lines: readonly HoursLine[];
  readonly minutes: number;
}

/** Everything computed from the register of help. */
export interface HelpLedger {
  readonly register: Help;
  /** By first day. */
  readonly rows: readonly HelpState[];
  /** By day. */
  readonly unlisted: readonly UnlistedHelp[];
}

/**
 * Lays the register of help beside the sessions.
 * @param lines Every line of the hours.
 * @returns `undefined` when the journal keeps no register of help.
 */
export function helpLedger(
  { help }: Pick<Build, "help">,
  lines: readonly HoursLine[],
): HelpLedger | undefined {
  return help && { register: help, ...helpReceived(help.entries, lines) };
}

/**
 * All help that rows or sessions tell of: the rows with the hours that sessions have of them,
 * and what no row covers. With no rows it is the help of the sessions alone.
 * @param lines Every line of the hours.
 */
export function helpReceived(
  entries: readonly HelpEntry[],
  lines: readonly HoursLine[],
): Pick<HelpLedger, "rows" | "unlisted"> {
  const listed = new Set<HoursLine>();
  const rows = entries.map((entry): HelpState => {
    const own = lines.filter((line) => covers(entry, line));
    for (const line of own) listed.add(line);
    return { entry, lines: own, minutes: minutesOf(own) };
  });
  const unlisted = new Map<string, { kind: HelpKind; lines: HoursLine[] }>();
  for (const line of lines) {
    const kind = helpKindOf(line);
    if (!kind || listed.has(line)) continue;
    const key = `${line.date} ${line.person} ${kind}`;
    const known = unlisted.get(key);
    if (known) known.lines.push(line);
    else unlisted.set(key, { kind, lines: [line] });
  }
  return {
    rows,
    unlisted: [...unlisted.values()].flatMap(({ kind, lines: own }): UnlistedHelp[] => {
      const [first] = own;
      if (!first) return [];
      return [
        { person: first.person, kind, date: first.date, lines: own, minutes: minutesOf(own) },
      ];
    }),
  };
}

function covers({ person, kind, from, to }: HelpEntry, line: HoursLine): boolean {
  return line.person === person && line.role === kind && line.date >= from && line.date <= to;
}

function helpKindOf({ role }: HoursLine): HelpKind | undefined {
  return role === "paid help" || role === "unpaid help" || role === "instruction"
    ? role
    : undefined;
}

function minutesOf(lines: readonly HoursLine[]): number {
  return lines.reduce((sum, { minutes }) => sum + minutes, 0);
}
