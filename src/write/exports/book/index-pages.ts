import { bookIndex } from "../../../present/book/book-index.ts";
import { hoursOrDash } from "../logbook/wording.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf, parts } from "./wording.ts";

const explanation =
  "The pages are those on which the entries begin that name it: in a session, reading, cure, hold, deviation, squawk, inspection, layout or photograph.";

/** Where each assembly, each step and each task of a checklist is in the log. */
export function indexPages(begin: (part: string) => Pages, context: BookContext): void {
  const { assemblies, steps } = bookIndex(context.record);
  const { tasks } = context.imprint;
  const pages = begin(parts.assemblyIndex);
  pages.paragraph(
    `${explanation} Parts are set in below what they belong to and have rows of their own; the hours of an assembly include them.`,
  );
  pages.table({
    title: parts.assemblyIndex,
    columns: [
      words("Assembly", pages.width - 46 - 40 - 250),
      figures("Hours", 46),
      figures("Entries", 40),
      { heading: "Pages", width: 250, align: "left", face: "text" },
    ],
    rows: assemblies.map(({ assembly, depth, hours, dates }) => ({
      cells: [
        { text: assembly.title, indent: Math.min(depth, 8) * 9, bold: depth === 0 },
        { text: hoursOrDash(hours.build) },
        { text: dates.length === 0 ? "–" : `${dates.length}` },
        { text: pagesOf(dates, context) },
      ],
    })),
    filled: false,
    none: "no assemblies",
  });
  begin(parts.stepIndex);
  pages.paragraph(explanation);
  pages.table({
    title: parts.stepIndex,
    columns: [
      { heading: "Step", width: 50, align: "left", face: "text" },
      words("Title", pages.width - 50 - 50 - 46 - 40 - 170),
      words("Stage", 50),
      figures("Hours", 46),
      figures("Entries", 40),
      { heading: "Pages", width: 170, align: "left", face: "text" },
    ],
    rows: steps.map(({ step, stage, hours, dates }) => ({
      cells: [
        { text: step.id, bold: true },
        { text: step.title, ...(step.drawing === undefined ? {} : { notes: [step.drawing] }) },
        { text: stage ?? "–" },
        { text: hoursOrDash(hours.build) },
        { text: dates.length === 0 ? "–" : `${dates.length}` },
        { text: pagesOf(dates, context) },
      ],
    })),
    filled: false,
    none: "no steps",
  });
  if (!tasks || tasks.length === 0) return;
  begin(parts.taskIndex);
  pages.paragraph(
    "Tasks of the checklist, and the pages on which the entries begin that show them.",
  );
  pages.table({
    title: parts.taskIndex,
    columns: [
      { heading: "Task", width: 60, align: "left", face: "text" },
      words("What it is", pages.width - 60 - 40 - 200),
      figures("Entries", 40),
      { heading: "Pages", width: 200, align: "left", face: "text" },
    ],
    rows: tasks.map(({ id, title, dates }) => ({
      cells: [
        { text: id, bold: true },
        { text: title },
        { text: dates.length === 0 ? "–" : `${dates.length}` },
        { text: pagesOf(dates, context) },
      ],
    })),
    filled: false,
    none: "no tasks",
  });
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function figures(heading: string, width: number): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}
