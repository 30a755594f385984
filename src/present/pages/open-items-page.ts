import { daysBetween } from "../../model/calendar.ts";
import { dateText, daysText } from "../format/dates.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom } from "./links.ts";
import type { Link, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type CureView, cureView } from "./views/cure-view.ts";
import { type DeviationView, deviationView } from "./views/deviation-view.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";
import { type HoldView, holdView } from "./views/hold-view.ts";
import { type SquawkView, squawkView } from "./views/squawk-view.ts";

/** A look that a step wants and has not had. */
export interface LookDue {
  readonly step: Link;
  readonly title: string;
  readonly look: string;
  readonly stage: string;
  /** `not yet`, or what the newest look found. */
  readonly standing: string;
}

/** Something with a last day. */
export interface LastDay {
  readonly what: string;
  readonly until: string;
  /** `in 12 days`, `28 days ago`. */
  readonly left: string;
  readonly over: boolean;
}

/** Everything that is not finished. */
export interface OpenItemsPage extends Page<"open"> {
  readonly findings: readonly FindingView[];
  readonly deviations: readonly DeviationView[];
  readonly squawks: readonly SquawkView[];
  readonly looks: readonly LookDue[];
  readonly cures: readonly CureView[];
  readonly holds: readonly HoldView[];
  readonly lots: readonly LastDay[];
  readonly calibrations: readonly LastDay[];
}

/** Lots and calibrations are listed this many days before their last one. */
const noticeDays = 60;

/** The page of open items, as of the day of judgement. */
export function openItemsPage(record: RecordIndex): OpenItemsPage {
  const url = places.open;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { analysis } = record;
  const { build, asOf } = analysis;
  const findings = record.findings.map((each, index) =>
    findingView(record, links, each, index + 1),
  );
  const deviations = analysis.deviations.filter(({ open }) => open);
  const squawks = analysis.squawks.filter(({ standing }) => standing !== "closed");
  const cures = analysis.cures.filter(({ over }) => !over);
  const holds = analysis.holds.filter(({ released }) => released === undefined);
  const looks = looksDue(record, links);
  const lastDay = (what: string, until: string): LastDay => {
    const left = daysBetween(asOf.date, until);
    return {
      what,
      until: dateText(until),
      left: left < 0 ? `${daysText(-left)} ago` : left === 0 ? "today" : `in ${daysText(left)}`,
      over: left < 0,
    };
  };
  const soon = (until: string) => daysBetween(asOf.date, until) <= noticeDays;
  const count =
    findings.length +
    deviations.length +
    squawks.length +
    cures.length +
    holds.length +
    looks.length;
  return {
    kind: "open",
    url,
    root,
    part: "open",
    title: "Open items",
    description: `${count} open items as of ${dateText(asOf.date)}: findings, deviations, squawks, looks due, cures and holds.`,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    dimension: {
      figure: String(count),
      says: count === 1 ? "item open" : "items open",
    },
    findings,
    deviations: deviations.map((each) => deviationView(record, links, each)),
    squawks: squawks.map((each) => squawkView(record, links, each)),
    looks,
    cures: cures.map((each) => cureView(record, links, each)),
    holds: holds.map((each) => holdView(links, each)),
    lots: analysis.lots.flatMap(({ lot, expiry }) =>
      expiry !== undefined && soon(expiry) ? [lastDay(`${lot.title} (${lot.id})`, expiry)] : [],
    ),
    calibrations: analysis.instruments.flatMap(({ instrument, calibration }) =>
      calibration?.due !== undefined && soon(calibration.due)
        ? [lastDay(instrument.title, calibration.due)]
        : [],
    ),
    block: {
      title: "Open items",
      number: "open items",
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "findings", value: String(findings.length) },
        { label: "squawks", value: String(squawks.length) },
        { label: "days in the record", value: String(build.days.length) },
      ],
    },
    search: { filters: [["sheet", "open items"]], meta: { title: "Open items" }, sort: {} },
  };
}

// Only steps that have been begun: a look at nothing is not due.
function looksDue(record: RecordIndex, links: ReturnType<typeof linksFrom>): LookDue[] {
  const { build, steps } = record.analysis;
  return [...steps.values()].flatMap(({ step, stage, looks }) =>
    stage === undefined
      ? []
      : looks
          .filter(({ done }) => !done)
          .map(({ look, inspection }) => ({
            step: links.step(step),
            title: build.steps.get(step)?.title ?? step,
            look,
            stage,
            standing: inspection ? `held: ${inspection.findings}` : "not yet",
          })),
  );
}
