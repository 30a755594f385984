import { authorityText } from "../../compute/limits-text.ts";
import { citationText, type SourceStatus } from "../../model/citation.ts";
import { ruleSets } from "../../model/published/rule-sets.ts";
import { statementGroups } from "../../model/published/statements.ts";
import { type PublishedTable, publishedTables } from "../../model/published/tables.ts";
import { inUnit, type RuleSet, type RuleSetArgument } from "../../model/rule-set.ts";
import { anchorOf, places, rootOf } from "./addresses.ts";
import { type Links, linksFrom, placeLink } from "./links.ts";
import type { Link, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { boundsText } from "./views/bounds-text.ts";

/** A rule of this project. */
export interface ProjectRule {
  readonly rule: Link;
  readonly limits: string;
  readonly source: string;
  readonly advice: readonly string[];
}

/** A rule set that comes with the program. */
export interface ShippedSet {
  readonly set: Link;
  readonly title: string;
  /** Who it speaks for: `published`, `common practice`. */
  readonly authority: string;
  readonly source: string;
  /** How far the values were checked when they were copied. */
  readonly status: string;
  /** Rules of this project that take their limits from it. */
  readonly usedBy: readonly Link[];
}

/** Where every limit comes from. */
export interface LimitsPage extends Page<"limits"> {
  readonly rules: readonly ProjectRule[];
  readonly sets: readonly ShippedSet[];
  readonly tables: readonly ShippedTable[];
  /** The page of what publications say in words. */
  readonly inWords: Link;
  /** How many statements stand there. */
  readonly statements: number;
}

/** A table that sums are made with. */
export interface ShippedTable {
  readonly table: Link;
  readonly source: string;
  /** How far the values were checked when they were copied. */
  readonly status: string;
}

/** One table with every value in it. */
export interface LimitTablePage extends Page<"limit table">, Omit<ShippedTable, "table"> {
  /** A heading that starts with `#` stands over numbers. */
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

/** What publications say without a limit in it. */
export interface InWordsPage extends Page<"in words"> {
  readonly groups: readonly {
    readonly subject: string;
    readonly anchor: string;
    readonly note?: string;
    readonly statements: readonly {
      readonly says: string;
      readonly source: string;
      /** Present where the source itself was not read. */
      readonly status?: string;
    }[];
  }[];
}

/** One rule set with every value in it. */
export interface LimitSetPage extends Page<"limit set">, Omit<ShippedSet, "title" | "set"> {
  readonly advice: readonly string[];
  /** What has to be said to take a limit from it, one heading each. */
  readonly parameters: readonly string[];
  readonly rows: readonly LimitRow[];
}

/** One row of a set: what is given, in the order of the parameters, and the limits. */
export interface LimitRow {
  readonly given: readonly string[];
  readonly limits: string;
}

const statuses: Record<SourceStatus, string> = {
  read: "read in the source",
  secondary: "taken from a quotation of the source, not from the source itself",
  memory: "not taken from a source that could be named",
};

/** The page of limits. */
export function limitsPage(record: RecordIndex): LimitsPage {
  const url = places.limits;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { rules } = record.analysis.build;
  return {
    kind: "limits",
    url,
    root,
    part: "limits",
    title: "Where the limits come from",
    description:
      "Every rule a reading is judged against and every limit that comes with the program, with document, place and how far it was checked.",
    over: [
      { text: `${rules.size} rules of this project` },
      { text: `${ruleSets.size} sets shipped` },
    ],
    rules: [...rules.values()].map((rule) => ({
      rule: links.rule(rule.id),
      limits: boundsText(rule),
      source: authorityText(rule),
      advice: rule.advice,
    })),
    sets: [...ruleSets.values()].map((set) => shippedSet(record, links, set)),
    tables: publishedTables.map((table) => ({
      table: { text: table.title, href: links.to(tableUrl(table)) },
      source: table.source,
      status: tableStatus(table),
    })),
    inWords: { text: "What publications say in words", href: links.to(inWordsUrl) },
    statements: statementCount,
    block: {
      title: "Where the limits come from",
      number: "limits",
      cells: [
        { label: "rules", value: String(rules.size) },
        { label: "sets", value: String(ruleSets.size) },
      ],
    },
    search: {
      filters: [["sheet", "limits"]],
      meta: { title: "Where the limits come from" },
      sort: {},
    },
  };
}

/** The page of one shipped rule set. */
export function limitSetPage(record: RecordIndex, set: RuleSet): LimitSetPage {
  const url = limitSetUrl(set.name);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { title, set: _self, ...shipped } = shippedSet(record, links, set);
  const rows = rowsOf(set);
  return {
    kind: "limit set",
    url,
    root,
    part: "limits",
    title,
    description: `${title}: ${shipped.source}. Every value, ${shipped.status}.`,
    over: [placeLink(root, "limits", "limits"), { text: set.name }],
    dimension: {
      figure: String(rows.length),
      says: rows.length === 1 ? "limit" : "limits",
    },
    ...shipped,
    advice: set.advice,
    parameters: set.parameters.map(({ name }) => name),
    rows,
    block: {
      title,
      number: "limits",
      cells: [
        { label: "set", value: set.name },
        { label: "source", value: shipped.source },
        { label: "copied", value: shipped.status },
      ],
    },
    search: { filters: [["sheet", "limits"]], meta: { title }, sort: {} },
  };
}

/** The page of one table that sums are made with. */
export function limitTablePage(table: PublishedTable): LimitTablePage {
  const url = tableUrl(table);
  const root = rootOf(url);
  const { title, source, heads, rows, notes } = table;
  const status = tableStatus(table);
  return {
    kind: "limit table",
    url,
    root,
    part: "limits",
    title,
    description: `${title}: ${source}. Every value, ${status}.`,
    over: [placeLink(root, "limits", "limits"), { text: "a table behind the sums" }],
    dimension: { figure: String(rows.length), says: "rows" },
    source,
    status,
    heads,
    rows,
    notes,
    block: {
      title,
      number: "limits",
      cells: [
        { label: "source", value: source },
        { label: "copied", value: status },
      ],
    },
    search: { filters: [["sheet", "limits"]], meta: { title }, sort: {} },
  };
}

/** The page of what publications say in words. */
export function inWordsPage(): InWordsPage {
  const root = rootOf(inWordsUrl);
  const title = "What publications say in words";
  return {
    kind: "in words",
    url: inWordsUrl,
    root,
    part: "limits",
    title,
    description:
      "What circulars, manuals and makers say that is no limit for a reading, by kind of work, each with its document and place.",
    over: [placeLink(root, "limits", "limits"), { text: "no limits" }],
    dimension: { figure: String(statementCount), says: "statements" },
    groups: statementGroups.map(({ subject, note, statements }) => ({
      subject,
      anchor: anchorOf("words", subject),
      ...(note === undefined ? {} : { note }),
      statements: statements.map(({ says, citation }) => ({
        says,
        source: citationText(citation),
        ...(citation.status === "read" ? {} : { status: statuses[citation.status ?? "read"] }),
      })),
    })),
    block: {
      title,
      number: "limits",
      cells: [{ label: "statements", value: String(statementCount) }],
    },
    search: { filters: [["sheet", "limits"]], meta: { title }, sort: {} },
  };
}

const inWordsUrl = `${places.limits}in-words/`;

const statementCount = statementGroups.reduce((sum, { statements }) => sum + statements.length, 0);

// No set is called `table-…` or `in-words`; a test holds the names apart.
function tableUrl({ name }: PublishedTable): string {
  return `${places.limits}table-${name}/`;
}

function tableStatus({ status }: PublishedTable): string {
  return status === undefined ? "row by row as marked" : statuses[status];
}

/** Where the page of a shipped set stands. Names of sets are fit for addresses as they are. */
export function limitSetUrl(name: string): string {
  return `${places.limits}${name}/`;
}

function shippedSet(record: RecordIndex, links: Links, set: RuleSet): ShippedSet {
  const { rules } = record.analysis.build;
  return {
    set: { text: set.name, href: links.to(limitSetUrl(set.name)) },
    title: set.title,
    authority: set.authority,
    source: citationText(set.citation),
    status: statuses[set.citation.status ?? "read"],
    usedBy: [...rules.values()]
      .filter((rule) => rule.set === set.name)
      .map(({ id }) => links.rule(id)),
  };
}

// Shanks and holes of every table shipped; a set without a row for one says so and is passed over.
const sizes = ["1/16", "3/32", "1/8", "5/32", "3/16", "1/4", "5/16", "3/8"];

function rowsOf(set: RuleSet): LimitRow[] {
  const rows = argumentsOf(set).flatMap((given) => {
    const found = set.limits(given);
    if (!found.ok) return [];
    return [
      {
        given: set.parameters.map(({ name }) => {
          const value = given.get(name);
          return typeof value === "string" ? value : (value?.typed ?? "");
        }),
        limits: [boundsText(found), ...found.notes].join("; "),
      },
    ];
  });
  return set.parameters.reduce<LimitRow[]>(
    (all, { kind }, index) => (kind === "size" ? withoutSize(all, index) : all),
    rows,
  );
}

// Limits in terms of a size read the same for each of them: one row, for any size.
function withoutSize(rows: readonly LimitRow[], index: number): LimitRow[] {
  const merged = new Map<string, LimitRow>();
  for (const { given, limits } of rows) {
    const rest = given.with(index, "any");
    const key = rest.join("\n");
    const known = merged.get(key);
    if (known && known.limits !== limits) return [...rows];
    merged.set(key, { given: rest, limits });
  }
  return merged.size === rows.length ? [...rows] : [...merged.values()];
}

function argumentsOf({ parameters }: RuleSet): Map<string, RuleSetArgument>[] {
  return parameters.reduce<Map<string, RuleSetArgument>[]>(
    (all, parameter) => {
      const values: readonly RuleSetArgument[] =
        parameter.kind === "choice" ? parameter.values : sizes.map((size) => inUnit(size, "in"));
      return all.flatMap((given) =>
        values.map((value) => new Map([...given, [parameter.name, value]])),
      );
    },
    [new Map()],
  );
}
