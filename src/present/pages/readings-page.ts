import type { JudgedReading } from "../../compute/analysis.ts";
import { authorityText } from "../../compute/limits-text.ts";
import { outcomeOf, outcomes } from "../../compute/outcome.ts";
import type { ToleranceRule } from "../../model/tolerance.ts";
import { places, rootOf } from "./addresses.ts";
import { limitSetUrl } from "./limits-page.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { boundsText } from "./views/bounds-text.ts";
import { type Comparison, comparisons } from "./views/comparison.ts";
import {
  type OutcomeCount,
  type OutcomeGroup,
  outcomeCounts,
  outcomeGroups,
  outcomeLegend,
} from "./views/outcome-counts.ts";
import { type ReadingView, readingView } from "./views/reading-view.ts";
import { type RuleStanding, ruleStanding } from "./views/rule-standing.ts";
import { type RunChart, runChart } from "./views/run-chart.ts";

/** How the readings against one rule came out. */
export interface RuleRow {
  readonly rule: Link;
  readonly source: string;
  readonly limits: string;
  /** All of them; it leads to them unless there are none. */
  readonly readings: Mention;
  readonly counts: readonly OutcomeCount[];
}

/** Every rule with its count, and the readings that answer to none. */
export interface ReadingsPage extends Page<"readings"> {
  readonly rules: readonly RuleRow[];
  /** What the counts mean. */
  readonly legend: string;
  /** Newest first. */
  readonly comparisons: readonly Comparison[];
  readonly unruled: readonly ReadingView[];
}

/** Every reading against one rule. */
export interface RulePage extends Page<"rule"> {
  readonly source: string;
  readonly limits: string;
  readonly advice: readonly string[];
  /** How the instrument's uncertainty enters the decision. */
  readonly decision: string;
  readonly set?: Link;
  /** The limits with every size filled in, when they are the same for every reading. */
  readonly filled?: string;
  readonly standing: RuleStanding;
  readonly chart?: RunChart;
  /** Newest first. */
  readonly comparisons: readonly Comparison[];
  /** By outcome, each newest first. */
  readonly groups: readonly OutcomeGroup[];
  readonly row: RuleRow;
}

/** The index of readings. */
export function readingsPage(record: RecordIndex): ReadingsPage {
  const url = places.readings;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { readings, build } = record.analysis;
  const ruled = readings.filter(({ rule }) => rule !== undefined);
  const unruled = readings.filter(({ rule }) => rule === undefined);
  const out = ruled.filter((each) => outcomeOf(each) === "out").length;
  return {
    kind: "readings",
    url,
    root,
    part: "readings",
    title: "Readings",
    description: `${readings.length} readings against ${build.rules.size} rules, each with its verdict and its source.`,
    over: [{ text: `${build.rules.size} rules` }],
    dimension: {
      figure: String(readings.length),
      says: `readings: ${countsText(ruled)}${unruled.length > 0 ? `, ${unruled.length} without a rule` : ""}`,
    },
    rules: [...build.rules.values()].map((rule) => ruleRow(record, links.rule(rule.id), rule)),
    legend: outcomeLegend,
    comparisons: comparisons(record, links, readings.toReversed()),
    unruled: unruled.map((each) => readingView(record, links, each)),
    block: {
      title: "Readings",
      number: "readings",
      cells: [
        { label: "readings", value: String(readings.length) },
        { label: "rules", value: String(build.rules.size) },
        { label: "out", value: String(out) },
      ],
    },
    search: { filters: [["sheet", "readings"]], meta: { title: "Readings" }, sort: {} },
  };
}

/** The page of one rule. */
export function rulePage(record: RecordIndex, rule: ToleranceRule): RulePage {
  const url = record.addresses.rule(rule.id);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const readings = record.readingsByRule.get(rule.id) ?? [];
  const groups = outcomeGroups(readings.toReversed(), (each) => readingView(record, links, each));
  const views = groups.flatMap((group) => group.readings);
  const [filled, ...others] = new Set(views.map(({ limits }) => limits));
  const chart = runChart(rule.title, readings, record.amendmentsByReading);
  const row = ruleRow(record, links.rule(rule.id), rule);
  return {
    kind: "rule",
    styles: ["chart.css"],
    url,
    root,
    part: "readings",
    title: rule.title,
    description: `${readings.length} readings against ${rule.title}: ${row.limits}. ${row.source}.`,
    over: [placeLink(root, "readings", "readings"), { text: rule.id }],
    dimension: {
      figure: row.limits,
      says: `${readings.length === 1 ? "1 reading" : `${readings.length} readings`}${readings.length > 0 ? `: ${countsText(readings)}` : ""}`,
    },
    source: row.source,
    limits: row.limits,
    advice: rule.advice,
    decision: decisions[rule.decision],
    ...(rule.set === undefined
      ? {}
      : { set: { text: rule.set, href: links.to(limitSetUrl(rule.set)) } }),
    ...(filled !== undefined && others.length === 0 ? { filled } : {}),
    standing: ruleStanding(record, links, rule),
    ...(chart ? { chart } : {}),
    comparisons: comparisons(record, links, readings.toReversed()),
    groups,
    row,
    block: {
      title: rule.title,
      number: "rule",
      cells: [
        { label: "limits", value: row.limits },
        { label: "readings", value: row.readings.text },
        {
          label: "out",
          value: String(readings.filter((each) => outcomeOf(each) === "out").length),
        },
      ],
    },
    search: { filters: [["sheet", "rule"]], meta: { title: rule.title }, sort: {} },
  };
}

const decisions: Record<ToleranceRule["decision"], string> = {
  simple: "Simple acceptance: the reading is taken as written against the limit as written.",
  "guarded by U":
    "Guarded by U: for conformity to be proven, the limit is moved inwards by the instrument's expanded uncertainty (JCGM 106:2012).",
  "guarded for 95 %":
    "Guarded for 95 %: for conformity to be proven, the limit is moved inwards by 1.645 standard uncertainties (JCGM 106:2012).",
};

function ruleRow(record: RecordIndex, link: Link, rule: ToleranceRule): RuleRow {
  const readings = record.readingsByRule.get(rule.id) ?? [];
  const { href } = link;
  const text = String(readings.length);
  return {
    rule: link,
    source: authorityText(rule),
    limits: boundsText(rule),
    readings: readings.length === 0 ? { text } : { text, href: `${href}#readings` },
    counts: outcomeCounts(readings, (anchor) => `${href}#${anchor}`),
  };
}

// `6 within, 1 undecided`; what there is none of is not named.
function countsText(readings: readonly JudgedReading[]): string {
  const found = readings.map(outcomeOf);
  return outcomes
    .map((outcome) => ({ outcome, count: found.filter((each) => each === outcome).length }))
    .filter(({ count }) => count > 0)
    .map(({ outcome, count }) => `${count} ${outcome}`)
    .join(", ");
}
