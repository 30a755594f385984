import { grouped } from "../../compute/grouped.ts";
import type { CalendarMonth } from "../../model/calendar.ts";
import { monthText, weekdayText } from "../format/dates.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type PhotoView, photoView } from "./views/photo-view.ts";

/** Every month with photographs, and the newest of them. */
export interface PhotographsPage extends Page<"photographs"> {
  readonly months: readonly { readonly month: Link; readonly count: number }[];
  readonly newest: readonly PhotoView[];
}

/** The photographs of one month. */
export interface PhotographMonthPage extends Page<"photograph month"> {
  /** By day, oldest first, numbered through the month. */
  readonly days: readonly {
    readonly id: string;
    readonly text: string;
    readonly photos: readonly PhotoView[];
  }[];
}

const newestShown = 12;

/** The index of photographs. */
export function photographsPage(record: RecordIndex): PhotographsPage {
  const url = places.photographs;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const all = [...record.photosByMonth.values()].flat();
  return {
    kind: "photographs",
    script: "view.js",
    styles: ["view.css"],
    url,
    root,
    part: "photographs",
    title: "Photographs",
    description: `${all.length} photographs of ${record.analysis.build.project.title}, by month.`,
    over: [{ text: `${record.photosByMonth.size} months` }],
    dimension: {
      figure: String(all.length),
      says: all.length === 1 ? "photograph" : "photographs",
    },
    months: [...record.photosByMonth]
      .map(([month, photos]) => ({
        month: { text: monthText(month), href: links.to(record.addresses.photographs(month)) },
        count: photos.length,
      }))
      .reverse(),
    newest: all
      .slice(-newestShown)
      .reverse()
      .map((photo, index) => photoView(record, links, photo, index + 1)),
    block: {
      title: "Photographs",
      number: "photographs",
      cells: [{ label: "photographs", value: String(all.length) }],
    },
  };
}

/** The photographs of a month that has some, oldest first. */
export function photographMonthPage(
  record: RecordIndex,
  month: CalendarMonth,
  around: { readonly previous?: CalendarMonth; readonly next?: CalendarMonth },
): PhotographMonthPage {
  const url = record.addresses.photographs(month);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const photos = record.photosByMonth.get(month) ?? [];
  const turn = (to: CalendarMonth) => ({
    text: monthText(to),
    href: links.to(record.addresses.photographs(to)),
  });
  return {
    kind: "photograph month",
    script: "view.js",
    styles: ["view.css"],
    url,
    root,
    part: "photographs",
    title: `Photographs, ${monthText(month)}`,
    description: `${photos.length} photographs of ${monthText(month)}.`,
    over: [
      placeLink(root, "photographs", "photographs"),
      { text: monthText(month), href: links.to(record.addresses.month(month)) },
    ],
    dimension: {
      figure: String(photos.length),
      says: photos.length === 1 ? "photograph" : "photographs",
    },
    days: [
      ...grouped(
        photos.map((photo, index) => ({ photo, number: index + 1 })),
        ({ photo }) => photo.date,
      ),
    ].map(([date, of]) => ({
      id: `on-${date.slice(8)}`,
      text: `${weekdayText(date)} ${Number(date.slice(8))}`,
      photos: of.map(({ photo, number }) => photoView(record, links, photo, number)),
    })),
    block: {
      title: `Photographs, ${monthText(month)}`,
      number: "photographs",
      cells: [{ label: "photographs", value: String(photos.length) }],
    },
    turn: {
      ...(around.previous === undefined ? {} : { previous: turn(around.previous) }),
      ...(around.next === undefined ? {} : { next: turn(around.next) }),
    },
  };
}
