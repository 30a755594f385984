import type { Span } from "../../model/diagnostic.ts";
import type { Column } from "./table.ts";

/** The last two columns of every table: where in the journal the row was typed. */
export function sourceColumns<Row>(spanOf: (row: Row) => Span): Column<Row>[] {
  return [
    {
      key: "file",
      heading: "File",
      kind: "text",
      means: "File of the journal in which this was typed.",
      value: (row) => spanOf(row).file,
    },
    {
      key: "line",
      heading: "Line",
      kind: "number",
      means: "Line in that file, counted from 1.",
      value: (row) => spanOf(row).line,
    },
  ];
}
