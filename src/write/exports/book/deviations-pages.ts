import { deviationRows } from "../../../present/tables/deviations.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pageText } from "./wording.ts";

/** Every departure from the drawings, each with an empty field at its end. */
export function deviationsPages(pages: Pages, context: BookContext): void {
  pages.paragraph(
    "What departs from the drawings, why, and what was decided, by the builder's account. The last column is empty and is filled in by hand, if at all.",
  );
  const texts = (pages.width - 50 - 62 - 72) / 4;
  pages.table({
    title: "Deviations from the drawings",
    columns: [
      { heading: "Id, date", width: 50, align: "left", face: "text" },
      words("Drawing, step", 62),
      words("Planned", texts),
      words("Done", texts),
      words("Why", texts),
      words("Disposition", texts),
      words("Sign or stamp", 72),
    ],
    rows: deviationRows(context.record.analysis).map(({ deviation, open, acceptedBy }) => ({
      cells: [
        {
          text: deviation.id,
          bold: true,
          notes: [deviation.date, pageText(deviation.date, context)],
        },
        { text: deviation.drawing, notes: deviation.step === undefined ? [] : [deviation.step] },
        { text: deviation.planned },
        { text: deviation.done },
        { text: deviation.why },
        {
          text: open ? "OPEN: nothing decided yet" : (deviation.disposition?.text ?? ""),
          red: open,
          notes: [
            ...(deviation.disposition ? [`decided ${deviation.disposition.date}`] : []),
            ...(acceptedBy === undefined ? [] : [`accepted by ${acceptedBy}`]),
          ],
        },
        { text: "" },
      ],
    })),
    tall: 30,
    filled: false,
    none: "no deviations",
  });
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}
