import type { Minutes } from "../../../model/calendar.ts";
import { hoursText } from "../../../present/format/hours.ts";
import { amendmentText, type HoursRow, hoursTable, nameAt } from "../../../present/tables/hours.ts";
import { columnNamed } from "../../../present/tables/table.ts";
import type { PaperRow, PaperTable } from "../paper/paper-table.ts";

const widths = { row: 24, date: 50, role: 41, kind: 37, clock: 53, hours: 33, total: 41 } as const;

/**
 * Rows of the hours as a ledger: running total in the last column, the total brought forward
 * at the head of every sheet, the sheet's own and the total carried forward at its foot.
 *
 * @param rows Rows counted the same way, all of the build or all apart.
 * @param width Of the whole table, in points.
 */
export function ledgerTable(title: string, rows: readonly HoursRow[], width: number): PaperTable {
  const free = width - Object.values(widths).reduce((sum, each) => sum + each, 0);
  const who = Math.round(free * 0.31);
  const heading = (key: string) => columnNamed(hoursTable, key).heading;
  return {
    title,
    columns: [
      { heading: heading("row"), width: widths.row, align: "right", face: "text" },
      { heading: heading("date"), width: widths.date, align: "left", face: "text" },
      { heading: "Assembly and step", width: free - who, align: "left", face: "small" },
      { heading: heading("name"), width: who, align: "left", face: "small" },
      { heading: heading("role"), width: widths.role, align: "left", face: "small" },
      { heading: heading("kind"), width: widths.kind, align: "left", face: "small" },
      { heading: "From–to", width: widths.clock, align: "left", face: "text" },
      { heading: "Hours", width: widths.hours, align: "right", face: "text" },
      { heading: "Total", width: widths.total, align: "right", face: "text" },
    ],
    rows: rows.map(ledgerRow),
    opening: (before) => carried("Brought forward", "", "", before),
    closing: (sheet, toDate, last) =>
      carried(
        last ? "Total of this part" : "Carried forward",
        "this sheet",
        hoursText(sheet),
        toDate,
      ),
    filled: true,
    none: "no entries",
  };
}

function ledgerRow(row: HoursRow): PaperRow {
  const { line, assembly, step } = row;
  const place = assembly?.title ?? line.assembly;
  const task = step ? `${step.id} ${step.title}` : line.step;
  const work = task === undefined ? place : `${place}: ${task}`;
  const { stage } = line.session;
  return {
    minutes: line.minutes,
    cells: [
      { text: `${row.number}` },
      { text: line.date },
      { text: stage === undefined ? work : `${work} (${stage})`, notes: remarks(row) },
      { text: nameAt(row) },
      { text: line.role },
      { text: line.kind },
      clockCell(row),
      { text: hoursText(line.minutes) },
      { text: hoursText(row.runningMinutes) },
    ],
  };
}

/** What must not be missed: that the entry is late or imported, and what was amended. */
function remarks({ day, amendments }: HoursRow): string[] {
  const late = day?.late ?? 0;
  const written = day?.written ? `${day.written.local.slice(0, 10)}, ` : "";
  return [
    ...(late > 0
      ? [`LATE ENTRY: written ${written}${late} ${late === 1 ? "day" : "days"} after`]
      : []),
    ...(day?.imported === undefined ? [] : [`IMPORTED from ${day.imported}`]),
    ...amendments.map((amendment) => `AMENDED: ${amendmentText(amendment)}`),
  ];
}

function clockCell({ line: { session } }: HoursRow) {
  const { from, to } = session;
  if (!from || !to) return { text: "–" };
  const elapsed = to.epochMinutes - from.epochMinutes;
  return {
    text: `${from.local.slice(11)}–${to.local.slice(11)}`,
    notes: [
      ...(to.local.slice(0, 10) === from.local.slice(0, 10) ? [] : ["ends next day"]),
      ...(clockMinutes(from.local, to.local) === elapsed ? [] : ["over a clock change"]),
    ],
  };
}

function carried(label: string, note: string, hours: string, total: Minutes): PaperRow {
  const empty = { text: "" };
  return {
    cells: [
      empty,
      empty,
      { text: label, bold: true },
      empty,
      empty,
      empty,
      { text: note },
      { text: hours, bold: true },
      { text: hoursText(total), bold: true },
    ],
  };
}

/** Minutes between two readings of the clock on the wall, as if it had not been changed. */
function clockMinutes(from: string, to: string): Minutes {
  const at = (local: string) => Date.parse(`${local.replace(" ", "T")}Z`) / 60_000;
  return at(to) - at(from);
}
