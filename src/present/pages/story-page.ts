import type { Assembly } from "../../model/assembly.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { dateText, daysText, shortDate } from "../format/dates.ts";
import { hoursInWords } from "../format/hours.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { assemblyRow } from "./views/assembly-row.ts";
import { type DayRow, timelineRows } from "./views/timeline-row.ts";

/** The story so far, for people who come upon it late: the days on which something began or ended. */
export interface StoryPage extends Page<"story"> {
  readonly summary: string;
  /** How long and how much, in a sentence. */
  readonly sentence: string;
  /** Oldest first. */
  readonly rows: readonly DayRow[];
  /** Where to read on. */
  readonly ways: readonly Mention[];
}

/** Of the tree: the outermost assemblies and their parts. What lies deeper would be a list. */
const deepest = 2;

/** The story, told by the first and last days of assemblies. Nothing is chosen by taste. */
export function storyPage(record: RecordIndex): StoryPage {
  const url = places.story;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { build, hours, asOf } = record.analysis;
  const { project } = build;
  const events = eventsOf(record);
  const days = build.days.filter(({ date }) => events.has(date));
  const rows = timelineRows(record, links, days, yearDate).flatMap((row) =>
    row.kind === "day" ? [{ ...row, marks: events.get(row.date) ?? [] }] : [],
  );
  const first = build.days[0]?.date;
  const last = build.days.at(-1)?.date;
  return {
    kind: "story",
    url,
    root,
    part: "days",
    title: "The story so far",
    description: `${project.title}: the days on which its assemblies were begun and closed.`,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    summary: project.summary,
    sentence:
      first === undefined || last === undefined
        ? "Nothing has been entered yet."
        : `From ${dateText(first)} to ${dateText(last)}: ${daysText(build.days.length)} in the shop, ` +
          `${hoursInWords(hours.total.build)} of building.`,
    rows,
    ways: [
      placeLink(root, "home", "the newest days"),
      placeLink(root, "assemblies", "every assembly and how far it is"),
      placeLink(root, "photographs", "photographs by month"),
      placeLink(root, "open", "what is open"),
    ],
    block: {
      title: "The story so far",
      number: "story",
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "days told of", value: `${rows.length} of ${build.days.length}` },
      ],
    },
    search: { filters: [["sheet", "index"]], meta: { title: "The story so far" }, sort: {} },
  };
}

function eventsOf(record: RecordIndex): ReadonlyMap<CalendarDate, readonly string[]> {
  const { build } = record.analysis;
  const links = linksFrom(record, "");
  const events = new Map<CalendarDate, string[]>();
  const add = (date: CalendarDate | undefined, what: string) => {
    if (date !== undefined) events.set(date, [...(events.get(date) ?? []), what]);
  };
  add(build.days[0]?.date, "The first entry");
  for (const assembly of build.assemblies.values()) {
    if (assembly.path.length > deepest) continue;
    const dates = datesOf(record, assembly);
    add(dates[0], `${assembly.title}: begun`);
    const { standing } = assemblyRow(record, links, assembly, 0);
    if (standing === "closed") add(dates.at(-1), `${assembly.title}: closed`);
  }
  const last = build.days.at(-1)?.date;
  if (build.days.length > 1) add(last, "The newest entry");
  return events;
}

/** Days with anything booked to the assembly or below it, oldest first. */
function datesOf(record: RecordIndex, assembly: Assembly): CalendarDate[] {
  const own = (record.linesByAssembly.get(assembly.id) ?? []).map(({ date }) => date);
  const below = assembly.children.flatMap((id) => {
    const child = record.analysis.build.assemblies.get(id);
    return child ? datesOf(record, child) : [];
  });
  return [...new Set([...own, ...below])].sort();
}

function yearDate(date: CalendarDate): string {
  return `${shortDate(date)} ${date.slice(0, 4)}`;
}
