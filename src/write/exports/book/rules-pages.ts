import { rulesUsed } from "../../../present/book/rules-used.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf } from "./wording.ts";

/** The drawings the work was done to, and the rules that readings were judged by. */
export function rulesPages(pages: Pages, context: BookContext): void {
  const { project } = context.record.analysis.build;
  pages.heading("Drawings", 100);
  pages.table({
    title: "Drawings",
    columns: [
      { heading: "Drawing", width: 70, align: "left", face: "text" },
      words("Title", pages.width - 70 - 70),
      { heading: "Revision", width: 70, align: "left", face: "text" },
    ],
    rows: project.drawings.map(({ id, title, revision }) => ({
      cells: [{ text: id, bold: true }, { text: title }, { text: revision }],
    })),
    filled: false,
    none: "no drawings",
  });
  pages.heading("Rules used", 120);
  pages.paragraph(
    "Every rule that a reading in this record was judged by, with the limits as typed and who says so. Limits of the drawing and of the manual win over general ones. “Out” counts readings outside the limits that no later reading replaces and no deviation accounts for.",
  );
  pages.table({
    title: "Rules used",
    columns: [
      words("Rule", 112),
      words("Limits as typed", 106),
      words("Source", pages.width - 112 - 106 - 44 - 30 - 76),
      { heading: "Readings", width: 44, align: "right", face: "text" },
      { heading: "Out", width: 30, align: "right", face: "text" },
      { heading: "On pages", width: 76, align: "left", face: "text" },
    ],
    rows: rulesUsed(context.record).map(
      ({ rule, limits, sizes, source, readings, out, dates }) => ({
        cells: [
          { text: rule.title, notes: [rule.id] },
          {
            text: limits,
            notes: [...sizes, ...(rule.decision === "simple" ? [] : [rule.decision])],
          },
          { text: source, notes: rule.set === undefined ? [] : [`rule set ${rule.set}`] },
          { text: `${readings}` },
          { text: out === 0 ? "–" : `${out}`, red: out > 0, bold: out > 0 },
          { text: pagesOf(dates, context) },
        ],
      }),
    ),
    filled: false,
    none: "no rules",
  });
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}
