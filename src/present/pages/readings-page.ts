import type { JudgedReading, ReadingStanding } from "../../compute/analysis.ts";
import { authorityText } from "../../compute/limits-text.ts";
import type { ToleranceRule } from "../../model/tolerance.ts";
import { places, rootOf } from "./addresses.ts";
import { limitSetUrl } from "./limits-page.ts";
import { linksFrom, placeLink } from "./links.ts";
import type { Link, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { boundsText } from "./views/bounds-text.ts";
import { type ReadingView, readingView } from "./views/reading-view.ts";

/** How the readings against one rule came out. */
export interface RuleRow {
  readonly rule: Link;
  readonly source: string;
  readonly limits: string;
  readonly readings: number;
  readonly within: number;
  readonly out: number;
  readonly accountedFor: number;
  readonly superseded: number;
}

/** Every rule with its count, and the readings that answer to none. */
export interface ReadingsPage extends Page<"readings"> {
  readonly rules: readonly RuleRow[];
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
  /** Newest first. */
  readonly readings: readonly ReadingView[];
  readonly row: RuleRow;
}

/** The index of readings. */
export function readingsPage(record: RecordIndex): ReadingsPage {
  const url = places.readings;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { readings, build } = record.analysis;
  const count = (standing: ReadingStanding) => tally(readings, standing);
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
      says: `readings: ${count("within")} within, ${count("out")} out, ${count("accounted for")} out and accounted for, ${count("superseded")} superseded, ${count("no rule")} without a rule`,
    },
    rules: [...build.rules.values()].map((rule) => ruleRow(record, links.rule(rule.id), rule)),
    unruled: readings
      .filter(({ reading }) => reading.rule === undefined)
      .map((each) => readingView(record, links, each)),
    block: {
      title: "Readings",
      number: "readings",
      cells: [
        { label: "readings", value: String(readings.length) },
        { label: "rules", value: String(build.rules.size) },
        { label: "out", value: String(count("out")) },
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
  const readings = (record.readingsByRule.get(rule.id) ?? [])
    .map((each) => readingView(record, links, each))
    .reverse();
  const [filled, ...others] = new Set(readings.map(({ limits }) => limits));
  const row = ruleRow(record, links.rule(rule.id), rule);
  return {
    kind: "rule",
    url,
    root,
    part: "readings",
    title: rule.title,
    description: `${readings.length} readings against ${rule.title}: ${row.limits}. ${row.source}.`,
    over: [placeLink(root, "readings", "readings"), { text: rule.id }],
    dimension: {
      figure: row.limits,
      says: `${row.readings} readings: ${row.within} within, ${row.out} out, ${row.accountedFor} accounted for, ${row.superseded} superseded`,
    },
    source: row.source,
    limits: row.limits,
    advice: rule.advice,
    decision: decisions[rule.decision],
    ...(rule.set === undefined
      ? {}
      : { set: { text: rule.set, href: links.to(limitSetUrl(rule.set)) } }),
    ...(filled !== undefined && others.length === 0 ? { filled } : {}),
    readings,
    row,
    block: {
      title: rule.title,
      number: "rule",
      cells: [
        { label: "limits", value: row.limits },
        { label: "readings", value: String(row.readings) },
        { label: "out", value: String(row.out) },
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
  return {
    rule: link,
    source: authorityText(rule),
    limits: boundsText(rule),
    readings: readings.length,
    within: tally(readings, "within"),
    out: tally(readings, "out"),
    accountedFor: tally(readings, "accounted for"),
    superseded: tally(readings, "superseded"),
  };
}

function tally(readings: readonly JudgedReading[], standing: ReadingStanding): number {
  return readings.filter((each) => each.standing === standing).length;
}
