import type { Analysis } from "../../compute/analysis.ts";
import type { Amendment } from "../../model/amendment.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** Every correction, by the day that carries it, then in the order typed. */
export function amendmentRows({ build }: Analysis): readonly Amendment[] {
  return build.days.flatMap((day) => day.amendments);
}

export const amendmentsTable: Table<Amendment> = tableOf({
  name: "amendments",
  title: "Amendments",
  rows: amendmentRows,
  columns: [
    {
      key: "amended_on",
      heading: "Amended on",
      kind: "date",
      means: "The day whose entry carries the correction.",
      value: ({ date }) => date,
    },
    {
      key: "day",
      heading: "Day",
      kind: "date",
      means: "The day corrected.",
      value: ({ day }) => day,
    },
    {
      key: "field",
      heading: "Value",
      kind: "text",
      means: "Path of the value in the entry of that day, counted from 1.",
      value: ({ field }) => field,
    },
    {
      key: "was",
      heading: "Was",
      kind: "text",
      means: "The value as first typed; empty when there was none.",
      value: ({ was }) => was || undefined,
    },
    {
      key: "now",
      heading: "Now",
      kind: "text",
      means: "The value in force, which all totals use.",
      value: ({ now }) => now,
    },
    { key: "why", heading: "Why", kind: "text", means: "The reason.", value: ({ why }) => why },
    ...sourceColumns<Amendment>(({ span }) => span),
  ],
});
