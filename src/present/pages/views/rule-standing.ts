import { precedenceReason } from "../../../compute/limits-text.ts";
import type { LimitTable } from "../../../model/limit-table.ts";
import type { FigureKind, ToleranceRule } from "../../../model/tolerance.ts";
import type { Links } from "../links.ts";
import type { Link, Mention } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** A table of limits as typed. */
export interface LimitTableView {
  /** A heading that starts with `#` stands over numbers. */
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Two rules of which one is used in place of the other. */
export interface RulePrecedence {
  readonly other: Link;
  /** A part of a sentence: `a limit of the drawing comes before a published one`. */
  readonly why: string;
  /** The steps on which that is so; empty: on all. */
  readonly steps: readonly Link[];
}

/** How a rule stands among others, and what it holds against its limits. */
export interface RuleStanding {
  /** A sentence on what is judged in place of each value. */
  readonly judges?: string;
  readonly table?: LimitTableView;
  /** The general rule that it wins over. */
  readonly over?: RulePrecedence;
  /** The rules that win over it. */
  readonly under: readonly RulePrecedence[];
  /** Readings that name it and are judged by another rule. */
  readonly wonOver: readonly Mention[];
}

const sentences: Readonly<Record<FigureKind, string>> = {
  difference: "What is judged is the difference of two values, without its sign.",
  range: "What is judged is the range: the highest value of a series less the lowest.",
  "run-out":
    "What is judged is the run-out: the highest reading of the dial over a turn less the lowest.",
};

/** Everything that a rule's page says of it beside its limits and its readings. */
export function ruleStanding(record: RecordIndex, links: Links, rule: ToleranceRule): RuleStanding {
  const { rules } = record.analysis.build;
  const general = rule.over && rules.get(rule.over.rule);
  const winners = [...rules.values()].filter(({ over }) => over?.rule === rule.id);
  return {
    ...(rule.judges ? { judges: sentences[rule.judges] } : {}),
    ...(rule.table ? { table: tableView(rule.table) } : {}),
    ...(general ? { over: precedence(links, rule, general, general) } : {}),
    under: winners.map((winner) => precedence(links, winner, rule, winner)),
    wonOver: (record.readingsWonOver.get(rule.id) ?? []).map(({ reading }) =>
      links.reading(reading.id),
    ),
  };
}

function precedence(
  links: Links,
  winner: ToleranceRule,
  general: ToleranceRule,
  other: ToleranceRule,
): RulePrecedence {
  return {
    other: links.rule(other.id),
    why: precedenceReason(winner, general),
    steps: (winner.over?.steps ?? []).map((step) => links.step(step)),
  };
}

const columns = [
  ["lower", "#At least"],
  ["upper", "#At most"],
  ["nominal", "#Nominal"],
] as const;

function tableView({ by, rows }: LimitTable): LimitTableView {
  const used = columns.filter(([name]) => rows.some((row) => row[name] !== undefined));
  return {
    heads: [`#${by.charAt(0).toUpperCase()}${by.slice(1)}`, ...used.map(([, head]) => head)],
    rows: rows.map((row) => [row.at.typed, ...used.map(([name]) => row[name]?.typed ?? "")]),
  };
}
