import type { TaskState } from "../../../compute/ledgers/portion.ts";
import { type BookIndex, bookIndex } from "../../../present/book/book-index.ts";
import { splitText } from "../../../present/format/portion.ts";
import { evidenceOrder, lacksOf } from "../../../present/portion/evidence-words.ts";
import { hoursOrDash } from "../logbook/wording.ts";
import type { Pages } from "../paper/pages.ts";
import type { PaperColumn, PaperRow, PaperTable } from "../paper/paper-table.ts";
import type { BookContext } from "./book-context.ts";
import { pagesOf, parts } from "./wording.ts";

const explanation =
  "The pages are those on which the entries begin that name it: in a session, reading, cure, hold, deviation, squawk, inspection, layout or photograph.";

/** Where each assembly, each step and each task of a checklist is in the log. */
export function indexPages(begin: (part: string) => Pages, context: BookContext): void {
  const { assemblies, steps, tasks } = bookIndex(context.record);
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
  if (tasks.length > 0) taskPages(begin(parts.taskIndex), tasks, context);
}

function taskPages(pages: Pages, tasks: BookIndex["tasks"], context: BookContext): void {
  const lacking = tasks.filter(({ state }) => lacksOf(state).length > 0);
  const contradicting = tasks.filter(({ state }) => state.conflicts.length > 0);
  const claimed = tasks.filter(({ state }) => state.claimed).length;
  pages.paragraph(
    `Tasks of the list that the builder loaded, their shares in tenths of a point, and the pages on which the entries begin that are evidence of them. ${claimed} are claimed by the builder, and ${lacking.length === 0 ? "none of these lacks" : `${lacking.length} of these lack`} a dated entry by a builder or an unpaid helper, its place, words, a photograph, or the kind of work that is claimed. ${contradicting.length === 0 ? "No division contradicts" : `${contradicting.length} of the divisions contradict`} the entries, the help received or what the builder marked.`,
  );
  const rowOf = rowsFor(tasks, context);
  const wanting = evidenceOrder(tasks.map(({ state }) => state)).filter(
    (state) => wantsOf(state).length > 0,
  );
  if (wanting.length > 0) {
    pages.heading("Gaps and contradictions", 100);
    pages.table(taskTable("Gaps and contradictions", wanting.flatMap(rowOf), pages));
    pages.heading("All tasks", 100);
  }
  pages.table(
    taskTable(
      parts.taskIndex,
      tasks.flatMap(({ state }) => rowOf(state)),
      pages,
    ),
  );
}

function taskTable(title: string, rows: readonly PaperRow[], { width }: Pages): PaperTable {
  return {
    title,
    columns: [
      { heading: "Task", width: 50, align: "left", face: "text" },
      words("What it is, and what its evidence lacks", width - 50 - 110 - 40 - 150),
      words("Shares", 110),
      figures("Entries", 40),
      { heading: "Pages", width: 150, align: "left", face: "text" },
    ],
    rows,
    filled: false,
    none: "no tasks",
  };
}

function rowsFor(
  tasks: BookIndex["tasks"],
  context: BookContext,
): (state: TaskState) => readonly PaperRow[] {
  const rows = new Map(
    tasks.map(({ state, dates }) => {
      const wants = wantsOf(state);
      const row: PaperRow = {
        cells: [
          { text: state.task.id, bold: true, red: wants.length > 0 },
          { text: state.task.title, notes: [state.task.section, ...wants] },
          { text: state.current ? splitText(state.current.split) : "not divided yet" },
          { text: dates.length === 0 ? "–" : `${dates.length}` },
          { text: pagesOf(dates, context) },
        ],
      };
      return [state, [row]] as const;
    }),
  );
  return (state) => rows.get(state) ?? [];
}

function wantsOf(state: TaskState): string[] {
  return [...lacksOf(state), ...state.conflicts];
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function figures(heading: string, width: number): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}
