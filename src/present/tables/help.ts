import type { Analysis } from "../../compute/analysis.ts";
import type { HelpState, UnlistedHelp } from "../../compute/ledgers/help.ts";
import type { HelpEntry } from "../../model/help.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import { personName } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** A row of the register, or help that only sessions tell of. */
export interface HelpRow {
  readonly analysis: Analysis;
  readonly listed?: HelpState;
  readonly unlisted?: UnlistedHelp;
}

/** The rows of the register by their first day, then what only sessions have. */
export function helpRows(analysis: Analysis): readonly HelpRow[] {
  const { help } = analysis;
  if (!help) return [];
  return [
    ...help.rows.map((listed): HelpRow => ({ analysis, listed })),
    ...help.unlisted.map((unlisted): HelpRow => ({ analysis, unlisted })),
  ];
}

/** Shares of tasks in words: `W3 0.3, W4 0.1`. */
export function sharesText({ shares }: Pick<HelpEntry, "shares">): string {
  return [...shares].map(([task, tenths]) => `${task} ${tenthsText(tenths)}`).join(", ");
}

export const helpTable: Table<HelpRow> = tableOf({
  name: "help",
  title: "Help received",
  rows: helpRows,
  columns: [
    {
      key: "id",
      heading: "No.",
      kind: "text",
      means: "Number of the row; empty: only sessions tell of it.",
      value: ({ listed }) => listed?.entry.id,
    },
    {
      key: "person",
      heading: "Who",
      kind: "text",
      means: "Who helped; a person's id.",
      value: ({ listed, unlisted }) => listed?.entry.person ?? unlisted?.person,
    },
    {
      key: "name",
      heading: "Name",
      kind: "text",
      means: "Their name, as the edition gives it.",
      value: ({ analysis, listed, unlisted }) =>
        personName(analysis.build, listed?.entry.person ?? unlisted?.person ?? ""),
    },
    {
      key: "kind",
      heading: "Kind",
      kind: "text",
      means: "Paid help, unpaid help, or instruction, which is counted as neither.",
      value: ({ listed, unlisted }) => listed?.entry.kind ?? unlisted?.kind,
    },
    {
      key: "from",
      heading: "From",
      kind: "date",
      means: "First day.",
      value: ({ listed, unlisted }) => listed?.entry.from ?? unlisted?.date,
    },
    {
      key: "to",
      heading: "To",
      kind: "date",
      means: "Last day, inclusive.",
      value: ({ listed, unlisted }) => listed?.entry.to ?? unlisted?.date,
    },
    {
      key: "what",
      heading: "What",
      kind: "text",
      means: "What they did.",
      value: ({ listed }) => listed?.entry.what,
    },
    {
      key: "place",
      heading: "Place",
      kind: "text",
      means: "Where.",
      value: ({ listed }) => listed?.entry.place,
    },
    {
      key: "shares",
      heading: "Shares",
      kind: "text",
      means: "Share of each task in points, of paid help.",
      value: ({ listed }) => (listed && sharesText(listed.entry)) || undefined,
    },
    {
      key: "minutes",
      heading: "Minutes",
      kind: "number",
      means: "Minutes that sessions have of it; shares are never computed from them.",
      value: ({ listed, unlisted }) => listed?.minutes ?? unlisted?.minutes,
    },
    {
      key: "invoice",
      heading: "Invoice",
      kind: "text",
      means: "Number of the bill; in the private edition only.",
      value: ({ listed }) => listed?.entry.invoice,
    },
    {
      key: "note",
      heading: "Note",
      kind: "text",
      means: "The builder's remark.",
      value: ({ listed }) => listed?.entry.note,
    },
    ...sourceColumns<HelpRow>(({ analysis, listed, unlisted }) => {
      const line = unlisted?.lines[0];
      return listed?.entry.span ?? line?.session.span ?? analysis.build.project.span;
    }),
  ],
});
