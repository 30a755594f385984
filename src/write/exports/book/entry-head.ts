import type { Hours } from "../../../compute/analysis.ts";
import type { Minutes } from "../../../model/calendar.ts";
import type { BookEntry } from "../../../present/book/book-entry.ts";
import { dateText } from "../../../present/format/dates.ts";
import { hoursText } from "../../../present/format/hours.ts";
import type { Column, Pages } from "../paper/pages.ts";
import { type PlacedLine, type Sheet, tagged, untagged } from "../paper/sheet.ts";
import type { SheetFormat } from "../paper/sheet-format.ts";
import type { Style, StyledText, Typesetter } from "../paper/typesetter.ts";
import type { BookContext } from "./book-context.ts";
import { entryBlocks } from "./entry-blocks.ts";

const marginWidth = 96;

/** The margin of the log, in which each entry is dated, and the column beside it. */
export function logColumns({ frame }: SheetFormat): {
  readonly margin: Column;
  readonly body: Column;
} {
  const left = frame.left + 8;
  return {
    margin: { left, right: left + marginWidth },
    body: { left: left + marginWidth + 12, right: frame.right - 10 },
  };
}

/** Lines in the margin, from the top down. */
interface MarginLine {
  readonly texts: readonly StyledText[];
  readonly advance: number;
}

const small: Style = { face: "small", size: 7.8 };
const title: Style = { face: "caps", size: 13 };
const titleAdvance = 15.5;

/**
 * Places one entry: number, date and what goes for all of it in the margin, the rest beside.
 * @returns The sheet on which it begins.
 */
export function placeEntry(
  pages: Pages,
  context: BookContext,
  entry: BookEntry,
  entries: number,
): Sheet {
  const { setter, format } = context;
  const { margin } = logColumns(format);
  const dating = inMargin(setter, margin, datingLines(entry, entries));
  const facts = inMargin(setter, margin, factLines(entry));
  const titleLines = setter.wrap(entry.title, title, pages.width);
  const titleHeight = titleLines.length * titleAdvance;
  const marginHeight = dating.height + facts.height + 10;
  pages.room(Math.max(marginHeight, titleHeight + 64) + 12);
  if (entry.gap !== undefined && pages.y > pages.top) gapLine(pages, setter, entry.gap);
  const { sheet } = pages;
  const top = pages.y;
  if (top > pages.top) sheet.across(format.frame.left, format.frame.right, top, 0.8);
  sheet.marks.push(
    tagged("H3", [
      ...dating.at(top + 4),
      ...titleLines.map((line, index): PlacedLine => {
        return { line, x: pages.column.left, y: top + 3 + (index + 1) * titleAdvance - 2 };
      }),
    ]),
    tagged("P", facts.at(top + 4 + dating.height)),
  );
  pages.space(titleHeight + 3);
  const again = setter.line(`Entry ${entry.number}, continued`, { ...small, ink: "second" });
  pages.turned = (next) => {
    const y = pages.top + 12;
    next.marks.push(untagged([{ line: again, x: margin.left, y }], "Pagination"));
  };
  entryBlocks(pages, setter, entry, context.pictures);
  pages.turned = undefined;
  pages.downTo(pages.sheet === sheet ? top + marginHeight : pages.top + 20);
  pages.space(8);
  return sheet;
}

/** Says that there is nothing between two entries, so that nobody looks for a lost page. */
function gapLine(pages: Pages, setter: Typesetter, gap: string): void {
  const line = setter.line(gap, { ...small, ink: "second" });
  pages.sheet.marks.push(tagged("P", [{ line, x: pages.column.left, y: pages.y + 2 }]));
  pages.space(9);
}

function datingLines({ number, weekday, date, hours }: BookEntry, entries: number): MarginLine[] {
  return [
    {
      texts: [{ text: `Entry ${number} of ${entries}`, style: { ...small, ink: "second" } }],
      advance: 10,
    },
    { texts: [{ text: weekday, style: small }], advance: 10.5 },
    { texts: [{ text: dateText(date), style: { face: "bold", size: 9 } }], advance: 12.5 },
    {
      texts: [{ text: hoursText(mainHours(hours)), style: { face: "bold", size: 13 } }],
      advance: 18,
    },
  ];
}

function factLines({ hours, toDate, facts }: BookEntry): MarginLine[] {
  const line = (text: string, style: Style = small): MarginLine => ({
    texts: [{ text, style }],
    advance: 9.8,
  });
  return [
    ...(hours.build === 0 && hours.apart > 0
      ? [line("hours of study and shop; none of the build")]
      : [line("hours of the build")]),
    ...(hours.build > 0 && hours.apart > 0
      ? [line(`and study and shop ${hoursText(hours.apart)}`)]
      : []),
    line(`build ${hoursText(toDate.build)} to date`),
    ...facts.map(({ text, departs }) =>
      line(text, departs ? { face: "caps", size: 7.8, ink: "red" } : small),
    ),
  ];
}

/** Hours of the build, or where there are none those counted apart. */
function mainHours({ build, apart }: Hours): Minutes {
  return build === 0 && apart > 0 ? apart : build;
}

function inMargin(setter: Typesetter, { left, right }: Column, lines: readonly MarginLine[]) {
  const broken = lines.flatMap(({ texts, advance }) =>
    setter.wrapStyled(texts, right - left).map((line) => ({ line, advance })),
  );
  return {
    height: broken.reduce((sum, { advance }) => sum + advance, 0),
    at: (top: number): PlacedLine[] => {
      let y = top;
      return broken.map(({ line, advance }) => {
        y += advance;
        return { line, x: left, y: y - 1.5 };
      });
    },
  };
}
