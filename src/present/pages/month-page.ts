import type { CalendarDate, CalendarMonth } from "../../model/calendar.ts";
import { daysText, monthText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { reportUrl } from "../report/month-report.ts";
import { monthShare } from "../share/share-sheet.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom } from "./links.ts";
import type { Link, Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { lengthOf } from "./views/month-ruler.ts";
import { type SealMention, sealMention } from "./views/seal-mention.ts";
import { type TimelineRow, timelineRows } from "./views/timeline-row.ts";

/** The days of one month on one dimension line. */
export interface MonthPage extends Page<"month"> {
  /** Oldest first. */
  readonly rows: readonly TimelineRow[];
  /** Hours of study and shop, which are not in the figure; absent when there are none. */
  readonly apart?: string;
  /** Hours of building before this month. */
  readonly brought: { readonly text: string; readonly sum: Sum };
  /** The month on one sheet to be printed; absent in the private edition. */
  readonly report?: Link;
  /** Present once the month is closed. */
  readonly seal?: SealMention;
}

/** The page of one month that has at least one day. */
export function monthPage(
  record: RecordIndex,
  month: CalendarMonth,
  around: { readonly previous?: CalendarMonth; readonly next?: CalendarMonth },
): MonthPage {
  const url = record.addresses.month(month);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const days = record.daysByMonth.get(month) ?? [];
  const hours = record.analysis.hours.byMonth.get(month) ?? { build: 0, apart: 0 };
  const toDate = (date: CalendarDate) => record.analysis.hours.toDate.get(date)?.build ?? 0;
  const seal = sealMention(record, root, month);
  const title = monthText(month);
  const name = title.slice(0, 3);
  const turn = (to: CalendarMonth) => ({
    text: monthText(to),
    href: links.to(record.addresses.month(to)),
  });
  return {
    kind: "month",
    url,
    root,
    part: "days",
    title,
    description: `${daysText(days.length)} and ${hoursText(hours.build)} hours in ${title}.`,
    over: [{ text: daysText(days.length) }],
    dimension: {
      from: `1 ${name}`,
      to: `${lengthOf(month)} ${name}`,
      figure: hoursText(hours.build),
      says: "hours of building",
      sum: { of: "build", href: "#days" },
    },
    rows: timelineRows(record, links, days).map((row) =>
      row.kind === "gap" ? row : { ...row, toDate: hoursText(toDate(row.date)) },
    ),
    brought: {
      text: hoursText(toDate(days.at(-1)?.date ?? "") - hours.build),
      sum: { of: "build", href: links.to(places.hours, "by-month") },
    },
    ...(hours.apart > 0 ? { apart: hoursText(hours.apart) } : {}),
    ...(record.edition === "public"
      ? { report: { text: "The month on one sheet (PDF)", href: `${root}${reportUrl(month)}` } }
      : {}),
    ...(seal ? { seal } : {}),
    block: {
      title,
      number: `sheets ${record.sheetOf.get(days[0]?.date ?? "") ?? 0} to ${
        record.sheetOf.get(days.at(-1)?.date ?? "") ?? 0
      } of ${record.sheetOf.size}`,
      cells: [
        { label: "days", value: String(days.length) },
        {
          label: "hours this month",
          value: hoursText(hours.build),
          sum: { of: "build", href: "#days" },
        },
        {
          label: "study and shop",
          value: hoursText(hours.apart),
          sum: { of: "apart", href: "#days" },
        },
        { label: "seal", value: seal?.short ?? "not sealed" },
      ],
    },
    ...(record.analysis.build.project.address === undefined
      ? {}
      : { share: monthShare(record, month) }),
    turn: {
      ...(around.previous === undefined ? {} : { previous: turn(around.previous) }),
      ...(around.next === undefined ? {} : { next: turn(around.next) }),
    },
  };
}
