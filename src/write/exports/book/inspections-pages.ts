import { inspectionRows } from "../../../present/tables/inspections.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pageText } from "./wording.ts";

/** Every look that somebody took, each with an empty field at its end. */
export function inspectionsPages(pages: Pages, context: BookContext): void {
  pages.paragraph(
    "Who looked at what, by the builder's account. “Clear” says that nothing stood against closing, “held” that something did. The last column is empty and is filled in by hand, if at all.",
  );
  const texts = (pages.width - 50 - 92 - 80 - 34 - 72) / 2;
  pages.table({
    title: "Inspections",
    columns: [
      { heading: "Date", width: 50, align: "left", face: "text" },
      words("Step and look", 92),
      words("By", 80),
      words("Open to view", texts),
      words("Findings", texts),
      words("Result", 34),
      words("Sign or stamp", 72),
    ],
    rows: inspectionRows(context.record.analysis).map(({ inspection, stepTitle, person }) => ({
      cells: [
        { text: inspection.date, notes: [pageText(inspection.date, context)] },
        {
          text: `${inspection.step} ${stepTitle ?? ""}`,
          notes: [inspection.look],
        },
        {
          text: person?.name ?? inspection.by,
          ...(person?.standing === undefined ? {} : { notes: [person.standing] }),
        },
        { text: inspection.open },
        { text: inspection.findings },
        { text: inspection.result, bold: true, red: inspection.result === "held" },
        { text: "" },
      ],
    })),
    tall: 30,
    filled: false,
    none: "no inspections",
  });
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}
