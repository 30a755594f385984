import type { HoursLine } from "../../compute/analysis.ts";
import { grouped } from "../../compute/grouped.ts";
import { roles } from "../../model/person.ts";
import { workKinds } from "../../model/session.ts";
import { dateText, shortDate } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { places, rootOf, slugs } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type BookedMonth, bookedMonths } from "./views/booked-days.ts";

/** By what the hours are listed. */
export const hoursGroups = ["person", "role", "kind"] as const;
export type HoursGroup = (typeof hoursGroups)[number];

/** The hours of one person, role or kind of work. */
export interface HoursList {
  readonly group: HoursGroup;
  /** As the edition names it. */
  readonly name: string;
  readonly url: string;
  /** By date. */
  readonly lines: readonly HoursLine[];
}

/** Every session that a figure by person, role or kind is the sum of. */
export interface HoursListPage extends Page<"hours list"> {
  readonly build: readonly BookedMonth[];
  readonly apart: readonly BookedMonth[];
  readonly total: { readonly build: string; readonly apart: string };
}

/**
 * The lists of one group: people by the name that the edition gives, most hours first, so that
 * two known only by one role are one list; roles and kinds in their own order.
 */
export function hoursLists(record: RecordIndex, group: HoursGroup): HoursList[] {
  const { lines } = record.analysis.hours;
  const minutes = (of: readonly HoursLine[]) => of.reduce((sum, line) => sum + line.minutes, 0);
  const byName = grouped(lines, (line) =>
    group === "person" ? record.person(line.person, line.role) : line[group],
  );
  const order: readonly string[] =
    group === "role"
      ? roles
      : group === "kind"
        ? workKinds
        : [...byName].sort(([, a], [, b]) => minutes(b) - minutes(a)).map(([name]) => name);
  const names = order.filter((name) => minutes(byName.get(name) ?? []) > 0);
  const slugOf = slugs(names);
  return names.map((name) => ({
    group,
    name,
    url: `${places.hours}${group}/${slugOf.get(name) ?? name}/`,
    lines: byName.get(name) ?? [],
  }));
}

const titles: Readonly<Record<HoursGroup, (name: string) => string>> = {
  person: (name) => `Hours: ${name}`,
  role: (name) => `Hours as ${name}`,
  kind: (name) => `Hours: ${name}`,
};

/** The page of one list. */
export function hoursListPage(record: RecordIndex, list: HoursList): HoursListPage {
  const { url, lines, group, name } = list;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const sum = (apart: boolean) =>
    hoursText(lines.reduce((all, line) => all + (line.apart === apart ? line.minutes : 0), 0));
  const total = { build: sum(false), apart: sum(true) };
  const first = lines[0]?.date;
  const last = lines.at(-1)?.date;
  const onlyApart = total.build === hoursText(0);
  const title = titles[group](name);
  const cell = (label: string, value: string, rows: Sum) => ({
    label,
    value,
    ...(value === hoursText(0) ? {} : { sum: rows }),
  });
  return {
    kind: "hours list",
    url,
    root,
    part: "hours",
    title,
    description: `${total.build} hours of building and ${total.apart} of study and shop, session by session.`,
    over: [placeLink(root, "hours", "hours"), { text: `by ${group}` }],
    dimension: {
      ...(first === undefined ? {} : { from: `${shortDate(first)} ${first.slice(0, 4)}` }),
      ...(last === undefined ? {} : { to: `${shortDate(last)} ${last.slice(0, 4)}` }),
      figure: onlyApart ? total.apart : total.build,
      says: onlyApart ? "hours of study and shop" : "hours of building",
      sum: onlyApart ? { of: "apart", href: "#apart" } : { of: "build", href: "#building" },
    },
    build: bookedMonths(record, links, lines, false),
    apart: bookedMonths(record, links, lines, true),
    total,
    block: {
      title,
      number: `hours by ${group}`,
      cells: [
        cell("building", total.build, { of: "build", href: "#building" }),
        cell("study and shop", total.apart, { of: "apart", href: "#apart" }),
        { label: "as of", value: dateText(record.analysis.asOf.date) },
      ],
    },
  };
}
