import type { Hours, HoursLine, JudgedReading } from "../../compute/analysis.ts";
import type { LaidOut } from "../../compute/laid-out.ts";
import type { Amendment } from "../../model/amendment.ts";
import { type CalendarDate, daysBetween, type Minutes } from "../../model/calendar.ts";
import type { Day } from "../../model/day.ts";
import type { Role } from "../../model/person.ts";
import type { Photo } from "../../model/photo.ts";
import { dateText, daysText, momentText, weekdayText } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { type ProseBlock, proseBlocks } from "../markdown/prose-blocks.ts";
import { type Links, linksFrom } from "../pages/links.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { type CureView, cureView } from "../pages/views/cure-view.ts";
import { dayTitle } from "../pages/views/day-title.ts";
import { type DeviationView, deviationView } from "../pages/views/deviation-view.ts";
import { type FindingView, findingView } from "../pages/views/finding-view.ts";
import { type HoldView, holdView } from "../pages/views/hold-view.ts";
import { type InspectionView, inspectionView } from "../pages/views/inspection-view.ts";
import { type LayoutView, layoutView } from "../pages/views/layout-view.ts";
import { type ReadingView, readingView } from "../pages/views/reading-view.ts";
import { type SessionRow, sessionRow } from "../pages/views/session-row.ts";
import { type SquawkView, squawkView } from "../pages/views/squawk-view.ts";
import { type VideoView, videoView } from "../pages/views/video-view.ts";
import { fieldText } from "./field-text.ts";

/** Something said about an entry as a whole. */
export interface EntryFact {
  readonly text: string;
  /** What must not be overlooked: a late entry. */
  readonly departs: boolean;
}

/** A correction, seen from the entry it corrects or from the one that makes it. */
export interface BookAmendment {
  /** `session 2, hours`. */
  readonly field: string;
  readonly was: string;
  readonly now: string;
  readonly why: string;
  /** The other entry: the one that corrects, or the one corrected. */
  readonly date: CalendarDate;
  readonly entry: number;
}

/** A session with the corrections made to it later. */
export interface BookSession extends SessionRow {
  readonly amended: readonly BookAmendment[];
}

/** A photograph as the book shows it. */
export interface BookPhoto {
  /** `42.1`: the number of the entry and that of the photograph in it. */
  readonly number: string;
  readonly photo: Photo;
  /** What it is told by where it cannot be seen. */
  readonly alt: string;
  /** `HS-07`, or the title of the assembly; absent when neither is named. */
  readonly on?: string;
  readonly shows: readonly string[];
}

/** One day in the log. */
export interface BookEntry {
  readonly date: CalendarDate;
  /** Among all days, shown or not, so that it is the same in every edition; from 1. */
  readonly number: number;
  readonly title: string;
  /** False: the edition shows its hours and nothing else. */
  readonly shown: boolean;
  readonly weekday: string;
  /** `9 days without an entry`, where a week or more lies between this day and the one before. */
  readonly gap?: string;
  readonly facts: readonly EntryFact[];
  readonly hours: Hours;
  /** Up to and including this day. */
  readonly toDate: Hours;
  readonly work: readonly BookSession[];
  /** Who helped, in which role and for how long; empty: nobody. */
  readonly help: readonly string[];
  /** A layout in it is named where it was typed and stands in `layouts`. */
  readonly prose: readonly ProseBlock[];
  readonly layouts: readonly LayoutView[];
  readonly photos: readonly BookPhoto[];
  readonly videos: readonly VideoView[];
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
  /** Corrections that later entries make to this one. */
  readonly amendedBy: readonly BookAmendment[];
  /** Corrections that this entry makes to earlier ones. */
  readonly amends: readonly BookAmendment[];
  readonly findings: readonly FindingView[];
  readonly next: readonly string[];
}

/** Days between two entries from which on the book says that there is nothing between them. */
const gapOfDays = 7;

const none: Hours = { build: 0, apart: 0 };

/** A day as the book shows it. */
export function bookEntry(record: RecordIndex, day: Day): BookEntry {
  const { date } = day;
  const { hours, build } = record.analysis;
  const links = linksFrom(record, "");
  const number = record.sheetOf.get(date) ?? 0;
  const before = build.days[number - 2];
  const gap = before ? daysBetween(before.date, date) - 1 : 0;
  const amendedBy = (record.amendmentsByDay.get(date) ?? []).map((each) =>
    bookAmendment(record, each, each.date),
  );
  const shown = record.showsDay(date);
  const layouts = record.layoutsByDate.get(date) ?? [];
  return {
    date,
    number,
    title: shown
      ? dayTitle(day, build.assemblies)
      : "Private day: its hours are shown and nothing else",
    shown,
    weekday: weekdayText(date),
    ...(gap >= gapOfDays ? { gap: `${daysText(gap)} without an entry` } : {}),
    facts: shown ? factsOf(day) : [],
    hours: hours.byDate.get(date) ?? none,
    toDate: hours.toDate.get(date) ?? none,
    work: day.sessions.map((session, index) => ({
      ...sessionRow(record, links, session, index + 1),
      amended: amendedBy.filter(({ field }) => field.startsWith(`session ${index + 1}, `)),
    })),
    help: helpOf(record, record.linesByDate.get(date) ?? []),
    prose: withLayouts(proseBlocks(day.prose), layouts),
    layouts: layouts.map((each) => layoutView(record, links, each)),
    videos: day.videos.map((video, index) => videoView(record, links, video, index + 1)),
    photos: day.photos.map((photo, index) => bookPhoto(record, photo, `${number}.${index + 1}`)),
    readings: readingsOf(record, links, record.readingsByDate.get(date) ?? []),
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
    amendedBy,
    amends: day.amendments.map((each) => bookAmendment(record, each, each.day)),
    findings: (record.findingsByDate.get(date) ?? []).map((each, index) =>
      findingView(record, links, each, index + 1),
    ),
    next: day.next,
  };
}

/** The prose with the name of each layout in the place of what was typed for it. */
function withLayouts(
  blocks: readonly ProseBlock[],
  layouts: readonly LaidOut[],
): readonly ProseBlock[] {
  if (layouts.length === 0) return blocks;
  return blocks.map((block) => {
    switch (block.kind) {
      case "code": {
        const layout = layouts.find((each) => each.layout.line === block.line)?.layout;
        const text = layout && `Layout ${layout.number}, ${layout.title}, is drawn up below.`;
        return text ? { kind: "paragraph", lines: [[{ text, stressed: true }]] } : block;
      }
      case "quote":
        return { ...block, blocks: withLayouts(block.blocks, layouts) };
      case "list":
        return { ...block, items: block.items.map((item) => withLayouts(item, layouts)) };
      default:
        return block;
    }
  });
}

function factsOf({ place, conditions, written, late, imported }: Day): EntryFact[] {
  const { temperature, humidity } = conditions;
  const plain = [
    `place: ${place}`,
    ...(temperature ? [temperature.typed] : []),
    ...(humidity ? [`${humidity.typed} humidity`] : []),
    written ? `written ${momentText(written)}` : "when it was written is not said",
  ].map((text) => ({ text, departs: false }));
  const marks = [
    ...(late > 0 ? [`LATE ENTRY: ${daysText(late)} after the day`] : []),
    ...(imported === undefined ? [] : [`ENTERED LATER: hours from ${imported}`]),
  ];
  return [...plain, ...marks.map((text) => ({ text, departs: true }))];
}

function bookAmendment(
  { sheetOf }: RecordIndex,
  { field, was, now, why }: Amendment,
  date: CalendarDate,
): BookAmendment {
  return { field: fieldText(field), was, now, why, date, entry: sheetOf.get(date) ?? 0 };
}

/** Roles in which somebody helped, as a record has to say who did. */
const helping: readonly Role[] = ["unpaid help", "paid help", "instruction"];

function helpOf(record: RecordIndex, lines: readonly HoursLine[]): string[] {
  const helpers = new Map<string, { who: string; role: Role; minutes: Minutes }>();
  for (const { person, role, minutes } of lines) {
    if (!helping.includes(role)) continue;
    const key = `${role} ${person}`;
    const known = helpers.get(key) ?? { who: record.person(person, role), role, minutes: 0 };
    helpers.set(key, { ...known, minutes: known.minutes + minutes });
  }
  return [...helpers.values()].map(({ who, role, minutes }) =>
    who === role ? `${role} ${hoursText(minutes)}` : `${who}, ${role}, ${hoursText(minutes)}`,
  );
}

function bookPhoto(record: RecordIndex, photo: Photo, number: string): BookPhoto {
  const { step, assembly, alt, caption, shows } = photo;
  const title =
    assembly === undefined ? undefined : record.analysis.build.assemblies.get(assembly)?.title;
  const on = step ?? title;
  return {
    number,
    photo,
    alt: alt ?? caption,
    ...(on === undefined ? {} : { on }),
    shows: [...new Set(shows.map((id) => record.person(id)))],
  };
}

function readingsOf(
  record: RecordIndex,
  links: Links,
  readings: readonly JudgedReading[],
): ReadingView[] {
  return readings.map((each) => readingView(record, links, each));
}

/** A date of another entry with its number, as the book refers to it: `entry 57, 17 May 2026`. */
export function entryMention(entry: number, date: CalendarDate): string {
  return entry > 0 ? `entry ${entry}, ${dateText(date)}` : dateText(date);
}
