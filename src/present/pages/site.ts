import { ruleSets } from "../../model/published/rule-sets.ts";
import { publishedTables } from "../../model/published/tables.ts";
import { noonOf } from "../feeds/timestamp.ts";
import { caution, type Edition, editionNote } from "../record/edition.ts";
import { type MonthReport, monthReports } from "../report/month-report.ts";
import { type Badge, badgeOf } from "../share/badge.ts";
import {
  recordShare,
  type SharePicture,
  type ShareSheet,
  shareSheets,
} from "../share/share-sheet.ts";
import { type Template, templatesOf } from "../templates/template.ts";
import { hrefTo, places, siteAddress } from "./addresses.ts";
import { type AssembliesPage, assembliesPage } from "./assemblies-page.ts";
import { type AssemblyPage, assemblyPage } from "./assembly-page.ts";
import { authorOf } from "./author.ts";
import { type BalancePage, balancePage } from "./balance-page.ts";
import { type ChangesPage, changesPage } from "./changes-page.ts";
import { type DayPage, dayPage } from "./day-page.ts";
import { type HelpPage, helpPage } from "./help-page.ts";
import { type HomePage, homePage } from "./home-page.ts";
import { type HoursListPage, hoursGroups, hoursListPage, hoursLists } from "./hours-list-pages.ts";
import { type HoursPage, hoursPage } from "./hours-page.ts";
import {
  type InWordsPage,
  inWordsPage,
  type LimitSetPage,
  type LimitsPage,
  type LimitTablePage,
  limitSetPage,
  limitsPage,
  limitTablePage,
} from "./limits-page.ts";
import { type MaterialsPage, materialsPage } from "./materials-page.ts";
import { type MonthPage, monthPage } from "./month-page.ts";
import { type OpenItemsPage, openItemsPage } from "./open-items-page.ts";
import type { Part } from "./page.ts";
import {
  type PhotographMonthPage,
  type PhotographsPage,
  photographMonthPage,
  photographsPage,
} from "./photographs-page.ts";
import { type PortionPage, portionPage } from "./portion-page.ts";
import { type ReadingsPage, type RulePage, readingsPage, rulePage } from "./readings-page.ts";
import { type RecordIndex, recordIndex, type SiteInput } from "./record-index.ts";
import { type StepPage, stepPage } from "./step-page.ts";
import { type StoryPage, storyPage } from "./story-page.ts";
import {
  type AboutPage,
  aboutPage,
  type NotFoundPage,
  notFoundPage,
  type RecordPage,
  recordPage,
  type SearchPage,
  searchPage,
} from "./text-pages.ts";

/** What stands around every page. */
export interface Shell {
  readonly title: string;
  readonly designation: string;
  readonly serial: string;
  readonly edition: Edition;
  /** Which edition this is and what it lacks. */
  readonly editionNote: string;
  readonly caution: string;
  /** The index of sheets; `url` is from the site's root and names the file. */
  readonly nav: readonly { readonly part: Part; readonly text: string; readonly url: string }[];
  /** The pages about the record, for the foot. */
  readonly foot: readonly { readonly text: string; readonly url: string }[];
  /** Where the site stands, with its closing slash; absent while unknown. */
  readonly address?: string;
  /** What stands for a page that has no picture of its own; absent while the address is unknown. */
  readonly share?: SharePicture;
  /** For the feeds: what tells this project from every other and never changes. */
  readonly identity: string;
  /** Who writes, as the edition may name them. */
  readonly author: string;
  /** RFC 3339. */
  readonly begun: string;
}

/** Pages by kind, each list in the order they are turned. */
export interface SitePages {
  readonly home: readonly HomePage[];
  readonly month: readonly MonthPage[];
  readonly day: readonly DayPage[];
  readonly assemblies: readonly AssembliesPage[];
  readonly assembly: readonly AssemblyPage[];
  readonly step: readonly StepPage[];
  readonly hours: readonly HoursPage[];
  readonly hoursList: readonly HoursListPage[];
  readonly readings: readonly ReadingsPage[];
  readonly rule: readonly RulePage[];
  /** One, or none when the journal keeps no register of weight and balance. */
  readonly balance: readonly BalancePage[];
  /** One, or none when the journal keeps no major-portion sheet. */
  readonly portion: readonly PortionPage[];
  /** One, or none when the journal keeps no register of help. */
  readonly help: readonly HelpPage[];
  readonly open: readonly OpenItemsPage[];
  readonly photographs: readonly PhotographsPage[];
  readonly photographMonth: readonly PhotographMonthPage[];
  readonly limits: readonly LimitsPage[];
  readonly limitSet: readonly LimitSetPage[];
  readonly limitTable: readonly LimitTablePage[];
  readonly inWords: readonly InWordsPage[];
  readonly story: readonly StoryPage[];
  readonly changes: readonly ChangesPage[];
  readonly materials: readonly MaterialsPage[];
  readonly search: readonly SearchPage[];
  readonly record: readonly RecordPage[];
  readonly about: readonly AboutPage[];
  readonly notFound: readonly NotFoundPage[];
}

/** A whole site as values: every page finished, nothing left to be looked up. */
export interface Site {
  readonly shell: Shell;
  readonly pages: SitePages;
  /** Sheets to be printed at full size, which days link to. */
  readonly templates: readonly Template[];
  /** A sheet to be printed for each month, oldest first; none in the private edition. */
  readonly reports: readonly MonthReport[];
  readonly badge: Badge;
  /** Share pictures to be drawn; none while the address is unknown. */
  readonly shareSheets: readonly ShareSheet[];
}

/**
 * The pages of a site, for one edition. Nothing private is in those of the public one; hours
 * are in its totals all the same.
 *
 * @param input `diagnostics` are the findings of reading and of the checks together.
 */
export function sitePages(input: SiteInput): Site {
  const record = recordIndex(input);
  const { build } = record.analysis;
  const months = [...record.daysByMonth.keys()];
  const photoMonths = [...record.photosByMonth.keys()];
  const balance = balancePage(record);
  const portion = portionPage(record);
  const help = helpPage(record);
  return {
    shell: shellOf(record),
    pages: {
      home: [homePage(record)],
      month: months.map((month, index) => monthPage(record, month, around(months, index))),
      day: record.shownDays.map((day) => dayPage(record, day)),
      assemblies: [assembliesPage(record)],
      assembly: [...build.assemblies.values()].map((each) => assemblyPage(record, each)),
      step: [...build.steps.values()].map((each) => stepPage(record, each)),
      hours: [hoursPage(record)],
      hoursList: hoursGroups.flatMap((group) =>
        hoursLists(record, group).map((list) => hoursListPage(record, list)),
      ),
      readings: [readingsPage(record)],
      rule: [...build.rules.values()].map((rule) => rulePage(record, rule)),
      balance: balance ? [balance] : [],
      portion: portion ? [portion] : [],
      help: help ? [help] : [],
      open: [openItemsPage(record)],
      photographs: [photographsPage(record)],
      photographMonth: photoMonths.map((month, index) =>
        photographMonthPage(record, month, around(photoMonths, index)),
      ),
      limits: [limitsPage(record)],
      limitSet: [...ruleSets.values()].map((set) => limitSetPage(record, set)),
      limitTable: publishedTables.map(limitTablePage),
      inWords: [inWordsPage()],
      story: [storyPage(record)],
      changes: [changesPage(record)],
      materials: [materialsPage(record)],
      search: [searchPage(record)],
      record: [recordPage(record)],
      about: [aboutPage(record)],
      notFound: [notFoundPage(record)],
    },
    templates: templatesOf(record),
    reports: monthReports(record),
    badge: badgeOf(record),
    shareSheets: shareSheets(record),
  };
}

const partNames: Record<Part, { readonly text: string; readonly place: keyof typeof places }> = {
  days: { text: "Days", place: "home" },
  assemblies: { text: "Assemblies", place: "assemblies" },
  hours: { text: "Hours", place: "hours" },
  readings: { text: "Readings", place: "readings" },
  balance: { text: "Balance", place: "balance" },
  portion: { text: "Portion", place: "portion" },
  open: { text: "Open items", place: "open" },
  photographs: { text: "Photographs", place: "photographs" },
  limits: { text: "Limits", place: "limits" },
  search: { text: "Search", place: "search" },
};

// Parts that are there only where the journal keeps the register behind them.
const kept = ["balance", "portion"] as const;
const isKept = (part: Part): part is (typeof kept)[number] =>
  kept.some((register) => register === part);

function shellOf(record: RecordIndex): Shell {
  const { project } = record.analysis.build;
  return {
    title: project.title,
    designation: project.designation,
    serial: project.serial,
    edition: record.edition,
    editionNote: editionNote(record),
    caution,
    nav: (Object.keys(partNames) as Part[])
      .filter((part) => !isKept(part) || record.analysis[part] !== undefined)
      .map((part) => ({
        part,
        text: partNames[part].text,
        url: hrefTo("", places[partNames[part].place]),
      })),
    foot: [
      { text: "The story so far", url: hrefTo("", places.story) },
      { text: "What has changed", url: hrefTo("", places.changes) },
      { text: "Materials", url: hrefTo("", places.materials) },
      ...(record.analysis.help ? [{ text: "Help received", url: hrefTo("", places.help) }] : []),
      { text: "How this record is kept", url: hrefTo("", places.record) },
      { text: "About, and what this is not", url: hrefTo("", places.about) },
    ],
    ...(project.address === undefined
      ? {}
      : { address: siteAddress(project.address), share: recordShare(record) }),
    identity: `${project.designation} ${project.serial} ${project.begun}`,
    author: authorOf(record),
    begun: noonOf(project.begun),
  };
}

function around<Item>(
  items: readonly Item[],
  index: number,
): { readonly previous?: Item; readonly next?: Item } {
  const previous = items[index - 1];
  const next = items[index + 1];
  return {
    ...(previous === undefined ? {} : { previous }),
    ...(next === undefined ? {} : { next }),
  };
}
