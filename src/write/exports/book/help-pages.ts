import type { CalendarDate } from "../../../model/calendar.ts";
import {
  type HelpOfKind,
  helpStatement,
  type StatementOfHelp,
} from "../../../present/book/help-statement.ts";
import { sharesText } from "../../../present/tables/help.ts";
import { hoursOrDash } from "../logbook/wording.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperCell, PaperColumn, PaperRow } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf, pageText } from "./wording.ts";

const titles = {
  "paid help": "Paid help",
  "unpaid help": "Unpaid help",
  instruction: "Instruction",
} as const;

const meanings = {
  "paid help":
    "Help for hire or compensation, whoever gives it. Shares of tasks are the builder's own statement, in points, and are never computed from hours.",
  "unpaid help": "Help of amateurs without pay.",
  instruction:
    "Teaching, where the teacher does not do the task. It is added to neither of the others; how it counts is for whoever inspects the aircraft.",
} as const;

/** All help received, paid, unpaid and instruction apart, with what it comes to. */
export function helpPages(pages: Pages, context: BookContext): void {
  const statement = helpStatement(context.record.analysis);
  pages.paragraph(
    "All help that the journal tells of. A row with a number is from the register of help; the others are known from the sessions of the log alone. Hours are those of the sessions, and each session is counted once in a total.",
  );
  for (const help of statement) kindTable(pages, help, context);
}

function kindTable(pages: Pages, { kind, rows, total }: HelpOfKind, context: BookContext): void {
  pages.heading(titles[kind], 100);
  pages.paragraph(meanings[kind]);
  // Only paid help has shares.
  const shared = kind === "paid help";
  const widths = { number: 36, days: 92, who: 92, shares: shared ? 70 : 0, hours: 42 } as const;
  const { number, days, who, shares, hours } = widths;
  pages.table({
    title: titles[kind],
    columns: [
      { heading: "No.", width: number, align: "left", face: "text" },
      { heading: "Days", width: days, align: "left", face: "text" },
      words("Who", who),
      words("What, where", pages.width - number - days - who - shares - 2 * hours),
      ...(shared
        ? [{ heading: "Shares", width: shares, align: "left", face: "text" } as const]
        : []),
      figures("Build", hours),
      figures("Apart", hours),
    ],
    rows: [
      ...rows.map((row): PaperRow => ({ cells: cellsOf(row, kind, context) })),
      ...(rows.length === 0
        ? []
        : [
            {
              cells: [
                { text: "Total", bold: true },
                { text: "" },
                { text: "" },
                { text: "" },
                ...(shared ? [{ text: "" }] : []),
                { text: hoursOrDash(total.build), bold: true },
                { text: hoursOrDash(total.apart), bold: true },
              ],
            },
          ]),
    ],
    filled: false,
    none: "none",
  });
}

function cellsOf(
  row: StatementOfHelp,
  kind: HelpOfKind["kind"],
  context: BookContext,
): PaperCell[] {
  const { entry, from, to, dates, on, hours } = row;
  const { record } = context;
  const booked = on.join("; ");
  return [
    { text: entry?.id ?? "–", bold: true },
    {
      text: from === to ? from : `${from} to ${to}`,
      notes: [whereText(dates, context)],
    },
    { text: record.person(row.person, kind) },
    {
      text: entry?.what ?? booked,
      notes: [
        ...(entry && booked !== "" ? [`sessions: ${booked}`] : []),
        ...(entry?.place === undefined ? [] : [`at ${entry.place}`]),
        ...(entry?.note === undefined ? [] : [entry.note]),
        ...(entry?.invoice === undefined ? [] : [`invoice ${entry.invoice}`]),
      ],
    },
    ...(kind === "paid help" ? [{ text: (entry && sharesText(entry)) || "–" }] : []),
    { text: hoursOrDash(hours.build) },
    { text: hoursOrDash(hours.apart) },
  ];
}

function whereText(dates: readonly CalendarDate[], context: BookContext): string {
  const [first, second] = dates;
  if (first === undefined) return "no session";
  if (second === undefined) return pageText(first, context);
  const pages = pagesOf(dates, context);
  if (pages === "–") return `${dates.length} entries`;
  return `${/^\d+$/.test(pages) ? "page" : "pages"} ${pages}`;
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function figures(heading: string, width: number): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}
