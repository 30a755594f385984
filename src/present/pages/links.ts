import type { CalendarDate } from "../../model/calendar.ts";
import { dateText, shortDate } from "../format/dates.ts";
import { anchorOf, hrefTo, places } from "./addresses.ts";
import type { Link, Mention } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";

/** Makes the links of one page; all are relative to it. */
export interface Links {
  readonly root: string;
  readonly to: (url: string, anchor?: string) => string;
  /** A day by its date in words; plain text for a day that the edition does not show. */
  readonly day: (date: CalendarDate, anchor?: string) => Mention;
  /** The same, short: `14 Mar`. */
  readonly shortDay: (date: CalendarDate, anchor?: string) => Mention;
  readonly assembly: (id: string) => Link;
  /** A step by its id. */
  readonly step: (id: string) => Link;
  readonly rule: (id: string) => Link;
  /** The place of a deviation on its day's sheet. */
  readonly deviation: (id: string, date: CalendarDate) => Mention;
  /** The place of a reading on its day's sheet; plain text when the edition does not show it. */
  readonly reading: (id: string) => Mention;
}

/** Links from the page whose way back to the root is `root`. */
export function linksFrom(record: RecordIndex, root: string): Links {
  const { addresses, showsDay } = record;
  const { build } = record.analysis;
  const to = (url: string, anchor?: string) => hrefTo(root, url, anchor);
  const dayAs = (text: string, date: CalendarDate, anchor?: string): Mention =>
    showsDay(date) && record.sheetOf.has(date)
      ? { text, href: to(addresses.day(date), anchor) }
      : { text };
  return {
    root,
    to,
    day: (date, anchor) => dayAs(dateText(date), date, anchor),
    shortDay: (date, anchor) => dayAs(shortDate(date), date, anchor),
    assembly: (id) => ({
      text: build.assemblies.get(id)?.title ?? id,
      href: to(addresses.assembly(id)),
    }),
    step: (id) => ({ text: id, href: to(addresses.step(id)) }),
    rule: (id) => ({ text: build.rules.get(id)?.title ?? id, href: to(addresses.rule(id)) }),
    deviation: (id, date) => dayAs(id, date, anchorOf("deviation", id)),
    reading: (id) => {
      const judged = record.readingById.get(id);
      return judged ? dayAs(id, judged.reading.date, anchorOf("reading", id)) : { text: id };
    },
  };
}

/** A link to one of the pages there is one of. */
export function placeLink(root: string, place: keyof typeof places, text: string): Link {
  return { text, href: hrefTo(root, places[place]) };
}
