import { type CalendarDate, daysBetween } from "../../../model/calendar.ts";
import type { Day } from "../../../model/day.ts";
import { daysText, weekdayText } from "../../format/dates.ts";
import { hoursText } from "../../format/hours.ts";
import { excerpt } from "../../markdown/render-prose.ts";
import type { Links } from "../links.ts";
import type { RecordIndex } from "../record-index.ts";
import { dayTitle } from "./day-title.ts";
import { type Percent, percent } from "./measurement-strip.ts";
import { type ThumbnailView, thumbnailView } from "./photo-view.ts";

/** A day on the dimension line of its month. */
export interface DayRow {
  readonly kind: "day";
  /** `2026-03-14`. */
  readonly date: string;
  /** `Sat 14`, or `14 Mar` where several months stand together. */
  readonly label: string;
  readonly title: string;
  /** What the day is told for, where only some are. */
  readonly marks?: readonly string[];
  /** Absent for a day kept private, which has no sheet. */
  readonly href?: string;
  /** How its prose begins; absent when there is none. */
  readonly excerpt?: string;
  readonly hours: string;
  readonly apart?: string;
  /** Hours of building up to this day, where days stand in order from the month's first. */
  readonly toDate?: string;
  /** Length of its tick; the longest day of the record is 80 %, to leave room for the figure. */
  readonly length: Percent;
  readonly assemblies: readonly string[];
  /** `2 findings`, `1 deviation`, `3 photographs`; empty when there are none. */
  readonly findings?: string;
  readonly deviations?: string;
  readonly photographs?: string;
  readonly picture?: ThumbnailView;
}

/** A stretch without an entry. */
export interface GapRow {
  readonly kind: "gap";
  readonly text: string;
}

export type TimelineRow = DayRow | GapRow;

/** Fewer idle days than this are not worth a break in the line. */
const shortestGap = 5;

/** Days as rows, in the order given, with the stretches between them. */
export function timelineRows(
  record: RecordIndex,
  links: Links,
  days: readonly Day[],
  label: (date: CalendarDate) => string = weekdayAndDay,
): TimelineRow[] {
  return days.flatMap((day, index): TimelineRow[] => {
    const before = days[index - 1];
    const idle = before ? Math.abs(daysBetween(before.date, day.date)) - 1 : 0;
    const row = { ...dayRow(record, links, day), label: label(day.date) };
    return idle < shortestGap
      ? [row]
      : [{ kind: "gap", text: `${daysText(idle)} without an entry` }, row];
  });
}

function weekdayAndDay(date: CalendarDate): string {
  return `${weekdayText(date).slice(0, 3)} ${Number(date.slice(8))}`;
}

function dayRow(record: RecordIndex, links: Links, day: Day): Omit<DayRow, "label"> {
  const { date } = day;
  const { build } = record.analysis;
  const hours = record.analysis.hours.byDate.get(date) ?? { build: 0, apart: 0 };
  const photo = day.photos.find(({ file }) => record.pictures.has(file));
  const picture = photo ? thumbnailView(record, links, photo) : undefined;
  const assemblies = [...new Set(day.sessions.map(({ assembly }) => assembly))];
  const shown = record.showsDay(date);
  return {
    kind: "day",
    date,
    title: shown ? dayTitle(day, build.assemblies) : "Kept private: the hours alone",
    ...(shown ? { href: links.to(record.addresses.day(date)) } : {}),
    ...(day.prose.trim() === "" ? {} : { excerpt: excerpt(day.prose, 150) }),
    hours: hoursText(hours.build),
    ...(hours.apart > 0 ? { apart: hoursText(hours.apart) } : {}),
    length: percent((80 * hours.build) / record.longestDay),
    assemblies: assemblies.map((id) => build.assemblies.get(id)?.title ?? id),
    ...counted("findings", record.findingsByDate.get(date)?.length, "finding"),
    ...counted("deviations", record.deviationsByDate.get(date)?.length, "deviation"),
    ...counted("photographs", day.photos.length, "photograph"),
    ...(picture ? { picture } : {}),
  };
}

function counted<Key extends string>(
  key: Key,
  count: number | undefined,
  word: string,
): { readonly [key in Key]?: string } {
  if (!count) return {};
  return { [key]: `${count} ${word}${count === 1 ? "" : "s"}` } as { [key in Key]: string };
}
