import { ruleSets } from "../../model/published/rule-sets.ts";
import type { Seal } from "../../model/seal.ts";
import { dateText, daysText, monthText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { badgeCode, badgeOf, badgeSize, badgeUrl } from "../share/badge.ts";
import { places, rootOf, siteAddress } from "./addresses.ts";
import type { AmendmentView } from "./day-page.ts";
import { type Links, linksFrom, placeLink } from "./links.ts";
import type { Link, Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { monthRulers } from "./views/month-ruler.ts";

/** The page that searches, and the lists that stand in for it where scripts do not run. */
export interface SearchPage extends Page<"search"> {
  readonly months: readonly { readonly month: Link; readonly says: string }[];
  readonly assemblies: readonly Link[];
}

/** How the record is kept: what its entries, numbers and corrections are worth. */
export interface RecordPage extends Page<"record"> {
  readonly zone: string;
  readonly assertions: number;
  /** Entries written down on a later day, oldest first. */
  readonly late: readonly { readonly day: Mention; readonly days: string }[];
  /** Every correction, by the day that carries it. */
  readonly amendments: readonly (AmendmentView & { readonly on: Mention })[];
  /** Oldest first. */
  readonly seals: readonly SealRow[];
}

/** One seal in the list of all. */
export interface SealRow {
  readonly month: Mention;
  /** The whole digest in pieces of sixteen digits; the first twelve digits are the short seal. */
  readonly digest: readonly string[];
  /** `10 days, 17 photographs`. */
  readonly names: string;
  /** Hours of building when it was sealed. */
  readonly hours: string;
  /** The same to date. */
  readonly toDate: string;
  /** Hours of the month now, where an amendment changed them since. */
  readonly now?: string;
}

/** What this site is, and what it is not. */
export interface AboutPage extends Page<"about"> {
  readonly summary: string;
  readonly people: readonly { readonly name: string; readonly says: string }[];
  readonly record: Link;
  readonly limits: Link;
  readonly sets: number;
  /** The hours as a drawing for other sites, and what to copy into a page to show it. */
  readonly badge: {
    readonly src: string;
    readonly alt: string;
    readonly width: number;
    readonly height: number;
    readonly code: string;
  };
}

/** What is served for an address that has no page. */
export interface NotFoundPage extends Page<"not found"> {
  readonly ways: readonly Link[];
}

/** The search page. */
export function searchPage(record: RecordIndex): SearchPage {
  const url = places.search;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  return {
    ...frame(record, url, "search", "Search"),
    kind: "search",
    part: "search",
    styles: ["search.css"],
    script: "search.js",
    description: `Search the record of ${record.analysis.build.project.title}.`,
    months: monthRulers(record, links).map(({ month, hours, days }) => ({
      month,
      says: `${days}, ${hours} hours`,
    })),
    assemblies: [...record.analysis.build.assemblies.keys()].map((id) => links.assembly(id)),
  };
}

/** The page about how the record is kept. */
export function recordPage(record: RecordIndex): RecordPage {
  const { build } = record.analysis;
  const links = linksFrom(record, rootOf(places.record));
  return {
    ...frame(record, places.record, "record", "How this record is kept"),
    kind: "record",
    description:
      "Who writes it, when, what is counted, what can be corrected and how that is shown.",
    zone: build.project.zone,
    assertions: build.days.reduce((sum, day) => sum + day.assertions.length, 0),
    late: record.shownDays
      .filter(({ late }) => late > 0)
      .map(({ date, late }) => ({ day: links.day(date), days: daysText(late) })),
    amendments: build.days
      .flatMap((day) => day.amendments)
      .map(({ field, was, now, why, day, date }) => ({
        ...{ field, was, now, why },
        day: links.day(day),
        on: links.day(date),
      })),
    seals: build.seals.map((seal) => sealRow(record, links, seal)),
    search: {
      filters: [["sheet", "about"]],
      meta: { title: "How this record is kept" },
      sort: {},
    },
  };
}

function sealRow(record: RecordIndex, links: Links, seal: Seal): SealRow {
  const now = record.analysis.hours.byMonth.get(seal.month)?.build ?? 0;
  const { month, digest, entries, photos, inMonth, toDate } = seal;
  return {
    // A month may be sealed without an entry, and then has no page.
    month: record.daysByMonth.has(month)
      ? { text: monthText(month), href: links.to(record.addresses.month(month)) }
      : { text: monthText(month) },
    digest: digest.match(/.{16}/g) ?? [digest],
    names: [
      daysText(entries.length),
      `${photos.length} ${photos.length === 1 ? "photograph" : "photographs"}`,
    ].join(", "),
    hours: hoursText(inMonth.build),
    toDate: hoursText(toDate.build),
    ...(now === inMonth.build ? {} : { now: hoursText(now) }),
  };
}

/** The page about the site and its cautions. */
export function aboutPage(record: RecordIndex): AboutPage {
  const { build } = record.analysis;
  const root = rootOf(places.about);
  const title = "About, and what this is not";
  return {
    ...frame(record, places.about, "about", title),
    kind: "about",
    styles: ["badge.css"],
    description: `What the record of ${build.project.title} is for, and what governs instead of it.`,
    summary: build.project.summary,
    people: [...build.people.values()].map(({ name, role, standing }) => ({
      name,
      says: [name === role ? undefined : role, standing].filter(Boolean).join(", "),
    })),
    record: placeLink(root, "record", "How this record is kept"),
    limits: placeLink(root, "limits", "Where the limits come from"),
    sets: ruleSets.size,
    badge: {
      ...badgeSize,
      src: `${root}${badgeUrl}`,
      alt: badgeOf(record).says,
      code: badgeCode(
        build.project.address === undefined ? undefined : siteAddress(build.project.address),
        build.project,
      ),
    },
    search: { filters: [["sheet", "about"]], meta: { title }, sort: {} },
  };
}

/**
 * The page for a wrong address. A host shows it in place of any address, so its links cannot be
 * relative: they start at `base`, or at the host's root while that is not known. Opened as a
 * file it is the one page whose links lead nowhere.
 */
export function notFoundPage(record: RecordIndex): NotFoundPage {
  const root = record.base ?? "/";
  return {
    ...frame(record, places.notFound, "not found", "No such sheet"),
    kind: "not found",
    root,
    description: "There is no page at this address.",
    ways: [
      placeLink(root, "home", "the newest days"),
      placeLink(root, "assemblies", "assemblies"),
      placeLink(root, "search", "search"),
    ],
  };
}

function frame(record: RecordIndex, url: string, number: string, title: string) {
  const { asOf, build } = record.analysis;
  return {
    url,
    root: rootOf(url),
    title,
    over: [],
    block: {
      title,
      number,
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "days", value: String(build.days.length) },
      ],
    },
  };
}
