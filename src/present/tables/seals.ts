import type { Seal } from "../../model/seal.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

export const sealsTable: Table<Seal> = tableOf({
  name: "seals",
  title: "Seals of months",
  rows: ({ build }) => build.seals,
  columns: [
    {
      key: "month",
      heading: "Month",
      kind: "text",
      means: "The month closed.",
      value: ({ month }) => month,
    },
    {
      key: "digest",
      heading: "Seal",
      kind: "text",
      means: "SHA-256 of the seal's bytes; its first twelve digits are the short seal.",
      value: ({ digest }) => digest,
    },
    {
      key: "previous",
      heading: "Seal before",
      kind: "text",
      means: "SHA-256 of the seal that this one was made after; empty for the first.",
      value: ({ previous }) => previous?.digest,
    },
    {
      key: "entries",
      heading: "Entries",
      kind: "number",
      means: "How many entries it names.",
      value: ({ entries }) => entries.length,
    },
    {
      key: "photographs",
      heading: "Photographs",
      kind: "number",
      means: "How many photographs it names.",
      value: ({ photos }) => photos.length,
    },
    {
      key: "minutes",
      heading: "Minutes",
      kind: "number",
      means: "Minutes of the build in the month, when it was sealed.",
      value: ({ inMonth }) => inMonth.build,
    },
    {
      key: "minutes_apart",
      heading: "Minutes apart",
      kind: "number",
      means: "Minutes of study and shop in the month, when it was sealed.",
      value: ({ inMonth }) => inMonth.apart,
    },
    {
      key: "minutes_to_date",
      heading: "Minutes to date",
      kind: "number",
      means: "Minutes of the build up to the month's end, when it was sealed.",
      value: ({ toDate }) => toDate.build,
    },
    {
      key: "minutes_apart_to_date",
      heading: "Minutes apart to date",
      kind: "number",
      means: "Minutes of study and shop up to the month's end, when it was sealed.",
      value: ({ toDate }) => toDate.apart,
    },
    {
      key: "program",
      heading: "Program",
      kind: "text",
      means: "Version of the program that made it.",
      value: ({ version }) => version,
    },
    ...sourceColumns<Seal>(({ span }) => span),
  ],
});
