import type { CalendarMonth } from "../../model/calendar.ts";
import { dateText, daysText, monthText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { lengthOf } from "../pages/views/month-ruler.ts";

/** Width and height in pixels of a picture that stands for a page where it is shared. */
export const shareSize = { width: 1200, height: 630 } as const;

/** A picture that stands for a page where the page is shared. */
export interface SharePicture {
  /** From the site's root, without a leading slash. */
  readonly url: string;
  /** What it shows, in words. */
  readonly alt: string;
}

/**
 * A sheet to be drawn as a share picture: for a month, and for the whole record. A day without
 * a photograph has its month's, so that thousands of days are not thousands of drawings.
 */
export interface ShareSheet extends SharePicture {
  /** Above the title: the record it belongs to. */
  readonly over: string;
  readonly title: string;
  /** `45:10`, and what it is. */
  readonly figure: string;
  readonly says: string;
  /** At either end of the ruler. */
  readonly from: string;
  readonly to: string;
  /** One for each day or month with hours: both from 0 to 1, along the ruler and up from it. */
  readonly ticks: readonly { readonly at: number; readonly length: number }[];
  /** Cells of the title block. */
  readonly cells: readonly { readonly label: string; readonly value: string }[];
}

/** Where the drawn picture of a month stands. */
export function monthShareUrl(month: CalendarMonth): string {
  return `share/${month}.jpg`;
}

/** Where the drawn picture of the whole record stands. */
export const recordShareUrl = "share/record.jpg";

/**
 * The sheets to be drawn: one for the record and one for each month. None without an address,
 * because a shared link needs one.
 */
export function shareSheets(record: RecordIndex): readonly ShareSheet[] {
  if (record.analysis.build.project.address === undefined) return [];
  return [
    recordSheet(record),
    ...[...record.daysByMonth.keys()].map((month) => monthSheet(record, month)),
  ];
}

/** What the picture of a month shows, in words. */
export function monthShare(record: RecordIndex, month: CalendarMonth): SharePicture {
  const { url, alt } = monthSheet(record, month);
  return { url, alt };
}

/** What the picture of the record shows, in words. */
export function recordShare(record: RecordIndex): SharePicture {
  const { url, alt } = recordSheet(record);
  return { url, alt };
}

function monthSheet(record: RecordIndex, month: CalendarMonth): ShareSheet {
  const { hours, build } = record.analysis;
  const days = record.daysByMonth.get(month) ?? [];
  const figure = hoursText(hours.byMonth.get(month)?.build ?? 0);
  const toDate = hours.toDate.get(days.at(-1)?.date ?? "")?.build ?? 0;
  const title = monthText(month);
  const length = lengthOf(month);
  const name = title.slice(0, 3);
  return {
    url: monthShareUrl(month),
    alt: `Drawn sheet: ${title}, ${figure} hours of building on ${daysText(days.length)}.`,
    over: build.project.title,
    title,
    figure,
    says: "hours of building",
    from: `1 ${name}`,
    to: `${length} ${name}`,
    ticks: days.map(({ date }) => ({
      at: (Number(date.slice(8)) - 0.5) / length,
      length: (hours.byDate.get(date)?.build ?? 0) / record.longestDay,
    })),
    cells: [
      { label: "aircraft", value: aircraftOf(record) },
      { label: "days", value: String(days.length) },
      { label: "hours to date", value: hoursText(toDate) },
    ],
  };
}

function recordSheet(record: RecordIndex): ShareSheet {
  const { hours, build, asOf } = record.analysis;
  const months = [...record.daysByMonth.keys()];
  const minutes = (month: CalendarMonth) => hours.byMonth.get(month)?.build ?? 0;
  const most = Math.max(1, ...months.map(minutes));
  const figure = hoursText(hours.total.build);
  const first = months[0];
  const last = months.at(-1);
  const place = (month: CalendarMonth) => Number(month.slice(0, 4)) * 12 + Number(month.slice(5));
  const span = first && last ? place(last) - place(first) + 1 : 1;
  return {
    url: recordShareUrl,
    alt: `Drawn sheet: ${build.project.title}, ${figure} hours of building on ${daysText(build.days.length)}.`,
    over: "build journal",
    title: build.project.title,
    figure,
    says: "hours of building",
    from: first === undefined ? "" : monthText(first),
    to: last === undefined ? "" : monthText(last),
    ticks: months.map((month) => ({
      at: (place(month) - place(first ?? month) + 0.5) / span,
      length: minutes(month) / most,
    })),
    cells: [
      { label: "aircraft", value: aircraftOf(record) },
      { label: "days", value: String(build.days.length) },
      { label: "as of", value: dateText(asOf.date) },
    ],
  };
}

function aircraftOf({ analysis }: RecordIndex): string {
  const { designation, serial } = analysis.build.project;
  return `${designation}, serial ${serial}`;
}
