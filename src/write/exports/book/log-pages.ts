import { setImmediate as pause } from "node:timers/promises";
import type { Hours } from "../../../compute/analysis.ts";
import { type CalendarDate, type CalendarMonth, monthOf } from "../../../model/calendar.ts";
import { shortSeal } from "../../../model/seal.ts";
import { bookEntry } from "../../../present/book/book-entry.ts";
import { monthText } from "../../../present/format/dates.ts";
import { hoursText } from "../../../present/format/hours.ts";
import { tidyMemory } from "../../tidy-memory.ts";
import { Pages } from "../paper/pages.ts";
import { sheetsBetween } from "../paper/pdf-document.ts";
import { type PlacedLine, type Sheet, tagged, untagged } from "../paper/sheet.ts";
import type { SheetFormat } from "../paper/sheet-format.ts";
import type { Line, Style, Typesetter } from "../paper/typesetter.ts";
import type { BookContext } from "./book-context.ts";
import { logColumns, placeEntry } from "./entry-head.ts";
import { bothHours, parts } from "./wording.ts";

/** Where everything is in the log. */
export interface LogPlaces {
  /** How many sheets it takes. */
  readonly sheets: number;
  /** Index of the sheet on which the entry of a day begins. */
  readonly begins: ReadonlyMap<CalendarDate, number>;
  /** Index of the sheet on which a month begins, oldest first. */
  readonly months: ReadonlyMap<CalendarMonth, number>;
}

/** What setting a long log reports to and listens to. */
export interface LogWork {
  readonly progress?: (entry: number, total: number) => void;
  readonly signal?: AbortSignal;
}

const stripHeight = 15;
const none: Hours = { build: 0, apart: 0 };

/**
 * Sets the log only to find out where everything in it comes to stand: contents and index have
 * to be known before the first page is printed, and a long log does not fit into the memory.
 * @throws Whatever the signal was aborted with.
 */
export async function planLog(context: BookContext, work: LogWork): Promise<LogPlaces> {
  const begins = new Map<CalendarDate, number>();
  const months = new Map<CalendarMonth, number>();
  let sheets = 0;
  for await (const _ of setLog(context, work, { begins, months })) {
    sheets += 1;
    if (sheets % sheetsBetween === 0) tidyMemory();
  }
  return { sheets, begins, months };
}

/**
 * The sheets of the log, each as soon as it is full: every day in order, the hours brought
 * forward at the head of each page and carried forward at its foot.
 * @throws Whatever the signal was aborted with.
 */
export function logSheets(context: BookContext, work: LogWork): AsyncIterable<Sheet> {
  return setLog(context, work, { begins: new Map(), months: new Map() });
}

async function* setLog(
  context: BookContext,
  { progress, signal }: LogWork,
  {
    begins,
    months,
  }: {
    readonly begins: Map<CalendarDate, number>;
    readonly months: Map<CalendarMonth, number>;
  },
): AsyncGenerator<Sheet> {
  const { record, setter, format } = context;
  const { days } = record.analysis.build;
  const pages = new Pages(setter, betweenStrips(format), parts.log);
  pages.column = logColumns(format).body;
  const strips = new Strips(context);
  for (const [index, day] of days.entries()) {
    signal?.throwIfAborted();
    progress?.(index + 1, days.length);
    // So that an interrupt is heard while a long log is set.
    if (index % 20 === 19) await pause();
    const entry = bookEntry(record, day);
    const month = monthOf(day.date);
    if (!months.has(month)) {
      monthHead(pages, context, month);
      months.set(month, pages.begun - 1);
    }
    const sheet = placeEntry(pages, context, entry, days.length);
    begins.set(day.date, pages.begun - pages.sheets.length + pages.sheets.indexOf(sheet));
    strips.begins(sheet, entry.hours);
    for (const full of pages.takeFull()) yield strips.drawn(full, false);
  }
  if (days.length === 0) pages.paragraph("There are no entries.");
  const [last] = pages.sheets;
  if (last) yield strips.drawn(last, true);
}

/** Name of the month, what it comes to and, when it is sealed, the digest of its seal. */
function monthHead(pages: Pages, context: BookContext, month: CalendarMonth): void {
  const { record, setter, format } = context;
  pages.room(190);
  const top = pages.y + (pages.y > pages.top ? 10 : 0);
  const { frame } = format;
  const height = 20;
  pages.sheet.grounds.push({ left: frame.left, right: frame.right, top, bottom: top + height });
  pages.sheet.across(frame.left, frame.right, top, 0.8);
  pages.sheet.across(frame.left, frame.right, top + height, 0.8);
  const days = record.daysByMonth.get(month)?.length ?? 0;
  const seal = record.sealByMonth.get(month);
  const hours = record.analysis.hours.byMonth.get(month) ?? none;
  const name = setter.line(monthText(month), { face: "caps", size: 12 });
  const says = setter.line(
    [
      `${days} ${days === 1 ? "entry" : "entries"}`,
      `${hoursText(hours.build)} hours of the build`,
      ...(hours.apart > 0 ? [`${hoursText(hours.apart)} study and shop`] : []),
      ...(seal ? [`sealed ${shortSeal(seal)}`] : []),
    ].join(", "),
    { face: "text", size: 7.6 },
  );
  pages.sheet.marks.push(
    ({ doc }) => {
      const log = doc.outline.children.at(-1) ?? doc.outline;
      log.addItem(monthText(month));
    },
    tagged("H2", [{ line: name, x: logColumns(format).margin.left, y: top + 14.4 }]),
    tagged("P", [{ line: says, x: pages.column.left, y: top + 13.6 }]),
  );
  pages.downTo(top + height);
}

/** Hours brought forward, of the page, and carried forward, on every page of the log. */
class Strips {
  readonly #context: BookContext;
  readonly #hoursOn = new WeakMap<Sheet, Hours>();
  #carried = none;

  constructor(context: BookContext) {
    this.#context = context;
  }

  /** Counts an entry to the sheet on which it begins. */
  begins(sheet: Sheet, hours: Hours): void {
    this.#hoursOn.set(sheet, added(this.#hoursOn.get(sheet) ?? none, hours));
  }

  /** The next sheet with its strips. */
  drawn(sheet: Sheet, last: boolean): Sheet {
    const { format, setter } = this.#context;
    const { body, frame } = format;
    const { body: column } = logColumns(format);
    const here = this.#hoursOn.get(sheet);
    const before = this.#carried;
    this.#carried = added(before, here ?? none);
    const carried = this.#carried;
    sheet.minutes = here?.build ?? 0;
    strip(sheet, setter, format, body.top, [
      ["Brought forward", ""],
      ["", bothHours(before)],
    ]);
    strip(sheet, setter, format, body.bottom - stripHeight, [
      [
        here ? "Entries that begin on this page" : "No entry begins on this page",
        bothHours(here ?? none),
      ],
      [last ? "Total" : "Carried forward", bothHours(carried)],
    ]);
    sheet.down(column.left - 6, body.top + stripHeight, body.bottom - stripHeight, 0.28);
    sheet.across(frame.left, frame.right, body.top + stripHeight, 0.4);
    sheet.across(frame.left, frame.right, body.bottom - stripHeight, 0.4);
    return sheet;
  }
}

type Told = readonly [label: string, value: string];

/** A strip across the frame, one label and value at its left end and one at its right. */
function strip(
  sheet: Sheet,
  setter: Typesetter,
  { frame }: SheetFormat,
  top: number,
  [left, right]: readonly [Told, Told],
): void {
  sheet.grounds.push({ left: frame.left, right: frame.right, top, bottom: top + stripHeight });
  const y = top + 10.4;
  const label: Style = { face: "small", size: 7.6 };
  const value: Style = { face: "bold", size: 7.2 };
  const placed: PlacedLine[] = [];
  const put = (line: Line, x: number) => placed.push({ line, x, y });
  const first = setter.line(left[0], label);
  put(first, frame.left + 8);
  put(setter.line(left[1], value), frame.left + 8 + first.width + 6);
  const total = setter.line(right[1], value);
  const says = setter.line(right[0], label);
  put(says, frame.right - 8 - total.width - 6 - says.width);
  put(total, frame.right - 8 - total.width);
  sheet.marks.push(untagged(placed, "Pagination"));
}

function betweenStrips(format: SheetFormat): SheetFormat {
  const { body } = format;
  return {
    ...format,
    body: { ...body, top: body.top + stripHeight, bottom: body.bottom - stripHeight },
  };
}

function added(a: Hours, b: Hours): Hours {
  return { build: a.build + b.build, apart: a.apart + b.apart };
}
