import type { Build } from "../model/build.ts";
import { type CalendarDate, isCalendarDate } from "../model/calendar.ts";
import type { Day } from "../model/day.ts";
import type { Span } from "../model/diagnostic.ts";
import { type Session, type WorkKind, workKinds } from "../model/session.ts";
import { type CsvCell, type CsvTable, csvRows } from "./csv-rows.ts";
import type { Faults } from "./faults.ts";
import {
  datePatternOf,
  type InboxColumn,
  type InboxMapping,
  inboxColumns,
  mappingShape,
} from "./inbox-mapping.ts";
import { nearestName } from "./nearest-name.ts";
import type { SourceFile } from "./source-file.ts";
import { spokenDuration, spokenTime } from "./spoken-time.ts";
import { yamlTree } from "./yaml-tree.ts";

/** A session of an older log, in the words of the journal. */
export interface InboxSession {
  readonly assembly: string;
  readonly step?: string;
  readonly who: readonly string[];
  /** `HH:MM`; both or neither. */
  readonly from?: string;
  readonly to?: string;
  /** `H:MM`. */
  readonly hours?: string;
  readonly kind: WorkKind;
  readonly note?: string;
}

/** The rows of one date. */
export interface InboxDay {
  readonly date: CalendarDate;
  readonly sessions: readonly InboxSession[];
  /** Where the rows stand, in the order of the sessions. */
  readonly rows: readonly Span[];
}

/** What an older log comes to. With faults found, it is not to be written. */
export interface InboxReading {
  /** By date; days that the journal has already are left out. */
  readonly days: readonly InboxDay[];
  /** Rows that the journal has already, word for word. */
  readonly known: readonly { readonly date: CalendarDate; readonly row: Span }[];
  /** Rows that say the same as another and were taken once. */
  readonly twins: readonly Span[];
  /** Columns that the mapping does not name. */
  readonly unused: readonly string[];
}

/** An older log and how to read it. */
export interface InboxFiles {
  readonly table: SourceFile;
  readonly mapping: SourceFile;
}

/**
 * Reads hours of an older log. Every row is understood or reported, with its line and column;
 * nothing is guessed but that a cell may hold a title as well as an id.
 */
export function readInbox(files: InboxFiles, build: Build, faults: Faults): InboxReading {
  const nothing = { days: [], known: [], twins: [], unused: [] };
  const { mapping: source } = files;
  const tree = yamlTree({ source, start: 0, end: source.text.length }, faults);
  const mapping = tree && mappingShape(tree, faults);
  const table =
    mapping &&
    csvRows(files.table, mapping.separator?.text ?? ",", faults, [
      "or say in the mapping which `separator` parts the cells",
    ]);
  const columns = table && mapping && columnsOf(table, mapping, faults);
  if (!table || !mapping || !columns) return nothing;

  const reader = new RowReader(build, mapping, columns, faults);
  const rows: ReadRow[] = [];
  for (const { cells, span } of table.rows) {
    const read = reader.read(cells, span);
    if (read) rows.push(read);
  }
  const { kept, twins } = withoutTwins(rows, mapping, faults);
  const used = new Set(columns.values());
  return {
    ...sortedOut(kept, build, faults),
    twins,
    unused: table.heads.filter((_, index) => !used.has(index)).map(({ text }) => text),
  };
}

interface ReadRow {
  readonly date: CalendarDate;
  readonly session: InboxSession;
  readonly span: Span;
  readonly dateSpan: Span;
}

type Columns = ReadonlyMap<InboxColumn, number>;

// Which column holds what; a name that the first line does not have is a fault.
function columnsOf(table: CsvTable, mapping: InboxMapping, faults: Faults): Columns | undefined {
  const heads = table.heads.map(({ text }) => text);
  const columns = new Map<InboxColumn, number>();
  let complete = true;
  for (const column of inboxColumns) {
    const named = mapping.columns[column];
    if (!named) continue;
    const at = heads.indexOf(named.text);
    if (at >= 0) {
      columns.set(column, at);
      continue;
    }
    complete = false;
    const nearest = nearestName(named.text, heads);
    faults.add("unknown-name", named.span, {
      message: `the table has no column called \`${named.text}\``,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      notes: [`its columns are: ${heads.map((head) => `\`${head}\``).join(", ")}`],
      help: ["write the name as in its first line, or say which `separator` parts the cells"],
    });
  }
  const has = (column: InboxColumn) => columns.has(column);
  const always = mapping.always;
  const wanting = [
    ...(has("assembly") || has("step") || always?.assembly || always?.step ? [] : ["assembly"]),
    ...(has("who") || always?.who ? [] : ["who"]),
    ...(has("kind") || always?.kind ? [] : ["kind"]),
    ...(has("hours") || (has("from") && has("to")) ? [] : ["hours"]),
  ];
  if (!complete) return undefined;
  for (const column of wanting) {
    faults.add("missing-key", mapping.columns.span, {
      message: `nothing says which column holds \`${column}\``,
      help: [
        column === "hours"
          ? "name it under `columns`: `hours: Time`, or `from: Start` and `to: End`"
          : `name it under \`columns\`, or write what is so in every row under \`always\``,
      ],
    });
  }
  return wanting.length > 0 ? undefined : columns;
}

/** Reads the rows of one table. */
class RowReader {
  readonly #date;
  readonly #titles;

  constructor(
    readonly build: Build,
    readonly mapping: InboxMapping,
    readonly columns: Columns,
    readonly faults: Faults,
  ) {
    this.#date = mapping.date ?? datePatternOf("YYYY-MM-DD");
    this.#titles = {
      assembly: idsByWords(build.assemblies.values(), ({ title }) => [title]),
      step: idsByWords(build.steps.values(), ({ title }) => [title]),
      who: idsByWords(build.people.values(), ({ name, initials }) => [name, initials]),
      kind: idsByWords(
        workKinds.map((id) => ({ id })),
        () => [],
      ),
    };
  }

  /** @returns `undefined` when a fault was added. */
  read(cells: readonly CsvCell[], span: Span): ReadRow | undefined {
    const { build, mapping } = this;
    const before = this.faults.found.length;
    const cell = (column: InboxColumn) => {
      const at = this.columns.get(column);
      const found = at === undefined ? undefined : cells[at];
      return found && found.text !== "" ? found : undefined;
    };
    const dateCell = cell("date");
    const date = this.#readDate(dateCell, span);
    const stepCell = cell("step");
    const step = stepCell ? this.#named("step", stepCell) : mapping.always?.step?.text;
    const assemblyCell = cell("assembly");
    const assembly = assemblyCell
      ? this.#named("assembly", assemblyCell)
      : (mapping.always?.assembly?.text ??
        (step === undefined ? undefined : build.steps.get(step)?.assembly));
    if (assembly === undefined && !assemblyCell && !stepCell) this.#empty("assembly", span);
    const who = this.#people(cell("who"), span);
    const kindCell = cell("kind");
    const kindText = kindCell ? this.#named("kind", kindCell) : mapping.always?.kind?.text;
    const kind = workKinds.find((each) => each === kindText);
    if (!kind && (!kindCell || kindText !== undefined)) this.#empty("kind", span);
    const time = this.#time(cell("from"), cell("to"), cell("hours"), span);
    const note = cell("note")?.text.replace(/\s+/g, " ");
    if (this.faults.found.length > before) return undefined;
    if (!date || assembly === undefined || !kind || !time || !dateCell) return undefined;
    const session = {
      assembly,
      ...(step === undefined ? {} : { step }),
      who,
      ...time,
      kind,
      ...(note === undefined ? {} : { note }),
    };
    return { date, session, span, dateSpan: dateCell.span };
  }

  #empty(column: string, span: Span): undefined {
    return this.faults.add("missing-key", span, {
      message: `the row does not say \`${column}\``,
      help: [
        `fill the cell, or write what is so in every such row under \`always\` in the mapping`,
      ],
    });
  }

  #readDate(cell: CsvCell | undefined, row: Span): CalendarDate | undefined {
    if (!cell) return this.#empty("date", row);
    const date = this.#date?.read(cell.text);
    if (date !== undefined && isCalendarDate(date)) return date;
    return this.faults.add("not-a-date", cell.span, {
      message: `\`${cell.text}\` is not a date as in \`${this.#date?.typed}\``,
      help: [
        date === undefined
          ? "say under `date` in the mapping how dates are written, as in `DD.MM.YYYY`"
          : "there is no such day; correct it in the table",
      ],
    });
  }

  #people(cell: CsvCell | undefined, row: Span): readonly string[] {
    const { always, values } = this.mapping;
    if (!cell) {
      const names = always?.who?.map(({ text }) => text) ?? [];
      if (names.length === 0) this.#empty("who", row);
      return names;
    }
    const whole = values?.who?.get(cell.text);
    if (whole) return whole.map(({ text }) => text);
    const names = cell.text.split(/\s*(?:[,;+&/]|\band\b)\s*/).filter((name) => name !== "");
    return names.flatMap((name) => {
      const meant = values?.who?.get(name);
      return meant
        ? meant.map(({ text }) => text)
        : (this.#named("who", { ...cell, text: name }) ?? []);
    });
  }

  // What a cell means: as the mapping has it, otherwise an id, otherwise a title.
  #named(column: "assembly" | "step" | "who" | "kind", cell: CsvCell): string | undefined {
    const { values } = this.mapping;
    const mapped = column === "who" ? undefined : values?.[column]?.get(cell.text)?.text;
    const known = this.#titles[column];
    const wanted = mapped ?? cell.text;
    if (known.ids.has(wanted)) return wanted;
    const byWord = known.byWord.get(wanted.toLowerCase());
    if (byWord !== undefined) return byWord;
    const what = column === "who" ? "person" : column === "kind" ? "kind of work" : column;
    const nearest = nearestName(wanted, new Set([...known.ids, ...known.byWord.keys()]));
    return this.faults.add("unknown-name", cell.span, {
      message: `\`${cell.text}\` is no ${what} of the journal`,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      help: [
        `say what it means under \`values\` in the mapping: \`${column}: { ${cell.text}: … }\``,
      ],
    });
  }

  #time(
    from: CsvCell | undefined,
    to: CsvCell | undefined,
    hours: CsvCell | undefined,
    row: Span,
  ): Pick<InboxSession, "from" | "to" | "hours"> | undefined {
    const duration = hours && this.#duration(hours);
    if (hours && !duration) return undefined;
    const given = duration === undefined ? {} : { hours: duration };
    if (!from && !to) return duration === undefined ? this.#empty("hours", row) : given;
    const begin = from && this.#clock(from);
    const end = to && this.#clock(to);
    if (begin && end) return { from: begin, to: end, ...given };
    if (!from || !to) this.#empty(from ? "to" : "from", row);
    return undefined;
  }

  #duration(cell: CsvCell): string | undefined {
    const read = spokenDuration(cell.text.replace(/^(\d+:\d\d):00$/, "$1"));
    if (read) return read;
    return this.faults.add("not-a-duration", cell.span, {
      message: `\`${cell.text}\` is no duration in whole minutes`,
      help: ["write it as in `1:15`, `1.25` or `75 min`; nothing is rounded"],
    });
  }

  #clock(cell: CsvCell): string | undefined {
    const read = spokenTime(cell.text.replace(/^(\d+:\d\d):00\b/, "$1"));
    if (read) return read;
    return this.faults.add("not-a-time", cell.span, {
      message: `\`${cell.text}\` is not a time of day`,
      help: ["write it as in `18:40` or `6:40 pm`"],
    });
  }
}

function idsByWords<Thing extends { readonly id: string }>(
  things: Iterable<Thing>,
  words: (thing: Thing) => readonly string[],
): { readonly ids: ReadonlySet<string>; readonly byWord: ReadonlyMap<string, string> } {
  const ids = new Set<string>();
  const byWord = new Map<string, string>();
  const ambiguous = new Set<string>();
  for (const thing of things) {
    ids.add(thing.id);
    for (const word of [thing.id, ...words(thing)]) {
      const key = word.toLowerCase();
      if ((byWord.get(key) ?? thing.id) !== thing.id) ambiguous.add(key);
      else byWord.set(key, thing.id);
    }
  }
  for (const key of ambiguous) byWord.delete(key);
  return { ids, byWord };
}

function withoutTwins(
  rows: readonly ReadRow[],
  mapping: InboxMapping,
  faults: Faults,
): { kept: ReadRow[]; twins: Span[] } {
  const way = mapping["same-rows"]?.value;
  const first = new Map<string, ReadRow>();
  const kept: ReadRow[] = [];
  const twins: Span[] = [];
  for (const row of rows) {
    const said = JSON.stringify([row.date, row.session]);
    const twin = first.get(said);
    if (!twin || way === "each") {
      kept.push(row);
      first.set(said, row);
    } else if (way === "once") twins.push(row.span);
    else {
      faults.add("duplicate-row", row.span, {
        message: `the row says the same as line ${twin.span.line}`,
        help: [
          "take one of the two out of the table",
          "or say in the mapping what is meant wherever rows say the same: `same-rows: once` or `same-rows: each`",
        ],
      });
    }
  }
  return { kept, twins };
}

// Parts what is new from what the journal has. A day that has an entry takes nothing more.
function sortedOut(rows: readonly ReadRow[], build: Build, faults: Faults) {
  const present = new Map(build.days.map((day) => [day.date, day]));
  const omitted = new Map(
    build.omissions.map(({ file }) => [file.split("/").at(-1)?.replace(/\.md$/, "") ?? "", file]),
  );
  const byDate = new Map<CalendarDate, ReadRow[]>();
  for (const row of rows) {
    const list = byDate.get(row.date);
    if (list) list.push(row);
    else byDate.set(row.date, [row]);
  }
  const days: InboxDay[] = [];
  const known: { date: CalendarDate; row: Span }[] = [];
  for (const [date, list] of [...byDate].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const day = present.get(date);
    const file = day?.file ?? omitted.get(date);
    if (file === undefined) {
      days.push({
        date,
        sessions: list.map(({ session }) => session),
        rows: list.map(({ span }) => span),
      });
      continue;
    }
    const unmatched = [...(day?.sessions ?? [])];
    for (const row of list) {
      const at = unmatched.findIndex((session) => saysTheSame(row.session, session));
      if (at >= 0) {
        unmatched.splice(at, 1);
        known.push({ date, row: row.span });
        continue;
      }
      faults.add("duplicate-day", row.dateSpan, {
        message: `${date} has an entry already, and this session is not in it`,
        notes: [`the entry is ${file}`],
        help: ["add the session to that entry by hand, or take the row out of the table"],
      });
    }
  }
  return { days, known };
}

function saysTheSame(row: InboxSession, session: Session): boolean {
  const people = session.who.map(({ person }) => person).sort();
  return (
    row.assembly === session.assembly &&
    row.step === session.step &&
    row.kind === session.kind &&
    [...row.who].sort().join() === people.join() &&
    (row.from === undefined
      ? row.hours === durationOf(session)
      : row.from === session.from?.local.slice(11) && row.to === session.to?.local.slice(11))
  );
}

function durationOf({ minutes }: Pick<Day["sessions"][number], "minutes">): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}
