import { tenthsText } from "../../model/tenths-text.ts";
import { dateText } from "../format/dates.ts";
import {
  type EvidenceLine,
  type PortionReport,
  type PortionSectionView,
  type PortionTaskView,
  portionReport,
} from "../portion/portion-report.ts";
import { places, rootOf } from "./addresses.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";

/** A line of the sheet with its place on the page. */
export interface PlacedTaskView extends PortionTaskView {
  readonly anchor: string;
}

/** A task that evidence is asked of, leading to its line and to the entries that show it. */
export interface EvidenceView extends EvidenceLine {
  readonly href: string;
  readonly entries: readonly Mention[];
  /** Entries beyond those named. */
  readonly more: number;
}

/** The major-portion sheet. */
export interface PortionPage
  extends Page<"portion">,
    Omit<PortionReport, "sections" | "evidence" | "builder" | "total" | "percent"> {
  readonly findings: readonly FindingView[];
  readonly sections: readonly (Omit<PortionSectionView, "tasks"> & {
    readonly tasks: readonly PlacedTaskView[];
  })[];
  readonly evidence: readonly EvidenceView[];
}

/** Entries named beside a task before the rest is only counted. */
const namedEntries = 6;

/** The page of the major-portion sheet; `undefined` when the journal keeps none. */
export function portionPage(record: RecordIndex): PortionPage | undefined {
  const { portion, asOf } = record.analysis;
  const report = portionReport(record.analysis);
  if (!portion || !report) return undefined;
  const url = places.portion;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const file = portion.register.span.file;
  const { sections, evidence, builder, total, percent, ...rest } = report;
  return {
    ...rest,
    kind: "portion",
    url,
    root,
    part: "portion",
    title: "Major-portion sheet",
    description: report.sentence,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    ...(portion.sum.tasks > 0
      ? { dimension: { figure: percent, says: "claimed by the builder" } }
      : {}),
    findings: record.findings
      .filter(({ span }) => span.file === file)
      .map((each, index) => {
        // On its own page a finding needs no link to it.
        const { day: _self, ...view } = findingView(record, links, each, index + 1);
        return view;
      }),
    sections: sections.map((section) => ({
      ...section,
      tasks: section.tasks.map((task) => ({ ...task, anchor: taskAnchor(task.number) })),
    })),
    evidence: evidence.map((line) => evidenceView(line, links)),
    block: {
      title: "Major-portion sheet",
      number: "portion",
      cells: [
        { label: "points", value: tenthsText(total) },
        { label: "builder", value: tenthsText(builder) },
        { label: "not divided", value: String(portion.undecided) },
        { label: "as of", value: dateText(asOf.date) },
      ],
    },
    search: { filters: [["sheet", "portion"]], meta: { title: "Major-portion sheet" }, sort: {} },
  };
}

function evidenceView(line: EvidenceLine, links: Links): EvidenceView {
  return {
    ...line,
    href: `#${taskAnchor(line.number)}`,
    entries: line.dates.slice(0, namedEntries).map((date) => links.day(date)),
    more: Math.max(0, line.dates.length - namedEntries),
  };
}

// Task numbers are ids, which may differ in case and signs only; those are kept.
function taskAnchor(id: string): string {
  return `task-${id}`;
}
