import type { Pages } from "../paper/pages.ts";
import type { ContentsLine } from "./book-context.ts";

/** The parts of the book and the months of the log, with the pages on which they begin. */
export function contentsPages(pages: Pages, lines: readonly ContentsLine[]): void {
  pages.space(6);
  const page = 60;
  pages.table({
    title: "Contents",
    columns: [
      { heading: "Part", width: pages.width - page, align: "left", face: "small" },
      { heading: "Page", width: page, align: "right", face: "text" },
    ],
    rows: lines.map(({ name, page: number, depth }) => ({
      cells: [{ text: name, indent: depth * 14, bold: depth === 0 }, { text: `${number}` }],
    })),
    filled: false,
    none: "nothing",
  });
}
