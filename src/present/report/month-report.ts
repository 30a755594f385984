import type { CalendarDate, CalendarMonth, Minutes } from "../../model/calendar.ts";
import { monthOf } from "../../model/calendar.ts";
import { kindsApart, type WorkKind, workKinds } from "../../model/session.ts";
import { dateText, daysText, monthText, shortDate, weekdayText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { excerpt } from "../markdown/render-prose.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { dayTitle } from "../pages/views/day-title.ts";
import { lengthOf } from "../pages/views/month-ruler.ts";
import { caution, editionNote } from "../record/edition.ts";

/** Hours of one assembly in one month, by kind. */
export interface ReportAssembly {
  readonly title: string;
  /** In the order of `kinds`. */
  readonly byKind: readonly Minutes[];
  /** Of building; study and shop are not in it. */
  readonly build: Minutes;
}

/** A photograph on the report. */
export interface ReportPhoto {
  /** From the site's root: the smallest JPEG. */
  readonly url: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  readonly caption: string;
}

/** What one month came to, on one sheet to be printed. */
export interface MonthReport {
  readonly month: CalendarMonth;
  readonly title: string;
  readonly project: string;
  /** Designation, serial and registration. */
  readonly aircraft: string;
  /** The day of judgement. */
  readonly asOf: CalendarDate;
  readonly figure: string;
  /** What the month came to, in a sentence or two. */
  readonly sentence: string;
  /** One for each day: both from 0 to 1, along the month and up to the longest day. */
  readonly ticks: readonly { readonly at: number; readonly length: number }[];
  readonly from: string;
  readonly to: string;
  /** Kinds of work that have hours in this month, in their usual order. */
  readonly kinds: readonly WorkKind[];
  /** Most hours first. */
  readonly assemblies: readonly ReportAssembly[];
  readonly total: ReportAssembly;
  /** Oldest first. */
  readonly days: readonly {
    readonly date: string;
    readonly title: string;
    readonly hours: string;
    readonly minutes: Minutes;
  }[];
  readonly readings: string;
  /** Readings outside their limits, each as one line. */
  readonly outside: readonly string[];
  /** The newest of the month, at most three, and how many there are. */
  readonly photos: readonly ReportPhoto[];
  readonly photographs: string;
  /** What `open` was at: the end of the month, or the day of judgement in it. */
  readonly openAt: string;
  readonly open: readonly string[];
  readonly next: readonly string[];
  /** First digits of the seal; absent while the month is not sealed. */
  readonly seal?: string;
  readonly caution: string;
  readonly edition: string;
}

/** Where the report of a month stands, from the site's root. */
export function reportUrl(month: CalendarMonth): string {
  return `${month.replace("-", "/")}/report.pdf`;
}

/** A report for every month. None in the private edition: a report is made to be handed round. */
export function monthReports(record: RecordIndex): readonly MonthReport[] {
  if (record.edition === "private") return [];
  return [...record.daysByMonth.keys()].map((month) => monthReport(record, month));
}

function monthReport(record: RecordIndex, month: CalendarMonth): MonthReport {
  const { build, hours, asOf } = record.analysis;
  const days = record.daysByMonth.get(month) ?? [];
  const shown = days.filter(({ date }) => record.showsDay(date));
  const title = monthText(month);
  const length = lengthOf(month);
  const lastOfMonth = `${month}-${String(length).padStart(2, "0")}`;
  const end = asOf.date < lastOfMonth ? asOf.date : lastOfMonth;
  const total = hours.byMonth.get(month) ?? { build: 0, apart: 0 };
  const toDate = hours.toDate.get(days.at(-1)?.date ?? "")?.build ?? 0;
  const figure = hoursText(total.build);
  const readings = record.analysis.readings.filter(
    ({ reading }) => monthOf(reading.date) === month,
  );
  const photos = record.photosByMonth.get(month) ?? [];
  const { project } = build;
  const seal = record.sealByMonth.get(month);
  const hourRows = assembliesOf(record, month);
  const last = shown.at(-1);
  return {
    month,
    title,
    project: project.title,
    aircraft: `${project.designation}, serial ${project.serial}${
      project.registration === undefined ? "" : `, ${project.registration}`
    }`,
    asOf: asOf.date,
    figure,
    sentence: `${figure} hours of building on ${daysText(days.length)}${
      total.apart > 0 ? `, and ${hoursText(total.apart)} of study and shop, counted apart` : ""
    }. To date ${hoursText(toDate)} hours of building.`,
    ticks: days.map(({ date }) => ({
      at: (Number(date.slice(8)) - 0.5) / length,
      length: (hours.byDate.get(date)?.build ?? 0) / record.longestDay,
    })),
    from: `1 ${title.slice(0, 3)}`,
    to: `${length} ${title.slice(0, 3)}`,
    ...hourRows,
    days: days.map((day) => ({
      date: `${weekdayText(day.date).slice(0, 3)} ${Number(day.date.slice(8))}`,
      title: record.showsDay(day.date)
        ? excerpt(dayTitle(day, build.assemblies), 90)
        : "Kept private: the hours alone",
      hours: hoursText(hours.byDate.get(day.date)?.build ?? 0),
      minutes: hours.byDate.get(day.date)?.build ?? 0,
    })),
    readings: readingsText(readings.map(({ standing }) => standing)),
    outside: readings
      .filter(({ standing }) => standing === "out")
      .map(({ reading }) =>
        excerpt(
          `${shortDate(reading.date)}: ${reading.what}${reading.at === undefined ? "" : ` at ${reading.at}`}`,
          100,
        ),
      ),
    photos: photos
      .toReversed()
      .flatMap(({ file, alt, caption }): ReportPhoto[] => {
        const smallest = record.pictures.get(file)?.jpeg[0];
        if (!smallest) return [];
        const { url, width, height } = smallest;
        return [{ url, width, height, alt: alt ?? caption, caption: excerpt(caption, 80) }];
      })
      .slice(0, 3),
    photographs: `${photos.length} ${photos.length === 1 ? "photograph" : "photographs"}`,
    openAt: dateText(end),
    open: openAt(record, end),
    next: last?.next.map((each) => excerpt(each, 110)) ?? [],
    ...(seal === undefined ? {} : { seal: seal.digest.slice(0, 12) }),
    caution,
    edition: editionNote(record),
  };
}

function assembliesOf(
  { analysis: { build, hours } }: RecordIndex,
  month: CalendarMonth,
): Pick<MonthReport, "kinds" | "assemblies" | "total"> {
  const lines = hours.lines.filter(({ date }) => monthOf(date) === month);
  const kinds = workKinds.filter((kind) => lines.some((line) => line.kind === kind));
  const rowOf = (title: string, of: typeof lines): ReportAssembly => ({
    title,
    byKind: kinds.map((kind) => sum(of.filter((line) => line.kind === kind))),
    build: sum(of.filter(({ kind }) => !kindsApart.includes(kind))),
  });
  const assemblies = [...new Set(lines.map(({ assembly }) => assembly))].map((id) =>
    rowOf(
      build.assemblies.get(id)?.title ?? id,
      lines.filter(({ assembly }) => assembly === id),
    ),
  );
  return {
    kinds,
    assemblies: assemblies.sort((a, b) => b.build - a.build),
    total: rowOf("Together", lines),
  };
}

function sum(lines: readonly { readonly minutes: Minutes }[]): Minutes {
  return lines.reduce((all, { minutes }) => all + minutes, 0);
}

function readingsText(standings: readonly string[]): string {
  if (standings.length === 0) return "No readings were written down.";
  const count = (standing: string) => standings.filter((each) => each === standing).length;
  const parts = [
    ["within", "within their limits"],
    ["out", "outside"],
    ["accounted for", "outside, accounted for by a deviation"],
    ["superseded", "measured again later"],
    ["no rule", "without a limit to be held against"],
  ] as const;
  const said = parts.flatMap(([standing, words]) =>
    count(standing) > 0 ? [`${count(standing)} ${words}`] : [],
  );
  return `${standings.length} ${standings.length === 1 ? "reading" : "readings"}: ${said.join(", ")}.`;
}

/** What was open when a day was over, as the record knows it now. */
function openAt({ analysis }: RecordIndex, end: CalendarDate): string[] {
  const later = (date: CalendarDate | undefined) => date === undefined || date > end;
  return [
    ...analysis.deviations
      .filter(({ deviation }) => deviation.date <= end && later(deviation.disposition?.date))
      .map(({ deviation: { id, done } }) => `deviation ${id}, undecided: ${done}`),
    ...analysis.squawks
      .filter(({ squawk }) => squawk.date <= end && later(squawk.closed?.date))
      .map(({ squawk: { id, found, fixed } }) =>
        fixed && fixed.date <= end
          ? `squawk ${id}, put right and not looked at yet: ${found}`
          : `squawk ${id}: ${found}`,
      ),
    ...analysis.holds
      .filter(({ hold, released }) => hold.date <= end && later(released?.date))
      .map(
        ({ hold }) =>
          `held for now, ${hold.step}: ${hold.count === undefined ? "" : `${hold.count} `}${hold.with}`,
      ),
    ...analysis.cures
      .filter(({ cure }) => cure.date <= end && cure.ready.local.slice(0, 10) > end)
      .map(({ cure }) => `curing, ${cure.step}: until ${dateText(cure.ready.local.slice(0, 10))}`),
  ].map((each) => excerpt(each, 110));
}
