import type { CalendarDate } from "../../../model/calendar.ts";
import { workKinds } from "../../../model/session.ts";
import { hoursStatement, type PersonStatement } from "../../../present/tables/hours-statement.ts";
import type { KindHours } from "../../../present/tables/totals.ts";
import { totalsPages } from "../logbook/totals.ts";
import { hoursOrDash } from "../logbook/wording.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperCell, PaperColumn } from "../paper/paper-table.ts";
import { signatureStrip } from "../paper/signature-strip.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf } from "./wording.ts";

const kindWidth = 42;

/** Hours of each person by month, role and kind, and then every total. */
export function hoursPages(pages: Pages, context: BookContext): void {
  const { record, setter } = context;
  pages.paragraph(
    "Hours of each person by month, role and kind of work, as written in the entries. “Build” is the sum of fabricate, assemble, inspect and rework; study and shop are counted apart. Under each month stand the pages on which the entries begin that the row is the sum of. The line below each table is empty and is filled in by hand, if at all.",
  );
  for (const statement of hoursStatement(record.analysis)) {
    personTable(pages, statement, context);
    signatureStrip(pages, setter, [
      { label: "Looked through by", share: 4 },
      { label: "Signature", share: 4 },
      { label: "Date", share: 2 },
    ]);
    pages.space(6);
  }
  totalsPages(pages, record.analysis);
}

function personTable(
  pages: Pages,
  { person, rows, total }: PersonStatement,
  context: BookContext,
): void {
  const kinds = (workKinds.length + 1) * kindWidth;
  pages.heading(
    person.standing === undefined ? person.name : `${person.name}, ${person.standing}`,
    150,
  );
  pages.table({
    title: `Hours of ${person.name}`,
    columns: [
      { heading: "Month", width: 72, align: "left", face: "text" },
      { heading: "Role", width: pages.width - 72 - 28 - kinds, align: "left", face: "small" },
      { heading: "Days", width: 28, align: "right", face: "text" },
      ...[...workKinds, "Build"].map(
        (heading): PaperColumn => ({ heading, width: kindWidth, align: "right", face: "text" }),
      ),
    ],
    rows: [
      ...rows.map((row) => ({
        cells: [
          { text: row.month, notes: entriesOf(row.dates, context) },
          { text: row.role },
          { text: `${row.days}` },
          ...kindCells(row),
        ],
      })),
      {
        cells: [
          { text: "Total", bold: true },
          { text: "" },
          { text: `${total.days}`, bold: true },
          ...kindCells(total).map(({ text }) => ({ text, bold: true })),
        ],
      },
    ],
    filled: false,
    none: "no hours",
  });
}

/** Pages of the log, or nothing where the book has none: the month names the entries then. */
function entriesOf(dates: readonly CalendarDate[], context: BookContext): string[] {
  const pages = pagesOf(dates, context);
  return pages === "–" ? [] : [`p. ${pages}`];
}

function kindCells({ byKind, total }: KindHours): PaperCell[] {
  return [
    ...workKinds.map((kind) => ({ text: hoursOrDash(byKind.get(kind) ?? 0) })),
    { text: hoursOrDash(total.build), bold: true },
  ];
}
