import { grouped } from "../../compute/grouped.ts";
import { type CalendarDate, type CalendarMonth, monthOf } from "../../model/calendar.ts";
import { dateText, monthText, shortDate } from "../format/dates.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { dayTitle } from "./views/day-title.ts";

/** Something that was added to the record, or corrected in it. */
export interface Change {
  /** When it was written down, and that in short: `14 Mar`. */
  readonly date: CalendarDate;
  readonly on: string;
  readonly sheet: Mention;
  /** `new sheet, 14 March 2026`, `corrected: sessions[1].hours`. */
  readonly says: string;
}

/** What was written down in one month. */
export interface ChangeGroup {
  readonly month: CalendarMonth;
  readonly text: string;
  readonly changes: readonly Change[];
}

/** Every change by the date it was written down, newest first. */
export interface ChangesPage extends Page<"changes"> {
  readonly groups: readonly ChangeGroup[];
  /** All changes ever, those no longer listed too: what a reader's browser may remember. */
  readonly total: number;
  readonly days: Link;
}

const shown = 60;

/** The page of changes. */
export function changesPage(record: RecordIndex): ChangesPage {
  const url = places.changes;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { build, asOf } = record.analysis;
  const all = record.shownDays.flatMap((day) => {
    const written = day.written?.local.slice(0, 10) ?? day.date;
    const title = dayTitle(day, build.assemblies);
    return [
      {
        date: written,
        sheet: { ...links.day(day.date), text: title },
        says: `new sheet, ${dateText(day.date)}`,
      },
      ...day.amendments.map(({ day: corrected, field }) => ({
        date: written,
        sheet: links.day(corrected),
        says: `corrected: ${field}`,
      })),
    ];
  });
  const newest = all
    .toSorted((one, other) => Number(one.date < other.date) - Number(one.date > other.date))
    .slice(0, shown);
  return {
    kind: "changes",
    url,
    root,
    part: "days",
    title: "What has changed",
    description: "New sheets and corrections by the date they were written down, newest first.",
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    groups: [...grouped(newest, ({ date }) => monthOf(date))].map(([month, changes]) => ({
      month,
      text: monthText(month),
      changes: changes.map((change) => ({ ...change, on: shortDate(change.date) })),
    })),
    total: all.length,
    days: placeLink(root, "home", "every month"),
    script: "changes.js",
    styles: ["search.css"],
    block: {
      title: "What has changed",
      number: "changes",
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "changes", value: String(all.length) },
        {
          label: "newest",
          value: newest[0] ? `${shortDate(newest[0].date)} ${newest[0].date.slice(0, 4)}` : "none",
        },
      ],
    },
  };
}
