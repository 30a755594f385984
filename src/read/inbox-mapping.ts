import type { Faults } from "./faults.ts";
import {
  choice,
  list,
  optional,
  type RecordOf,
  record,
  required,
  type Shape,
  text,
  textAs,
} from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** What a column of an older log may hold. */
export const inboxColumns = [
  "date",
  "assembly",
  "step",
  "who",
  "from",
  "to",
  "hours",
  "kind",
  "note",
] as const;
export type InboxColumn = (typeof inboxColumns)[number];

/** What is to be done with rows that say the same. */
const sameRows = ["once", "each"] as const;

const columnFields = {
  date: required(text, "date: Date"),
  assembly: optional(text, "assembly: Part"),
  step: optional(text, "step: Task"),
  who: optional(text, "who: Worked by"),
  from: optional(text, "from: Start"),
  to: optional(text, "to: End"),
  hours: optional(text, "hours: Time"),
  kind: optional(text, "kind: Type"),
  note: optional(text, "note: Remarks"),
};

const alwaysFields = {
  assembly: optional(text, "assembly: wing"),
  step: optional(text, "step: W-1"),
  who: optional(namesShape(), "who: ada"),
  kind: optional(text, "kind: assemble"),
};

const valueFields = {
  assembly: optional(valuesOf(text), "assembly: { Tail: empennage }"),
  step: optional(valuesOf(text), "step: { Rivet ribs: HS-07 }"),
  who: optional(valuesOf(namesShape()), "who: { me: ada, both of us: [ada, jon] }"),
  kind: optional(valuesOf(text), "kind: { Work: assemble }"),
};

const mappingFields = {
  columns: required(
    record("the columns", columnFields),
    "columns: { date: Date, assembly: Part, hours: Time }",
  ),
  values: optional(record("the values", valueFields), "values: { assembly: { Tail: empennage } }"),
  always: optional(
    record("what is always so", alwaysFields),
    "always: { who: ada, kind: assemble }",
  ),
  date: optional(datePattern(), "date: DD.MM.YYYY"),
  separator: optional(separatorShape(), 'separator: ";"'),
  "same-rows": optional(choice("way with rows that say the same", sameRows), "same-rows: once"),
};

/** How the columns of an older log become sessions: the shape of a mapping file. */
export const mappingShape: Shape<RecordOf<typeof mappingFields>> = record(
  "a mapping",
  mappingFields,
);
export type InboxMapping = NonNullable<ReturnType<typeof mappingShape>>;

/** A pattern such as `DD.MM.YYYY`, and a function that reads dates in it. */
export interface DatePattern {
  readonly typed: string;
  /** `2026-03-14`, which may be a day that does not exist; `undefined` when it does not fit. */
  readonly read: (text: string) => string | undefined;
}

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

const dateParts: Readonly<Record<string, string>> = {
  YYYY: String.raw`(?<year>\d{4})`,
  YY: String.raw`(?<year>\d{2})`,
  MMM: "(?<month>[A-Za-z]{3})[a-z]*\\.?",
  MM: String.raw`(?<month>\d{1,2})`,
  DD: String.raw`(?<day>\d{1,2})`,
};

/** The pattern of a date as people write it in spreadsheets. Years of two digits are of this century. */
export function datePatternOf(typed: string): DatePattern | undefined {
  const parts = typed.match(/YYYY|YY|MMM|MM|DD/g) ?? [];
  const kinds = parts.map((part) => part[0]).sort();
  if (kinds.join("") !== "DMY") return undefined;
  const form = typed
    .split(/(YYYY|YY|MMM|MM|DD)/)
    .map((part) => dateParts[part] ?? part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
    .join("");
  const expression = new RegExp(`^${form}$`);
  return {
    typed,
    read: (text) => {
      const { year = "", month = "", day = "" } = expression.exec(text)?.groups ?? {};
      if (year === "") return undefined;
      const named = months.indexOf(month.toLowerCase()) + 1;
      return [
        year.length === 2 ? `20${year}` : year,
        String(named || month).padStart(2, "0"),
        day.padStart(2, "0"),
      ].join("-");
    },
  };
}

function datePattern(): Shape<DatePattern> {
  return textAs((node, faults) => {
    const pattern = datePatternOf(node.text);
    if (pattern) return pattern;
    return faults.add("not-a-date", node.span, {
      message: `\`${node.text}\` is not a pattern of a date`,
      help: ["write it with `YYYY`, `MM` or `MMM`, and `DD`, as in `DD.MM.YYYY` or `MM/DD/YYYY`"],
    });
  });
}

function separatorShape(): Shape<TextNode> {
  return textAs((node, faults) => {
    if (node.text === "tab") return { ...node, text: "\t" };
    if (/^[,;|]$/.test(node.text)) return node;
    return faults.add("not-a-choice", node.span, {
      message: `\`${node.text}\` does not part cells`,
      help: ['write `separator: ","`, `";"`, `"|"` or `tab`'],
    });
  });
}

/** One name, or a list of names. */
function namesShape(): Shape<readonly TextNode[]> {
  const names = list("names", text, "[ada, jon]");
  return (node, faults) => {
    if (node.kind === "list") return names(node, faults);
    const one = text(node, faults);
    return one && [one];
  };
}

/** What stands in cells, and what is meant. */
function valuesOf<T>(shape: Shape<T>): Shape<ReadonlyMap<string, T>> {
  return (node, faults: Faults) => {
    if (node.kind !== "map") {
      return faults.add("wrong-shape", node.span, {
        message: "expected what stands in the cells, and what is meant by it",
        help: ["write `{ Tail: empennage, Left wing: left-wing }`"],
      });
    }
    const read = new Map<string, T>();
    for (const [name, { value }] of node.entries) {
      const meant = shape(value, faults);
      if (meant !== undefined) read.set(name.trim(), meant);
    }
    return read;
  };
}
