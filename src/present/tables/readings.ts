import type { Analysis, JudgedReading, JudgedValue } from "../../compute/analysis.ts";
import type { Build } from "../../model/build.ts";
import { citationText } from "../../model/citation.ts";
import type { Quantity } from "../../model/quantity.ts";
import { assemblyOf } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** One value of a reading. */
export interface ReadingRow {
  readonly judged: JudgedReading;
  readonly value: JudgedValue;
  /** Counted from 1 within the reading. */
  readonly number: number;
  readonly assembly?: string;
  /** All values of the reading as they stood before they were first amended, if they were. */
  readonly before?: readonly Quantity[];
}

/** The rows of the readings: one per value, by date, then in the order typed. */
export function readingRows({ build, readings }: Analysis): ReadingRow[] {
  const before = valuesBefore(build);
  return readings.flatMap((judged) => {
    const was = before.get(judged.reading.id);
    const assembly = assemblyOf(build, judged.reading);
    return judged.values.map((value, index) => ({
      judged,
      value,
      number: index + 1,
      ...(assembly === undefined ? {} : { assembly }),
      ...(was ? { before: was } : {}),
    }));
  });
}

export const readingsTable: Table<ReadingRow> = tableOf({
  name: "readings",
  title: "Readings, one row per value",
  rows: readingRows,
  columns: [
    {
      key: "reading",
      heading: "Id",
      kind: "text",
      means: "Id of the reading.",
      value: ({ judged }) => judged.reading.id,
    },
    {
      key: "value_number",
      heading: "No.",
      kind: "number",
      means: "Which value of the reading, counted from 1.",
      value: ({ number }) => number,
    },
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "The day of the entry.",
      value: ({ judged }) => judged.reading.date,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly, its own or the one of its step.",
      value: ({ assembly }) => assembly,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step.",
      value: ({ judged }) => judged.reading.step,
    },
    {
      key: "what",
      heading: "What",
      kind: "text",
      means: "What was measured.",
      value: ({ judged }) => judged.reading.what,
    },
    {
      key: "at",
      heading: "Where",
      kind: "text",
      means: "Where it was measured.",
      value: ({ judged }) => judged.reading.at,
    },
    {
      key: "value_as_typed",
      heading: "Reading",
      kind: "text",
      means: "The value as typed, with its unit; one that is made of others, as computed.",
      value: ({ value }) => value.value.quantity.typed,
    },
    {
      key: "value",
      heading: "Value",
      kind: "number",
      means: "The same value as a decimal number, in the unit beside it.",
      value: ({ value }) => value.value.quantity.amount.valueOf(),
    },
    {
      key: "unit",
      heading: "Unit",
      kind: "text",
      means: "Unit of `value`, `lower` and `upper`.",
      value: ({ value }) => value.value.quantity.unit.symbol,
    },
    {
      key: "first_typed",
      heading: "First typed",
      kind: "text",
      means:
        "All values of the reading as first typed, where they were amended since; empty: they stand as typed.",
      value: ({ before }) => before?.map(({ typed }) => typed).join(", "),
    },
    {
      key: "rule",
      heading: "Rule",
      kind: "text",
      means: "Id of the rule it answers to: the one named, or the one that wins over it.",
      value: ({ judged }) => judged.rule?.id ?? judged.reading.rule,
    },
    {
      key: "wins_over",
      heading: "Wins over",
      kind: "text",
      means: "Id of the general rule that the reading names, where the rule wins over it.",
      value: ({ judged }) => judged.over?.id,
    },
    {
      key: "judged_as",
      heading: "Judged as",
      kind: "text",
      means:
        "What the value is made of others as: `difference`, `range` or `run-out`; empty: as it is.",
      value: ({ judged }) => judged.figure?.kind,
    },
    {
      key: "made_of",
      heading: "Made of",
      kind: "text",
      means: "The values as typed that it is made of, each with the id of its reading.",
      value: ({ judged }) => madeOf(judged),
    },
    {
      key: "temperature",
      heading: "Temperature",
      kind: "text",
      means: "The temperature that the rule's table was entered with, as typed.",
      value: ({ judged }) =>
        judged.rule?.table?.by === "temperature"
          ? judged.reading.temperature?.quantity.typed
          : undefined,
    },
    {
      key: "lower",
      heading: "Lower limit",
      kind: "number",
      means: "Lower limit, inclusive, in the unit of the value; empty: none.",
      value: ({ judged, value }) => inUnitOf(judged.limits.lower, value.value.quantity),
    },
    {
      key: "upper",
      heading: "Upper limit",
      kind: "number",
      means: "Upper limit, inclusive, in the unit of the value; empty: none.",
      value: ({ judged, value }) => inUnitOf(judged.limits.upper, value.value.quantity),
    },
    {
      key: "verdict",
      heading: "Verdict",
      kind: "text",
      means: "`within`, `below` or `above` the limits as written; empty without a rule.",
      value: ({ judged, value }) => (judged.rule ? value.verdict.kind : undefined),
    },
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "What stands behind the reading: within, out, superseded, accounted for or no rule.",
      value: ({ judged }) => judged.standing,
    },
    {
      key: "assurance",
      heading: "Assurance",
      kind: "text",
      means: "What the instrument's uncertainty says about conformity, where it is known.",
      value: ({ value }) => value.assurance?.kind,
    },
    {
      key: "probability",
      heading: "Probability",
      kind: "number",
      means: "Conformance probability, 0 to 1.",
      value: ({ value }) => value.assurance?.probability,
    },
    {
      key: "accept_from",
      heading: "Accepted from",
      kind: "number",
      means:
        "Least reading that the rule's guard band accepts, in the unit of the value; empty: none, or no guard band.",
      value: ({ value }) => value.acceptance?.from,
    },
    {
      key: "accept_to",
      heading: "Accepted to",
      kind: "number",
      means:
        "Greatest reading that the rule's guard band accepts, in the unit of the value; empty: none, or no guard band.",
      value: ({ value }) => value.acceptance?.to,
    },
    {
      key: "decision",
      heading: "Decision rule",
      kind: "text",
      means: "How the rule lets uncertainty enter the decision.",
      value: ({ judged }) => judged.rule?.decision,
    },
    {
      key: "authority",
      heading: "Authority",
      kind: "text",
      means: "Who the rule speaks for: drawing, manual, published or common practice.",
      value: ({ judged }) => judged.rule?.authority,
    },
    {
      key: "source",
      heading: "Source",
      kind: "text",
      means: "Document, edition and place the limits are taken from.",
      value: ({ judged }) => (judged.rule ? citationText(judged.rule.citation) : undefined),
    },
    {
      key: "instrument",
      heading: "Instrument",
      kind: "text",
      means: "Id of the instrument.",
      value: ({ judged }) => judged.reading.instrument,
    },
    {
      key: "superseded_by",
      heading: "Superseded by",
      kind: "text",
      means: "Id of the later reading that replaces this one.",
      value: ({ judged }) => judged.supersededBy,
    },
    {
      key: "deviation",
      heading: "Deviation",
      kind: "text",
      means: "Id of the deviation that accounts for it.",
      value: ({ judged }) => judged.reading.deviation,
    },
    ...sourceColumns<ReadingRow>(({ value }) => value.value.span),
  ],
});

// Of several amendments the oldest tells what was first typed.
function valuesBefore({ days }: Build): ReadonlyMap<string, readonly Quantity[]> {
  const first = new Map<string, readonly Quantity[]>();
  for (const { reading } of days.flatMap(({ amendments }) => amendments))
    if (reading && reading.values.length > 0 && !first.has(reading.id))
      first.set(reading.id, reading.values);
  return first;
}

function madeOf({ figure }: JudgedReading): string | undefined {
  if (!figure) return undefined;
  return figure.of
    .flatMap(({ id, values }) => values.map(({ quantity }) => `${quantity.typed} (${id})`))
    .join(", ");
}

/** A limit in the unit of a value: exact until the last step, which makes it a plain number. */
function inUnitOf(limit: Quantity | undefined, value: Quantity): number | undefined {
  if (!limit || limit.unit.dimension !== value.unit.dimension) return undefined;
  const base = limit.amount.mul(limit.unit.factor).add(limit.unit.offset);
  return base.sub(value.unit.offset).div(value.unit.factor).valueOf();
}
