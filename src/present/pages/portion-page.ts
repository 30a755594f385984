import type { SectionState, TaskClaim, TaskState } from "../../compute/ledgers/portion.ts";
import type { PortionSum } from "../../compute/portion.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import { dateText } from "../format/dates.ts";
import { builderPercent, shareText, splitText } from "../format/portion.ts";
import { evidenceOrder, lacksOf } from "../portion/evidence-words.ts";
import {
  type LineView,
  linesOf,
  portionCautions,
  portionSentence,
} from "../portion/portion-words.ts";
import { places, rootOf } from "./addresses.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";

/** Shares in the order of the sheet; an empty share is empty. */
export interface SharesView {
  readonly kit: string;
  readonly paid: string;
  readonly assembly: string;
  readonly fabrication: string;
}

/** A line of the sheet. */
export interface PortionTaskView extends SharesView {
  readonly anchor: string;
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

/** A task that somebody else than the kit has a share of, and what shows it. */
export interface EvidenceView {
  readonly number: string;
  readonly title: string;
  readonly href: string;
  /** What is missing; empty: every part is there. */
  readonly lacks: readonly string[];
  /** Where the division contradicts entries, help or its own marks. */
  readonly contradicts: readonly string[];
  readonly entries: readonly Mention[];
  /** Entries beyond those named. */
  readonly more: number;
  readonly photographs: number;
}

/** A division that was replaced, or one that replaced it. */
export interface PortionChangeView {
  readonly number: string;
  readonly title: string;
  readonly on: string;
  readonly before: string;
  readonly after: string;
  readonly why: string;
}

/** The major-portion sheet. */
export interface PortionPage extends Page<"portion"> {
  readonly sentence: string;
  readonly lines: readonly LineView[];
  readonly list: readonly { readonly label: string; readonly value: string }[];
  readonly findings: readonly FindingView[];
  readonly sections: readonly PortionSectionView[];
  readonly sum: PortionSumView;
  /** Tasks with gaps first, then those that contradict something. */
  readonly evidence: readonly EvidenceView[];
  /** How many tasks are claimed, and how many of these lack nothing. */
  readonly claimed: number;
  readonly covered: number;
  readonly changes: readonly PortionChangeView[];
  readonly cautions: readonly string[];
}

/** Entries named beside a task before the rest is only counted. */
const namedEntries = 6;

/** The page of the major-portion sheet; `undefined` when the journal keeps none. */
export function portionPage(record: RecordIndex): PortionPage | undefined {
  const { portion, asOf } = record.analysis;
  if (!portion) return undefined;
  const url = places.portion;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { list } = portion.register;
  const states = [...portion.tasks.values()];
  const claimed = states.filter((state) => state.claimed);
  const percent = builderPercent(portion.sum);
  const file = portion.register.span.file;
  return {
    kind: "portion",
    url,
    root,
    part: "portion",
    title: "Major-portion sheet",
    description: portionSentence(portion),
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    ...(portion.sum.tasks > 0
      ? { dimension: { figure: percent, says: "claimed by the builder" } }
      : {}),
    sentence: portionSentence(portion),
    lines: linesOf(portion),
    list: [
      { label: "List", value: list.title },
      ...(list.year === undefined ? [] : [{ label: "Year", value: list.year }]),
      { label: "For", value: list.aircraft },
      { label: "From", value: list.from },
      { label: "Loaded", value: dateText(list.loaded) },
    ],
    findings: record.findings
      .filter(({ span }) => span.file === file)
      .map((each, index) => {
        // On its own page a finding needs no link to it.
        const { day: _self, ...view } = findingView(record, links, each, index + 1);
        return view;
      }),
    sections: portion.sections.map(sectionView),
    sum: sumView("All sections", portion.sum),
    evidence: evidenceOrder(states).map((state) => evidenceOf(state, links)),
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
    block: {
      title: "Major-portion sheet",
      number: "portion",
      cells: [
        { label: "points", value: tenthsText(portion.sum.total) },
        { label: "builder", value: tenthsText(portion.sum.builder) },
        { label: "not divided", value: String(portion.undecided) },
        { label: "as of", value: dateText(asOf.date) },
      ],
    },
    search: { filters: [["sheet", "portion"]], meta: { title: "Major-portion sheet" }, sort: {} },
  };
}

function sectionView({ section, tasks, sum }: SectionState): PortionSectionView {
  return { title: section, tasks: tasks.map(taskView), sum: sumView(section, sum) };
}

function taskView({ task, current, standing }: TaskState): PortionTaskView {
  const split = current?.split;
  return {
    anchor: taskAnchor(task.id),
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

function evidenceOf(state: TaskState, links: Links): EvidenceView {
  const { task, claims, conflicts } = state;
  const days = new Map<string, TaskClaim>();
  for (const claim of claims) if (!days.has(claim.date)) days.set(claim.date, claim);
  const dates = [...days.keys()];
  return {
    number: task.id,
    title: task.title,
    href: `#${taskAnchor(task.id)}`,
    lacks: lacksOf(state),
    contradicts: conflicts,
    entries: dates.slice(0, namedEntries).map((date) => links.day(date)),
    more: Math.max(0, dates.length - namedEntries),
    photographs: [...days.values()].reduce((sum, { photos }) => sum + photos, 0),
  };
}

// Task numbers are ids, which may differ in case and signs only; those are kept.
function taskAnchor(id: string): string {
  return `task-${id}`;
}
