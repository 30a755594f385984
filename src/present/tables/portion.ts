import type { Analysis } from "../../compute/analysis.ts";
import type { PortionLedger, TaskState } from "../../compute/ledgers/portion.ts";
import type { CreditColumn, SplitEntry, Task } from "../../model/portion.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Column, type Table, tableOf } from "./table.ts";

/** A task of the sheet beside the list that it is from. */
export interface PortionRow {
  readonly ledger: PortionLedger;
  readonly state: TaskState;
}

/** The tasks, section by section, in the order of the list. */
export function portionRows({ portion }: Analysis): readonly PortionRow[] {
  if (!portion) return [];
  return portion.sections.flatMap(({ tasks }) =>
    tasks.map((state) => ({ ledger: portion, state })),
  );
}

/** Which list it is, on one line. */
export function listText({ register: { list } }: PortionLedger): string {
  return [
    list.title,
    ...(list.year === undefined ? [] : [list.year]),
    `for ${list.aircraft}`,
    `from: ${list.from}`,
    `loaded ${list.loaded}`,
  ].join("; ");
}

/** Section, number and words of a task. */
export function taskColumns<Row>(taskOf: (row: Row) => Task): Column<Row>[] {
  return [
    {
      key: "section",
      heading: "Section",
      kind: "text",
      means: "Section of the list.",
      value: (row) => taskOf(row).section,
    },
    {
      key: "task",
      heading: "No.",
      kind: "text",
      means: "Number of the task.",
      value: (row) => taskOf(row).id,
    },
    {
      key: "title",
      heading: "Task",
      kind: "text",
      means: "What the task is.",
      value: (row) => taskOf(row).title,
    },
  ];
}

/** The four shares of a task, in tenths. */
export function shareColumns<Row>(splitOf: (row: Row) => SplitEntry | undefined): Column<Row>[] {
  const column = (share: CreditColumn, heading: string, means: string): Column<Row> => ({
    key: `${share}_tenths`,
    heading,
    kind: "number",
    means: `${means}, in tenths of the task's point.`,
    value: (row) => splitOf(row)?.split?.[share],
  });
  return [
    column("kit", "Kit", "Share of the maker of the kit, of a component or of a part"),
    column("paid", "Paid", "Share of help for hire or compensation"),
    column("assembly", "Assembly", "Share assembled by amateurs"),
    column("fabrication", "Fabrication", "Share fabricated by amateurs"),
  ];
}

/** The sheet, one row for each task. */
export const portionTable: Table<PortionRow> = tableOf({
  name: "portion",
  title: "Major-portion sheet",
  rows: portionRows,
  columns: [
    ...taskColumns<PortionRow>(({ state }) => state.task),
    {
      key: "added",
      heading: "Added",
      kind: "text",
      means: "When and why the builder added the task; empty: it is on the list.",
      value: ({ state: { task } }) => task.added && `${task.added.date}: ${task.added.why}`,
    },
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "`divided`, `not applicable`, or `undecided`; only divided tasks are counted.",
      value: ({ state }) => state.standing,
    },
    ...shareColumns<PortionRow>(({ state }) => state.current),
    {
      key: "listed_kit_tenths",
      heading: "Kit by the list",
      kind: "number",
      means: "The kit's share as the list itself gives it, in tenths; empty: it gives none.",
      value: ({ state }) => state.task.listed,
    },
    {
      key: "since",
      heading: "Since",
      kind: "date",
      means: "The day from which this division holds.",
      value: ({ state }) => state.current?.date,
    },
    {
      key: "why",
      heading: "Why",
      kind: "text",
      means: "Why it does not apply, or why it was changed.",
      value: ({ state }) => state.current?.why,
    },
    {
      key: "source",
      heading: "Source",
      kind: "text",
      means: "What the kit's share rests on.",
      value: ({ state }) => state.current?.source,
    },
    {
      key: "salvage",
      heading: "Salvage",
      kind: "yes or no",
      means: "Whether it is made from a used or salvaged type-certificated assembly.",
      value: ({ state }) => state.current?.salvage,
    },
    {
      key: "note",
      heading: "Note",
      kind: "text",
      means: "The builder's remark.",
      value: ({ state }) => state.current?.note,
    },
    {
      key: "list",
      heading: "List",
      kind: "text",
      means: "Which list of tasks it is, for which aircraft, where from, and when loaded.",
      value: ({ ledger }) => listText(ledger),
    },
    ...sourceColumns<PortionRow>(({ state }) => state.current?.span ?? state.task.span),
  ],
});

/** One division of one task. */
export interface PortionHistoryRow {
  readonly task: Task;
  readonly entry: SplitEntry;
  readonly inForce: boolean;
}

/** Every division of every task, task by task, oldest first. */
export function portionHistoryRows(analysis: Analysis): readonly PortionHistoryRow[] {
  return portionRows(analysis).flatMap(({ state: { task, history, current } }) =>
    history.map((entry) => ({ task, entry, inForce: entry === current })),
  );
}

/** How the divisions came about. */
export const portionHistoryTable: Table<PortionHistoryRow> = tableOf({
  name: "portion-history",
  title: "History of the major-portion sheet",
  rows: portionHistoryRows,
  columns: [
    ...taskColumns<PortionHistoryRow>(({ task }) => task),
    {
      key: "on",
      heading: "On",
      kind: "date",
      means: "The day of this division.",
      value: ({ entry }) => entry.date,
    },
    ...shareColumns<PortionHistoryRow>(({ entry }) => entry),
    {
      key: "not_applicable",
      heading: "Not applicable",
      kind: "yes or no",
      means: "Whether the task was put aside as not applicable.",
      value: ({ entry }) => entry.split === undefined,
    },
    {
      key: "why",
      heading: "Why",
      kind: "text",
      means: "The reason, where it replaces an earlier division or puts the task aside.",
      value: ({ entry }) => entry.why,
    },
    {
      key: "in_force",
      heading: "In force",
      kind: "yes or no",
      means: "Whether it is the one that counts.",
      value: ({ inForce }) => inForce,
    },
    ...sourceColumns<PortionHistoryRow>(({ entry }) => entry.span),
  ],
});
