import type { CalendarDate } from "../../../model/calendar.ts";
import type { BookSection } from "../../../present/book/book-sections.ts";
import { monthText } from "../../../present/format/dates.ts";
import type { RecordIndex } from "../../../present/pages/record-index.ts";
import { caution, editionNote } from "../../../present/record/edition.ts";
import type { PrintPictures } from "../../photos/print-pictures.ts";
import { aircraftText, grouped } from "../logbook/wording.ts";
import { Pages } from "../paper/pages.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import type { Sheet } from "../paper/sheet.ts";
import { sheetFormat } from "../paper/sheet-format.ts";
import { signatureBoxes } from "../paper/signature-boxes.ts";
import { planTitleBlock, type TitleBlock } from "../paper/title-block.ts";
import type { BookContext, BookImprint, ContentsLine } from "./book-context.ts";
import { contentsPages } from "./contents.ts";
import { coverPage } from "./cover.ts";
import { deviationsPages } from "./deviations-pages.ts";
import { helpPages } from "./help-pages.ts";
import { hoursPages } from "./hours-pages.ts";
import { indexPages } from "./index-pages.ts";
import { inspectionsPages } from "./inspections-pages.ts";
import { type LogPlaces, logSheets, planLog } from "./log-pages.ts";
import { lotsPages } from "./lots-pages.ts";
import { rulesPages } from "./rules-pages.ts";
import { sealsPages } from "./seals-pages.ts";
import { bookName, parts } from "./wording.ts";

/** What the making of a book is given beside the record. */
export interface BookWork {
  readonly imprint: BookImprint;
  readonly pictures: PrintPictures;
  /** Takes the bytes of the file as they come. */
  readonly put: (bytes: Uint8Array) => Promise<void>;
  /** Called with what is being done: `page 12 of 300`. */
  readonly progress?: (text: string) => void;
  readonly signal?: AbortSignal;
}

/**
 * The record as a book to be printed, for who has no computer: cover, log with photographs,
 * index, hours, help, inspections, deviations, registers and empty boxes for signatures. The log is set
 * twice: first to learn its pages, which contents and index name, and then to be printed page by
 * page, with no more than one photograph in memory. The same record gives the same bytes.
 *
 * @returns How many pages it has.
 * @throws Whatever the signal was aborted with, and what `put` throws.
 */
export async function printBook(record: RecordIndex, work: BookWork): Promise<number> {
  const { imprint, pictures, put, progress, signal } = work;
  const { project } = record.analysis.build;
  const format = sheetFormat(imprint.paper);
  const aircraft = aircraftText(record);
  const { setter, printTo } = await beginPdf(
    {
      title: `${bookName}, ${aircraft}`,
      subject: `${project.title}. ${editionNote(record)}`,
      asOf: record.analysis.asOf.date,
      program: `Witness Mark ${imprint.programVersion}`,
    },
    format,
  );
  let pageOf = (_date: CalendarDate): number | undefined => undefined;
  const context: BookContext = {
    record,
    imprint,
    pictures,
    setter,
    format,
    pageOf: (date) => pageOf(date),
  };
  const stop = signal ? { signal } : {};
  const log = imprint.sections.includes("log")
    ? await planLog(context, {
        progress: (entry, total) => progress?.(`planning entry ${entry} of ${total}`),
        ...stop,
      })
    : undefined;

  // How many pages cover and contents take does not depend on the numbers they list.
  const draft = frontSheets(context, [...logLines(log, 0), ...restSheets(context, 0).lines]);
  const begins = draft.length;
  pageOf = (date) => {
    const index = log?.begins.get(date);
    return index === undefined ? undefined : begins + index + 1;
  };
  const rest = restSheets(context, begins + (log?.sheets ?? 0));
  const front = frontSheets(context, [...logLines(log, begins), ...rest.lines]);
  const total = front.length + (log?.sheets ?? 0) + rest.sheets.length;
  const block: TitleBlock = {
    aircraft,
    project: project.title,
    book: `${bookName}, ${record.edition} edition`,
    edition: record.edition,
    asOf: record.analysis.asOf.date,
    digest: grouped(imprint.recordDigest.slice(0, 16), 4),
    caution,
    leaf: "page",
    initials: true,
  };
  async function* sheets(): AsyncGenerator<Sheet> {
    let number = 0;
    const bound = (sheet: Sheet): Sheet => {
      number += 1;
      planTitleBlock(sheet, number, total, block, format, setter);
      return sheet;
    };
    for (const sheet of front) yield bound(sheet);
    if (log) for await (const sheet of logSheets(context, stop)) yield bound(sheet);
    for (const sheet of rest.sheets) yield bound(sheet);
  }
  await printTo(sheets(), {
    put,
    progress: (page) => progress?.(`page ${page} of ${total}`),
    ...stop,
  });
  return total;
}

/** Cover and contents. */
function frontSheets(context: BookContext, lines: readonly ContentsLine[]): Sheet[] {
  if (!context.imprint.sections.includes("cover")) return [];
  const pages = new Pages(context.setter, context.format, parts.cover);
  coverPage(pages, context);
  pages.part(parts.contents);
  contentsPages(pages, lines);
  return pages.sheets;
}

/** The log and its months in the contents. @param before How many pages stand before the log. */
function logLines(log: LogPlaces | undefined, before: number): ContentsLine[] {
  if (!log) return [];
  return [
    { name: parts.log, page: before + 1, depth: 0 },
    ...[...log.months].map(([month, index]) => ({
      name: monthText(month),
      page: before + index + 1,
      depth: 1,
    })),
  ];
}

/** Everything behind the log. @param before How many pages stand before it. */
function restSheets(
  context: BookContext,
  before: number,
): { readonly sheets: readonly Sheet[]; readonly lines: readonly ContentsLine[] } {
  const { setter, format, imprint } = context;
  const lines: ContentsLine[] = [];
  let pages: Pages | undefined;
  const begin = (name: string): Pages => {
    if (pages) pages.part(name);
    else pages = new Pages(setter, format, name);
    lines.push({ name, page: before + pages.sheets.length, depth: 0 });
    return pages;
  };
  const add: Partial<Record<BookSection, () => void>> = {
    index: () => indexPages(begin, context),
    hours: () => hoursPages(begin(parts.hours), context),
    help: () => helpPages(begin(parts.help), context),
    inspections: () => inspectionsPages(begin(parts.inspections), context),
    deviations: () => deviationsPages(begin(parts.deviations), context),
    lots: () => lotsPages(begin(parts.lots), context),
    rules: () => rulesPages(begin(parts.rules), context),
    seals: () => {
      if (context.record.analysis.build.seals.length > 0) sealsPages(begin(parts.seals), context);
    },
    signatures: () => signatureBoxes(begin(parts.signatures), format, setter),
  };
  for (const section of imprint.sections) add[section]?.();
  return { sheets: pages?.sheets ?? [], lines };
}
