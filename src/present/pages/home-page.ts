import { dateText, monthText, shortDate } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { excerpt } from "../markdown/render-prose.ts";
import { places } from "./addresses.ts";
import { authorOf } from "./author.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Mention, Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { recordData } from "./structured-data.ts";
import { type AssemblyRow, assemblyRow } from "./views/assembly-row.ts";
import { dayTitle } from "./views/day-title.ts";
import { type MonthRuler, monthRulers } from "./views/month-ruler.ts";
import { type PhotoView, photoView } from "./views/photo-view.ts";
import { type TimelineRow, timelineRows } from "./views/timeline-row.ts";

/** One figure of where the build stands. */
export interface Standing {
  readonly figure: string;
  readonly says: Mention;
  /** True when it asks for attention. */
  readonly wants: boolean;
}

/** The first sheet: what is being built, where it stands, the newest days, every month. */
export interface HomePage extends Page<"home"> {
  readonly summary: string;
  readonly standings: readonly Standing[];
  /** The newest day that has a sheet. */
  readonly latest?: {
    readonly day: Link;
    readonly title: string;
    readonly excerpt: string;
    readonly hours: string;
    readonly photo?: PhotoView;
    readonly next: readonly string[];
  };
  /** The days before the newest, newest first, and the month they lead on to. */
  readonly newest?: { readonly month: Link; readonly rows: readonly TimelineRow[] };
  readonly months: readonly MonthRuler[];
  readonly assemblies: readonly AssemblyRow[];
}

const newestShown = 6;

/** The home page. */
export function homePage(record: RecordIndex): HomePage {
  const { analysis, addresses } = record;
  const { build, hours, asOf } = analysis;
  const { project } = build;
  const links = linksFrom(record, "");
  const last = record.shownDays.at(-1);
  const newestMonth = build.days.at(-1)?.date.slice(0, 7);
  const newestDays = build.days.slice(-newestShown - 1, -1).reverse();
  const photo = last?.photos.find(({ file }) => record.pictures.has(file));
  const total = hoursText(hours.total.build);
  const structured = recordData(project, authorOf(record));
  const sum = (of: Sum["of"]) => ({ of, href: links.to(places.hours, "by-month") });
  return {
    kind: "home",
    url: places.home,
    root: "",
    part: "days",
    title: project.title,
    description: project.summary,
    over: [
      ...(project.registration === undefined ? [] : [{ text: project.registration }]),
      { text: project.basis },
      placeLink("", "story", "the story so far"),
      placeLink("", "changes", "what has changed"),
    ],
    dimension: {
      from: `begun ${shortDate(project.begun)} ${project.begun.slice(0, 4)}`,
      to: `${shortDate(asOf.date)} ${asOf.date.slice(0, 4)}`,
      figure: total,
      says: "hours of building",
      sum: sum("build"),
    },
    summary: project.summary,
    standings: standingsOf(record),
    ...(last
      ? {
          latest: {
            day: { text: dateText(last.date), href: links.to(addresses.day(last.date)) },
            title: dayTitle(last, build.assemblies),
            excerpt: excerpt(last.prose, 320),
            hours: hoursText(hours.byDate.get(last.date)?.build ?? 0),
            ...(photo ? { photo: photoView(record, links, photo, 1) } : {}),
            next: last.next,
          },
        }
      : {}),
    ...(newestMonth === undefined
      ? {}
      : {
          newest: {
            month: { text: monthText(newestMonth), href: links.to(addresses.month(newestMonth)) },
            rows: timelineRows(record, links, newestDays, shortDate),
          },
        }),
    months: monthRulers(record, links),
    assemblies: record.roots.map((assembly) => assemblyRow(record, links, assembly, 1)),
    block: {
      title: project.title,
      number: "index",
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "hours to date", value: total, sum: sum("build") },
        { label: "study and shop", value: hoursText(hours.total.apart), sum: sum("apart") },
        { label: "days", value: String(build.days.length) },
        { label: "begun", value: dateText(project.begun) },
      ],
    },
    ...(structured === undefined ? {} : { structured }),
    search: {
      filters: [["sheet", "index"]],
      meta: { title: project.title },
      sort: {},
    },
  };
}

function standingsOf(record: RecordIndex): Standing[] {
  const { analysis } = record;
  const count = (figure: number, one: string, many: string, says: Link, wants: boolean) => ({
    figure: String(figure),
    says: { ...says, text: figure === 1 ? one : many },
    wants: wants && figure > 0,
  });
  const open = (text: string) => placeLink("", "open", text);
  const wait = analysis.cures.filter(({ over }) => !over).length;
  const holds = analysis.holds.filter(({ released }) => released === undefined).length;
  const squawks = analysis.squawks.filter(({ standing }) => standing !== "closed").length;
  const undecided = analysis.deviations.filter(({ open: still }) => still).length;
  const lastDate = analysis.build.days.at(-1)?.date;
  return [
    {
      figure: String(analysis.build.days.length),
      says: {
        text: `${analysis.build.days.length === 1 ? "day" : "days"}, the last ${
          lastDate === undefined ? "not yet come" : `on ${shortDate(lastDate)}`
        }`,
      },
      wants: false,
    },
    count(record.findings.length, "finding open", "findings open", open(""), true),
    count(undecided, "deviation undecided", "deviations undecided", open(""), true),
    count(squawks, "squawk open", "squawks open", open(""), false),
    count(wait, "cure not over", "cures not over", open(""), false),
    count(holds, "joint held only for now", "joints held only for now", open(""), false),
  ];
}
