import type { Analysis, LotState } from "../../compute/analysis.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** The rows of the lots, in the order declared. */
export function lotRows({ lots }: Analysis): readonly LotState[] {
  return lots;
}

export const lotsTable: Table<LotState> = tableOf({
  name: "lots",
  title: "Lots",
  rows: lotRows,
  columns: [
    {
      key: "lot",
      heading: "Lot",
      kind: "text",
      means: "Id of the lot.",
      value: ({ lot }) => lot.id,
    },
    {
      key: "title",
      heading: "Title",
      kind: "text",
      means: "What it is.",
      value: ({ lot }) => lot.title,
    },
    {
      key: "material",
      heading: "Material",
      kind: "text",
      means: "Kind of material.",
      value: ({ lot }) => lot.material,
    },
    {
      key: "made",
      heading: "Made",
      kind: "date",
      means: "Maker's date.",
      value: ({ lot }) => lot.made,
    },
    {
      key: "marked_expiry",
      heading: "Marked expiry",
      kind: "date",
      means: "Last day of use as marked by the maker, inclusive; empty: does not expire.",
      value: ({ lot }) => lot.expires,
    },
    {
      key: "extensions",
      heading: "Extensions",
      kind: "text",
      means: "Later expiries given to it: when, until when, and why; parted by semicolons.",
      value: ({ lot }) =>
        lot.extensions.map(({ on, until, why }) => `on ${on} until ${until}: ${why}`).join("; ") ||
        undefined,
    },
    {
      key: "expiry",
      heading: "Expiry",
      kind: "date",
      means: "Last day of use as known on the day of judgement, inclusive.",
      value: ({ expiry }) => expiry,
    },
    {
      key: "expired",
      heading: "Expired",
      kind: "yes or no",
      means: "Whether it had expired on the day of judgement.",
      value: ({ expired }) => expired,
    },
    {
      key: "days_left",
      heading: "Days left",
      kind: "number",
      means: "Days left on the day of judgement; negative: days past.",
      value: ({ daysLeft }) => daysLeft,
    },
    {
      key: "uses",
      heading: "Uses",
      kind: "number",
      means: "How many sessions and cures used it.",
      value: ({ uses }) => uses.length,
    },
    {
      key: "first_used",
      heading: "First used",
      kind: "date",
      means: "Date of the first use.",
      value: ({ uses }) => uses.map(({ date }) => date).sort()[0],
    },
    {
      key: "last_used",
      heading: "Last used",
      kind: "date",
      means: "Date of the last use.",
      value: ({ uses }) =>
        uses
          .map(({ date }) => date)
          .sort()
          .at(-1),
    },
    ...sourceColumns<LotState>(({ lot }) => lot.span),
  ],
});
