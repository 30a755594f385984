import type { Analysis } from "../../compute/analysis.ts";
import type { CellTable, CellValue, ColumnKind } from "../../present/tables/table.ts";
import { type CsvCell, csvRecords } from "./csv-records.ts";
import { spreadsheetText } from "./spreadsheet-text.ts";

/**
 * A table as CSV (RFC 4180) that a spreadsheet opens without changing or running anything:
 * UTF-8 with a byte order mark, CRLF, column keys in the first line, numbers bare, text
 * guarded as `spreadsheetText` says, `yes` and `no` for true and false, nothing for unknown.
 */
export function csvText(table: CellTable, analysis: Analysis): string {
  const kinds = table.heads.map(({ kind }) => kind);
  return csvRecords([
    table.heads.map(({ key }) => key),
    ...table
      .cells(analysis)
      .map((cells) => cells.map((value, index) => cellText(value, kinds[index] ?? "text"))),
  ]);
}

function cellText(value: CellValue, kind: ColumnKind): CsvCell {
  if (typeof value === "boolean") return value ? "yes" : "no";
  // A date and a clock time are meant to be read as such.
  if (typeof value === "string" && kind === "text") return spreadsheetText(value);
  return value;
}
