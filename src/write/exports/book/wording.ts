import type { Hours } from "../../../compute/analysis.ts";
import type { CalendarDate } from "../../../model/calendar.ts";
import { hoursText } from "../../../present/format/hours.ts";
import type { BookContext } from "./book-context.ts";

/** Name of the book, on its cover and in every title block. */
export const bookName = "Book of the build";

/** Names of the parts, in order. */
export const parts = {
  cover: "Cover",
  contents: "Contents",
  log: "Log",
  assemblyIndex: "Index by assembly",
  stepIndex: "Index by step",
  taskIndex: "Index by checklist task",
  hours: "Hours",
  help: "Help received",
  inspections: "Inspections",
  deviations: "Deviations from the drawings",
  lots: "Lots and instruments",
  rules: "Drawings and rules",
  seals: "Seals of months",
  signatures: "Signatures",
} as const;

/** Hours of the build, and those counted apart when there are some. */
export function bothHours({ build, apart }: Hours): string {
  return apart === 0 ? hoursText(build) : `${hoursText(build)} + ${hoursText(apart)} apart`;
}

/**
 * Pages in order, each once, neighbours joined: `12, 14–16, 33`. Every page within a stretch
 * is one of those given.
 */
export function pageRuns(pages: readonly number[]): string {
  const sorted = [...new Set(pages)].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const page of sorted) {
    const last = runs.at(-1);
    if (last && page === last[1] + 1) last[1] = page;
    else runs.push([page, page]);
  }
  return runs
    .map(([first, last]) => {
      if (first === last) return `${first}`;
      return last === first + 1 ? `${first}, ${last}` : `${first}–${last}`;
    })
    .join(", ");
}

/** The pages on which the entries of some days begin; a dash for none. */
export function pagesOf(dates: readonly CalendarDate[], { pageOf }: BookContext): string {
  return pageRuns(dates.flatMap((date) => pageOf(date) ?? [])) || "–";
}

/** The page on which the entry of one day begins; its number when the book has no log. */
export function pageText(date: CalendarDate, { pageOf, record }: BookContext): string {
  const page = pageOf(date);
  return page === undefined ? `entry ${record.sheetOf.get(date) ?? "–"}` : `page ${page}`;
}
