import type { Analysis } from "../../compute/analysis.ts";
import type { PortionLedger, SectionState, TaskState } from "../../compute/ledgers/portion.ts";
import type { PortionSum } from "../../compute/portion.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Tenths } from "../../model/portion.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import { dateText } from "../format/dates.ts";
import { builderPercent, shareText, splitText } from "../format/portion.ts";
import { evidenceOrder, lacksOf } from "./evidence-words.ts";
import {
  formSource,
  type LineView,
  linesOf,
  portionCautions,
  portionSentence,
} from "./portion-words.ts";

/** Shares in the order of the sheet; an empty share is empty. */
export interface SharesView {
  readonly kit: string;
  readonly paid: string;
  readonly assembly: string;
  readonly fabrication: string;
}

/** A line of the sheet. */
export interface PortionTaskView extends SharesView {
  readonly number: string;
  readonly title: string;
  /** `added`, `not applicable`, what the list gives the kit, and the like. */
  readonly marks: readonly string[];
  readonly standing: TaskState["standing"];
}

/** What tasks come to. */
export interface PortionSumView extends SharesView {
  readonly what: string;
  readonly total: string;
  readonly builder: string;
  readonly percent: string;
}

/** A section of the sheet. */
export interface PortionSectionView {
  readonly title: string;
  readonly tasks: readonly PortionTaskView[];
  readonly sum: PortionSumView;
}

/** A task that evidence is asked of, and the days whose entries show it. */
export interface EvidenceLine {
  readonly number: string;
  readonly title: string;
  /** What is missing; empty: every part is there. */
  readonly lacks: readonly string[];
  /** Where the division contradicts entries, help or its own marks. */
  readonly contradicts: readonly string[];
  /** Oldest first. */
  readonly dates: readonly CalendarDate[];
  /** Of these days, as many as the edition shows. */
  readonly photographs: number;
}

/** A division that was replaced, and what replaced it. */
export interface PortionChangeView {
  readonly number: string;
  readonly title: string;
  readonly on: string;
  readonly before: string;
  readonly after: string;
  readonly why: string;
}

/** The major-portion sheet in words, for the page and for paper. */
export interface PortionReport {
  readonly sentence: string;
  readonly percent: string;
  readonly builder: Tenths;
  readonly total: Tenths;
  readonly lines: readonly LineView[];
  /** Which list it is. */
  readonly list: readonly { readonly label: string; readonly value: string }[];
  /** Which form the columns are from, and what of it was not seen. */
  readonly form: string;
  readonly sections: readonly PortionSectionView[];
  readonly sum: PortionSumView;
  /** Tasks with gaps first, then those that contradict something. */
  readonly evidence: readonly EvidenceLine[];
  /** How many tasks are claimed, and how many of these lack nothing. */
  readonly claimed: number;
  readonly covered: number;
  readonly changes: readonly PortionChangeView[];
  readonly cautions: readonly string[];
}

/**
 * The report on the major portion.
 * @returns `undefined` when the journal keeps no sheet.
 */
export function portionReport({ portion, build }: Analysis): PortionReport | undefined {
  if (!portion) return undefined;
  const states = [...portion.tasks.values()];
  const claimed = states.filter((state) => state.claimed);
  const photographs = new Map(build.days.map(({ date, photos }) => [date, photos.length]));
  return {
    sentence: portionSentence(portion),
    percent: builderPercent(portion.sum),
    builder: portion.sum.builder,
    total: portion.sum.total,
    lines: linesOf(portion),
    list: listFacts(portion),
    form: formSource,
    sections: portion.sections.map(sectionView),
    sum: sumView("All sections", portion.sum),
    evidence: evidenceOrder(states).map((state) => evidenceLine(state, photographs)),
    claimed: claimed.length,
    covered: claimed.filter((state) => lacksOf(state).length === 0).length,
    changes: states.flatMap(({ task, history }) =>
      history.slice(1).map((entry, index) => ({
        number: task.id,
        title: task.title,
        on: dateText(entry.date),
        before: splitText(history[index]?.split),
        after: splitText(entry.split),
        why: entry.why ?? "",
      })),
    ),
    cautions: portionCautions,
  };
}

function listFacts({ register: { list } }: PortionLedger) {
  return [
    { label: "List", value: list.title },
    ...(list.year === undefined ? [] : [{ label: "Year", value: list.year }]),
    { label: "For", value: list.aircraft },
    { label: "From", value: list.from },
    { label: "Loaded", value: dateText(list.loaded) },
  ];
}

function sectionView({ section, tasks, sum }: SectionState): PortionSectionView {
  return { title: section, tasks: tasks.map(taskView), sum: sumView(section, sum) };
}

function taskView({ task, current, standing }: TaskState): PortionTaskView {
  const split = current?.split;
  return {
    number: task.id,
    title: task.title,
    marks: [
      ...(task.added ? [`added on ${dateText(task.added.date)}: ${task.added.why}`] : []),
      ...(task.listed === undefined ? [] : [`the list gives the kit ${tenthsText(task.listed)}`]),
      ...(standing === "undecided" ? ["not divided yet"] : []),
      ...(standing === "not applicable" ? [`not applicable: ${current?.why ?? ""}`] : []),
      ...(current?.salvage ? ["made from a salvaged assembly"] : []),
      ...(current?.source === undefined ? [] : [`kit's share: ${current.source}`]),
      ...(current?.note === undefined ? [] : [current.note]),
    ],
    standing,
    kit: shareText(split?.kit ?? 0),
    paid: shareText(split?.paid ?? 0),
    assembly: shareText(split?.assembly ?? 0),
    fabrication: shareText(split?.fabrication ?? 0),
  };
}

function sumView(what: string, sum: PortionSum): PortionSumView {
  const { columns, total, builder } = sum;
  return {
    what,
    kit: tenthsText(columns.kit),
    paid: tenthsText(columns.paid),
    assembly: tenthsText(columns.assembly),
    fabrication: tenthsText(columns.fabrication),
    total: tenthsText(total),
    builder: tenthsText(builder),
    percent: builderPercent(sum),
  };
}

function evidenceLine(
  state: TaskState,
  photographs: ReadonlyMap<CalendarDate, number>,
): EvidenceLine {
  const { task, claims, conflicts } = state;
  const dates = [...new Set(claims.map(({ date }) => date))];
  return {
    number: task.id,
    title: task.title,
    lacks: lacksOf(state),
    contradicts: conflicts,
    dates,
    photographs: dates.reduce((sum, date) => sum + (photographs.get(date) ?? 0), 0),
  };
}
