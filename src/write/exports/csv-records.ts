import { stringify } from "csv-stringify/sync";

/** A cell of a CSV file; `undefined` is an empty one. */
export type CsvCell = string | number | undefined;

/**
 * Records as CSV (RFC 4180): UTF-8 with a byte order mark, CRLF between records. A cell with a
 * line end of any kind is quoted: readers take a bare LF or CR for the end of a record, and what
 * stands behind it for the beginning of a cell.
 */
export function csvRecords(records: readonly (readonly CsvCell[])[]): string {
  return stringify(
    records.map((record) => [...record]),
    { bom: true, record_delimiter: "windows", quoted_match: /[\r\n]/ },
  );
}
