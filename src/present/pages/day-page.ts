import type { HoursLine } from "../../compute/analysis.ts";
import type { LaidOut } from "../../compute/laid-out.ts";
import { type CalendarDate, monthOf } from "../../model/calendar.ts";
import type { Day } from "../../model/day.ts";
import type { Session } from "../../model/session.ts";
import { noonOf, timestamp } from "../feeds/timestamp.ts";
import {
  dateText,
  dateWithWeekday,
  daysText,
  momentText,
  monthText,
  shortDate,
  weekdayText,
} from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { excerpt, type Html, renderProse } from "../markdown/render-prose.ts";
import type { SearchFilter } from "../search/search-record.ts";
import { dayShare } from "../share/page-share.ts";
import { rootOf } from "./addresses.ts";
import { authorOf } from "./author.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Dimension, Link, Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { sheetData } from "./structured-data.ts";
import { type CureView, cureView } from "./views/cure-view.ts";
import { type DayStrip, dayStrip } from "./views/day-strip.ts";
import { dayTitle } from "./views/day-title.ts";
import { type DeviationView, deviationView } from "./views/deviation-view.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";
import { type HoldView, holdView } from "./views/hold-view.ts";
import { type InspectionView, inspectionView } from "./views/inspection-view.ts";
import { type LayoutView, layoutAnchor, layoutView } from "./views/layout-view.ts";
import { type PhotoView, photoView, thumbnailView } from "./views/photo-view.ts";
import { type ReadingView, readingView } from "./views/reading-view.ts";
import { type SealMention, sealMention } from "./views/seal-mention.ts";
import { type SessionRow, sessionRow } from "./views/session-row.ts";
import { type SquawkView, squawkView } from "./views/squawk-view.ts";
import { type VideoView, videoView } from "./views/video-view.ts";

/** A step as far as one day brought it. */
export interface DayStep {
  readonly step: Link;
  readonly title: string;
  readonly drawing?: string;
  readonly today: string;
  /** On all days. */
  readonly booked: string;
  readonly planned?: string;
  readonly stage?: string;
}

/** A correction, seen from the day that makes it or from the day it corrects. */
export interface AmendmentView {
  readonly field: string;
  readonly was: string;
  readonly now: string;
  readonly why: string;
  /** The other day: the one corrected, or the one that corrects. */
  readonly day: Mention;
}

/** One dated sheet. */
export interface DayPage extends Page<"day"> {
  readonly date: CalendarDate;
  /** RFC 3339: when it was written, else when the last session ended, else noon UTC. */
  readonly published: string;
  /** As `published`, or when an amendment to it was written. */
  readonly updated: string;
  /** How many days after the day it was written down; absent when the same day. */
  readonly late?: string;
  /** The file that its hours were imported from, when they were not typed. */
  readonly imported?: string;
  /** Corrections made later to this sheet. */
  readonly corrected: readonly AmendmentView[];
  readonly findings: readonly FindingView[];
  /** What the sheet before left to be done. */
  readonly leftOff?: { readonly day: Mention; readonly items: readonly string[] };
  readonly prose?: Html;
  readonly photos: readonly PhotoView[];
  readonly videos: readonly VideoView[];
  readonly strip?: DayStrip;
  /** Numbers of rows that the strip cannot show, because only their hours were typed. */
  readonly offStrip: readonly number[];
  readonly sessions: readonly SessionRow[];
  readonly hours: { readonly build: string; readonly apart?: string };
  readonly steps: readonly DayStep[];
  readonly readings: readonly ReadingView[];
  readonly cures: readonly CureView[];
  readonly holds: readonly HoldView[];
  readonly releases: readonly HoldView[];
  readonly deviations: readonly DeviationView[];
  /** Of earlier days, decided on this one. */
  readonly dispositions: readonly DeviationView[];
  readonly squawks: readonly SquawkView[];
  /** Of earlier days, worked on or closed on this one. */
  readonly squawkWork: readonly SquawkView[];
  readonly inspections: readonly InspectionView[];
  readonly layouts: readonly LayoutView[];
  readonly amendments: readonly AmendmentView[];
  readonly next: readonly string[];
  /** On the last sheet of a month that is closed. */
  readonly seal?: SealMention;
}

/** The sheet of one day. */
export function dayPage(record: RecordIndex, day: Day): DayPage {
  const { date } = day;
  const url = record.addresses.day(date);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { hours } = record.analysis;
  const booked = hours.byDate.get(date) ?? { build: 0, apart: 0 };
  const toDate = hours.toDate.get(date) ?? booked;
  const shown = day.sessions.map((session, index) => ({ session, number: index + 1 }));
  const strip = dayStrip(day, shown);
  const photos = day.photos.map((photo, index) => photoView(record, links, photo, index + 1));
  const videos = day.videos.map((each, index) => videoView(record, links, each, index + 1));
  const findings = (record.findingsByDate.get(date) ?? []).map((each, index) =>
    findingView(record, links, each, index + 1),
  );
  const layouts = record.layoutsByDate.get(date) ?? [];
  const { previous, next } = record.neighbours.get(date) ?? {};
  const sheet = record.sheetOf.get(date) ?? 0;
  const number = `sheet ${sheet} of ${record.sheetOf.size}`;
  const [first] = day.photos.filter(({ file }) => record.pictures.has(file));
  const image = first ? thumbnailView(record, links, first) : undefined;
  const summary = excerpt(day.prose, 160);
  const description = summary || `${dateText(date)}: ${hoursText(booked.build)} hours of work.`;
  const title = dayTitle(day, record.analysis.build.assemblies);
  const isLast = next === undefined || monthOf(next.date) !== monthOf(date);
  const seal = isLast ? sealMention(record, root, monthOf(date)) : undefined;

  const share = dayShare(record, day);
  const structured = sheetData(record.analysis.build.project, authorOf(record), {
    title,
    description,
    url,
    published: publishedAt(day),
    updated: updatedAt(record, day),
    images: photos.flatMap(({ picture, caption }) =>
      picture ? [{ url: picture.full.slice(root.length), caption }] : [],
    ),
    videos: videos.map(({ title: name, href, picture, times }) => ({
      name,
      ...(href === undefined
        ? {}
        : { url: href.startsWith(root) ? href.slice(root.length) : href }),
      ...(picture ? { picture: picture.full.slice(root.length) } : {}),
      date,
      times,
    })),
    above: [
      { text: record.analysis.build.project.title, url: "" },
      { text: monthText(monthOf(date)), url: record.addresses.month(monthOf(date)) },
    ],
  });
  return {
    kind: "day",
    url,
    root,
    date,
    published: publishedAt(day),
    updated: updatedAt(record, day),
    part: "days",
    title,
    description,
    over: [
      { text: dateWithWeekday(date) },
      ...factsOf(day).map((text) => ({ text })),
      { text: number },
      {
        text: monthText(date.slice(0, 7)),
        href: links.to(record.addresses.month(date.slice(0, 7))),
      },
    ],
    dimension: dayDimension(shown, booked.build, booked.apart),
    ...(day.late > 0 ? { late: daysText(day.late) } : {}),
    ...(day.imported === undefined ? {} : { imported: day.imported }),
    corrected: (record.amendmentsByDay.get(date) ?? []).map((each) => ({
      ...amended(each),
      day: links.day(each.date),
    })),
    findings,
    ...(previous && previous.next.length > 0
      ? { leftOff: { day: links.shortDay(previous.date), items: previous.next } }
      : {}),
    ...(day.prose.trim() === ""
      ? {}
      : {
          prose: renderProse(day.prose, {
            idPrefix: "p-",
            topHeading: 2,
            dayHref: (target) => links.day(target).href,
            fenceLink: (line) => layoutLink(layouts, line),
          }),
        }),
    photos,
    videos,
    ...(strip ? { strip } : {}),
    offStrip: strip ? shown.filter(({ session }) => !session.from).map((each) => each.number) : [],
    sessions: shown.map(({ session, number: row }) => sessionRow(record, links, session, row)),
    hours: {
      build: hoursText(booked.build),
      ...(booked.apart > 0 ? { apart: hoursText(booked.apart) } : {}),
    },
    steps: daySteps(record, links, shown, record.linesByDate.get(date) ?? []),
    readings: (record.readingsByDate.get(date) ?? []).map((each) =>
      readingView(record, links, each),
    ),
    cures: (record.curesByDate.get(date) ?? []).map((each) => cureView(record, links, each)),
    holds: (record.holdsByDate.get(date) ?? []).map((each) => holdView(links, each)),
    releases: day.releases.flatMap((release) =>
      (record.holdsByRelease.get(release) ?? []).map((each) => holdView(links, each)),
    ),
    deviations: (record.deviationsByDate.get(date) ?? []).map((each) =>
      deviationView(record, links, each),
    ),
    dispositions: (record.dispositionsByDate.get(date) ?? []).map((each) =>
      deviationView(record, links, each),
    ),
    squawks: (record.squawksByDate.get(date) ?? []).map((each) => squawkView(record, links, each)),
    squawkWork: (record.squawkWorkByDate.get(date) ?? []).map((each) =>
      squawkView(record, links, each),
    ),
    inspections: day.inspections.map((each) => inspectionView(record, links, each)),
    layouts: layouts.map((each) => layoutView(record, links, each)),
    styles: [
      ...(layouts.length > 0 ? ["drawing.css"] : []),
      ...(videos.length > 0 ? ["video.css"] : []),
      ...(photos.length > 0 ? ["view.css"] : []),
    ],
    ...(photos.length > 0 ? { script: "view.js" } : {}),
    amendments: day.amendments.map((each) => ({ ...amended(each), day: links.day(each.day) })),
    next: day.next,
    ...(seal ? { seal } : {}),
    block: {
      title,
      number,
      cells: [
        { label: "day", value: dateText(date) },
        {
          label: "hours this day",
          value: hoursText(booked.build),
          ...(day.sessions.length > 0 ? { sum: { of: "build", href: "#sessions" } } : {}),
        },
        {
          label: "hours to date",
          value: hoursText(toDate.build),
          sum: {
            of: "build",
            href: links.to(record.addresses.month(monthOf(date)), `to-${date.slice(8)}`),
          },
        },
        { label: "written", value: day.written ? momentText(day.written) : "not said" },
        { label: "drawings", value: drawingsOf(record, shown) },
      ],
    },
    turn: {
      ...(previous ? { previous: turnTo(record, links, previous) } : {}),
      ...(next ? { next: turnTo(record, links, next) } : {}),
    },
    ...(share === undefined ? {} : { share }),
    ...(structured === undefined ? {} : { structured }),
    search: {
      filters: [
        ["sheet", "day"],
        ["month", date.slice(0, 7)],
        ...unique(shown.flatMap(({ session }) => assemblyTitles(record, session.assembly))).map(
          (title): [SearchFilter, string] => ["assembly", title],
        ),
        ...unique(shown.map(({ session }) => session.kind)).map((kind): [SearchFilter, string] => [
          "kind",
          kind,
        ]),
        ...unique(findings.map(({ title }) => title)).map((title): [SearchFilter, string] => [
          "finding",
          title,
        ]),
      ],
      meta: {
        title,
        date: dateText(date),
        ...(image ? { image: image.jpeg.slice(root.length), imageAlt: image.alt } : {}),
      },
      sort: { date, hours: booked.build },
    },
  };
}

type Numbered = readonly { readonly session: Session; readonly number: number }[];

function dayDimension(shown: Numbered, build: number, apart: number): Dimension {
  const starts = shown.flatMap(({ session }) => (session.from ? [session.from.local] : []));
  const ends = shown.flatMap(({ session }) => (session.to ? [session.to.local] : []));
  const first = starts.toSorted()[0];
  const last = ends.toSorted().at(-1);
  return {
    ...(first === undefined ? {} : { from: first.slice(11) }),
    ...(last === undefined ? {} : { to: last.slice(11) }),
    figure: hoursText(build),
    ...(shown.length > 0 ? { sum: { of: "build", href: "#sessions" } } : {}),
    says: "hours of building",
    ...(apart > 0
      ? { apart: { figure: hoursText(apart), sum: { of: "apart", href: "#sessions" } } }
      : {}),
  };
}

function publishedAt({ date, written, sessions }: Day): string {
  const moment = written ?? sessions.findLast(({ to }) => to !== undefined)?.to;
  return moment ? timestamp(moment) : noonOf(date);
}

function updatedAt(record: RecordIndex, day: Day): string {
  const amendments = record.amendmentsByDay.get(day.date) ?? [];
  const last = amendments
    .map(({ date }) => date)
    .sort()
    .at(-1);
  const carrier = last === undefined ? undefined : record.dayByDate.get(last);
  return carrier ? publishedAt(carrier) : publishedAt(day);
}

function factsOf({ place, conditions }: Day): string[] {
  const { temperature, humidity } = conditions;
  return [
    place,
    ...(temperature ? [temperature.typed] : []),
    ...(humidity ? [`${humidity.typed} humidity`] : []),
  ];
}

function daySteps(
  record: RecordIndex,
  links: Links,
  shown: Numbered,
  lines: readonly HoursLine[],
): DayStep[] {
  const { build, hours } = record.analysis;
  return unique(shown.flatMap(({ session }) => session.step ?? [])).map((id) => {
    const step = build.steps.get(id);
    const today = lines
      .filter((line) => line.step === id)
      .reduce((sum, { minutes, apart }) => sum + (apart ? 0 : minutes), 0);
    const stage = shown.findLast(({ session }) => session.step === id && session.stage)?.session
      .stage;
    return {
      step: links.step(id),
      title: step?.title ?? id,
      ...(step?.drawing === undefined ? {} : { drawing: step.drawing }),
      today: hoursText(today),
      booked: hoursText(hours.byStep.get(id)?.build ?? 0),
      ...(step?.planned === undefined ? {} : { planned: hoursText(step.planned) }),
      ...(stage === undefined ? {} : { stage }),
    };
  });
}

function drawingsOf({ analysis }: RecordIndex, shown: Numbered): string {
  const drawings = unique(
    shown.flatMap(({ session }) =>
      session.step === undefined ? [] : (analysis.build.steps.get(session.step)?.drawing ?? []),
    ),
  );
  return drawings.length === 0 ? "none named" : drawings.join(", ");
}

function assemblyTitles({ analysis }: RecordIndex, id: string): string[] {
  const { assemblies } = analysis.build;
  return (assemblies.get(id)?.path ?? [id]).map((each) => assemblies.get(each)?.title ?? each);
}

// In the prose a layout is a link to its drawing.
function layoutLink(layouts: readonly LaidOut[], line: number): Link | undefined {
  const layout = layouts.find((each) => each.layout.line === line)?.layout;
  return (
    layout && {
      text: `Layout ${layout.number}: ${layout.title}`,
      href: `#${layoutAnchor(layout)}`,
    }
  );
}

function amended({ field, was, now, why }: Omit<AmendmentView, "day">) {
  return { field, was, now, why };
}

function turnTo({ sheetOf, addresses }: RecordIndex, links: Links, { date }: Day): Link {
  return {
    text: `sheet ${sheetOf.get(date) ?? ""}, ${weekdayText(date).slice(0, 3)} ${shortDate(date)}`,
    href: links.to(addresses.day(date)),
  };
}

function unique<Item>(items: readonly Item[]): Item[] {
  return [...new Set(items)];
}
