import type { Step } from "../../model/assembly.ts";
import { dateText, shortDate } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { rootOf } from "./addresses.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type BookedMonth, bookedMonths } from "./views/booked-days.ts";
import { type CureView, cureView } from "./views/cure-view.ts";
import { type DeviationView, deviationView } from "./views/deviation-view.ts";
import { type HoldView, holdView } from "./views/hold-view.ts";
import { type InspectionView, inspectionView } from "./views/inspection-view.ts";
import { type PhotoView, photoView } from "./views/photo-view.ts";
import { type ReadingView, readingView } from "./views/reading-view.ts";
import { type SessionRow, sessionRow } from "./views/session-row.ts";
import { type SquawkView, squawkView } from "./views/squawk-view.ts";

/** One stage on the line of stages. */
export interface StageMark {
  readonly stage: string;
  /** The newest stage typed. */
  readonly here: boolean;
  /** Before the newest one in the project's order. */
  readonly passed: boolean;
}

/** A look that the step declares and whether it has been taken. */
export interface LookRow {
  readonly look: string;
  readonly standing: "not yet" | "clear" | "held";
}

/** One task from the drawings. */
export interface StepPage extends Page<"step"> {
  readonly drawing?: string;
  readonly stages: readonly StageMark[];
  readonly looks: readonly LookRow[];
  /** Empty where there are too many to be read; `days` then holds their hours. */
  readonly sessions: readonly SessionRow[];
  readonly days: readonly BookedMonth[];
  readonly daysApart: readonly BookedMonth[];
  readonly hours: { readonly build: string; readonly apart?: string };
  /** Of many, the newest and all that are out. */
  readonly readings: readonly ReadingView[];
  readonly earlierReadings: number;
  readonly cures: readonly CureView[];
  readonly holds: readonly HoldView[];
  readonly deviations: readonly DeviationView[];
  readonly squawks: readonly SquawkView[];
  readonly inspections: readonly InspectionView[];
  /** Of many, the newest. */
  readonly photos: readonly PhotoView[];
  readonly earlierPhotos: number;
}

const sessionsShown = 80;
const readingsShown = 40;
const photosShown = 24;

/** The page of one step. */
export function stepPage(record: RecordIndex, step: Step): StepPage {
  const { id } = step;
  const { build, hours, steps } = record.analysis;
  const url = record.addresses.step(id);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const booked = hours.byStep.get(id) ?? { build: 0, apart: 0 };
  const state = steps.get(id);
  const reached = state?.stage === undefined ? -1 : build.project.stages.indexOf(state.stage);
  const total = hoursText(booked.build);
  const planned = step.planned === undefined ? undefined : hoursText(step.planned);
  const assembly = build.assemblies.get(step.assembly);
  const sessions = record.sessionsByStep.get(id) ?? [];
  const sum: { sum?: Sum } = booked.build > 0 ? { sum: { of: "build", href: "#sessions" } } : {};
  const crowded = sessions.length > sessionsShown ? (record.linesByStep.get(id) ?? []) : [];
  const readings = record.readingsByStep.get(id) ?? [];
  const shown = readings.filter(
    ({ standing }, index) =>
      index >= readings.length - readingsShown ||
      standing === "out" ||
      standing === "accounted for",
  );
  const photos = record.photosByStep.get(id) ?? [];
  return {
    kind: "step",
    script: "view.js",
    styles: ["view.css"],
    url,
    root,
    part: "assemblies",
    title: step.title,
    description: `Step ${id} of ${assembly?.title ?? step.assembly}: ${total} hours, sessions, readings and inspections.`,
    over: [
      placeLink(root, "assemblies", "assemblies"),
      ...(assembly?.path ?? [step.assembly]).map((each) => links.assembly(each)),
      { text: id },
    ],
    dimension: {
      ...(state?.firstDate === undefined
        ? {}
        : { from: `${shortDate(state.firstDate)} ${state.firstDate.slice(0, 4)}` }),
      ...(state?.lastDate === undefined
        ? {}
        : { to: `${shortDate(state.lastDate)} ${state.lastDate.slice(0, 4)}` }),
      figure: total,
      ...sum,
      says: planned === undefined ? "hours of building" : `hours of building, ${planned} planned`,
    },
    ...(step.drawing === undefined ? {} : { drawing: step.drawing }),
    stages: build.project.stages.map((stage, index) => ({
      stage,
      here: index === reached,
      passed: index < reached,
    })),
    looks: (state?.looks ?? []).map(({ look, inspection, done }) => ({
      look,
      standing: done ? "clear" : inspection ? "held" : "not yet",
    })),
    sessions:
      sessions.length > sessionsShown
        ? []
        : sessions.map((session, index) => sessionRow(record, links, session, index + 1)),
    days: bookedMonths(record, links, crowded, false),
    daysApart: bookedMonths(record, links, crowded, true),
    hours: { build: total, ...(booked.apart > 0 ? { apart: hoursText(booked.apart) } : {}) },
    readings: shown.map((each) => readingView(record, links, each)),
    earlierReadings: readings.length - shown.length,
    cures: (record.curesByStep.get(id) ?? []).map((each) => cureView(record, links, each)),
    holds: (record.holdsByStep.get(id) ?? []).map((each) => holdView(links, each)),
    deviations: (record.deviationsByStep.get(id) ?? []).map((each) =>
      deviationView(record, links, each),
    ),
    squawks: (record.squawksByStep.get(id) ?? []).map((each) => squawkView(record, links, each)),
    inspections: (record.inspectionsByStep.get(id) ?? []).map((each) =>
      inspectionView(record, links, each),
    ),
    photos: photos
      .slice(-photosShown)
      .map((photo, index) => photoView(record, links, photo, index + 1)),
    earlierPhotos: Math.max(0, photos.length - photosShown),
    block: {
      title: step.title,
      number: `step ${id}`,
      cells: [
        { label: "assembly", value: assembly?.title ?? step.assembly },
        { label: "drawing", value: step.drawing ?? "none named" },
        { label: "stage", value: state?.stage ?? "not begun" },
        { label: "hours", value: total, ...sum },
        {
          label: "last worked on",
          value: state?.lastDate === undefined ? "not begun" : dateText(state.lastDate),
        },
      ],
    },
    search: {
      filters: [
        ["sheet", "step"],
        ["assembly", assembly?.title ?? step.assembly],
      ],
      meta: { title: `${id}: ${step.title}` },
      sort: { hours: booked.build },
    },
  };
}
