import type { Hours } from "../../compute/analysis.ts";
import type { Assembly } from "../../model/assembly.ts";
import { dateText, daysText, monthText, shortDate } from "../format/dates.ts";
import { hoursInWords, hoursText } from "../format/hours.ts";
import { places, rootOf } from "./addresses.ts";
import { type HoursGroup, hoursLists } from "./hours-list-pages.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Mention, Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { apartAnchor } from "./views/assembly-row.ts";
import { type HoursChart, hoursChart } from "./views/hours-chart.ts";
import { type Percent, percent } from "./views/measurement-strip.ts";
import { type PaceView, paceView } from "./views/pace-view.ts";

/** One row of a table of hours. */
export interface HoursRow {
  readonly name: Mention;
  /** How deep in the tree, from 0; only assemblies are deeper. */
  readonly depth: number;
  readonly build: string;
  /** Leads to its rows, where they stand elsewhere than those of `build`. */
  readonly apart: Mention;
  /** Of the whole build's hours. */
  readonly share: Percent;
}

/** A table of hours whose rows add up to its foot. */
export interface HoursTable {
  readonly id: string;
  readonly title: string;
  /** What one row is, and how the rows add up. */
  readonly says: string;
  readonly heading: string;
  readonly rows: readonly HoursRow[];
}

/** Every hour, and how it is counted. */
export interface HoursPage extends Page<"hours"> {
  readonly sentence: string;
  readonly chart?: HoursChart;
  readonly pace: PaceView;
  readonly tables: readonly HoursTable[];
  readonly total: { readonly build: string; readonly apart: string };
}

/** The page of hours. */
export function hoursPage(record: RecordIndex): HoursPage {
  const url = places.hours;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { build, hours, asOf } = record.analysis;
  const total = hoursText(hours.total.build);
  const apart = hoursText(hours.total.apart);
  const sum = (of: Sum["of"]) => ({ of, href: "#by-month" });
  const sessions = build.days.reduce((sum, day) => sum + day.sessions.length, 0);
  const chart = hoursChart(
    hours,
    build.days.flatMap((day) => day.amendments),
  );
  const first = build.days[0]?.date;
  const last = build.days.at(-1)?.date;
  return {
    kind: "hours",
    styles: ["chart.css"],
    url,
    root,
    part: "hours",
    title: "Hours",
    description: `${total} hours of building on ${daysText(build.days.length)}, by assembly, person, role, kind and month.`,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    dimension: {
      ...(first === undefined ? {} : { from: `${shortDate(first)} ${first.slice(0, 4)}` }),
      ...(last === undefined ? {} : { to: `${shortDate(last)} ${last.slice(0, 4)}` }),
      figure: total,
      says: "hours of building",
      sum: sum("build"),
    },
    sentence:
      `${total} is the sum of ${sessions} sessions on ${daysText(build.days.length)}: ` +
      `${hoursInWords(hours.total.build)} of fabricating, assembling, inspecting and rework, ` +
      "each person present counted with all the minutes of the session, nothing rounded. " +
      `Study and shop, ${apart}, are counted apart and are not in it.`,
    ...(chart ? { chart } : {}),
    pace: paceView(record),
    tables: tablesOf(record, links),
    total: { build: total, apart },
    block: {
      title: "Hours",
      number: "hours",
      cells: [
        { label: "hours to date", value: total, sum: sum("build") },
        { label: "study and shop", value: apart, sum: sum("apart") },
        { label: "as of", value: dateText(asOf.date) },
      ],
    },
    search: { filters: [["sheet", "hours"]], meta: { title: "Hours" }, sort: {} },
  };
}

function tablesOf(record: RecordIndex, links: Links): HoursTable[] {
  const { build, hours } = record.analysis;
  const row = (name: Mention, of: Hours, depth = 0, apartHref?: string): HoursRow => ({
    name,
    depth,
    build: hoursText(of.build),
    apart: {
      text: hoursText(of.apart),
      ...(apartHref === undefined || of.apart === 0 ? {} : { href: apartHref }),
    },
    share: percent((100 * of.build) / Math.max(1, hours.total.build)),
  });
  const lists = (group: HoursGroup) =>
    hoursLists(record, group).map(({ name, url, lines }) => {
      const sum = (apart: boolean) =>
        lines.reduce((all, line) => all + (line.apart === apart ? line.minutes : 0), 0);
      return row({ text: name, href: links.to(url) }, { build: sum(false), apart: sum(true) });
    });
  const tree = (assembly: Assembly, depth: number): HoursRow[] => [
    row(
      links.assembly(assembly.id),
      hours.byAssemblyRolledUp.get(assembly.id) ?? { build: 0, apart: 0 },
      depth,
      links.to(record.addresses.assembly(assembly.id), apartAnchor(assembly)),
    ),
    ...assembly.children.flatMap((id) => {
      const child = build.assemblies.get(id);
      return child ? tree(child, depth + 1) : [];
    }),
  ];
  return [
    {
      id: "by-assembly",
      title: "By assembly",
      heading: "assembly",
      says: "Each assembly with everything below it; the outermost ones add up.",
      rows: record.roots.flatMap((assembly) => tree(assembly, 0)),
    },
    {
      id: "by-month",
      title: "By month",
      heading: "month",
      says: "A session over midnight belongs to the day it is entered under.",
      rows: [...hours.byMonth].map(([month, of]) =>
        row({ text: monthText(month), href: links.to(record.addresses.month(month)) }, of),
      ),
    },
    {
      id: "by-person",
      title: "By person",
      heading: "person",
      says:
        record.edition === "public"
          ? "People who did not ask to be named stand together under their role."
          : "Everybody who worked.",
      rows: lists("person"),
    },
    {
      id: "by-role",
      title: "By role",
      heading: "role",
      says: "The role at each session, which may differ from one to the next.",
      rows: lists("role"),
    },
    {
      id: "by-kind",
      title: "By kind of work",
      heading: "kind",
      says: "Study and shop are the two kinds that are counted apart.",
      rows: lists("kind"),
    },
  ];
}
