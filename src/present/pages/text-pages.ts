import { ruleSets } from "../../model/published/rule-sets.ts";
import { dateText } from "../format/dates.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Page } from "./page.ts";
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
  readonly lateDays: number;
  readonly amendments: number;
}

/** What this site is, and what it is not. */
export interface AboutPage extends Page<"about"> {
  readonly summary: string;
  readonly people: readonly { readonly name: string; readonly says: string }[];
  readonly record: Link;
  readonly limits: Link;
  readonly sets: number;
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
  return {
    ...frame(record, places.record, "record", "How this record is kept"),
    kind: "record",
    description:
      "Who writes it, when, what is counted, what can be corrected and how that is shown.",
    zone: build.project.zone,
    assertions: build.days.reduce((sum, day) => sum + day.assertions.length, 0),
    lateDays: build.days.filter(({ late }) => late > 0).length,
    amendments: build.days.reduce((sum, day) => sum + day.amendments.length, 0),
    search: {
      filters: [["sheet", "about"]],
      meta: { title: "How this record is kept" },
      sort: {},
    },
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
    description: `What the record of ${build.project.title} is for, and what governs instead of it.`,
    summary: build.project.summary,
    people: [...build.people.values()].map(({ name, role, standing }) => ({
      name,
      says: [name === role ? undefined : role, standing].filter(Boolean).join(", "),
    })),
    record: placeLink(root, "record", "How this record is kept"),
    limits: placeLink(root, "limits", "Where the limits come from"),
    sets: ruleSets.size,
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
