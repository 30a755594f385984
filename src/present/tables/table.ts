import type { Analysis } from "../../compute/analysis.ts";

/** A cell as data. `undefined` is an empty cell, never zero. */
export type CellValue = string | number | boolean | undefined;

/**
 * What a column holds: words; a plain number; a date as `YYYY-MM-DD`; a clock time as
 * `YYYY-MM-DD HH:MM`; yes or no.
 */
export type ColumnKind = "text" | "number" | "date" | "moment" | "yes or no";

/** A column without its rows: what a heading, a reader or a legend needs to know. */
export interface ColumnHead {
  /** Name in CSV and JSON: lower case, words joined by `_`, with the unit where there is one. */
  readonly key: string;
  /** Name on pages and paper. */
  readonly heading: string;
  readonly kind: ColumnKind;
  /** One sentence: what stands here. */
  readonly means: string;
}

/** A column of a table of `Row`. */
export interface Column<Row> extends ColumnHead {
  readonly value: (row: Row) => CellValue;
}

/** A table whose rows are known only to itself. */
export interface CellTable {
  /** Name of its files, without an ending: `open-items`. */
  readonly name: string;
  readonly title: string;
  readonly heads: readonly ColumnHead[];
  /** One list of cells per row, in the order of `heads`. */
  cells(analysis: Analysis): CellValue[][];
}

/** A table: its columns once, and where its rows come from. */
export interface Table<Row> extends CellTable {
  readonly columns: readonly Column<Row>[];
  rows(analysis: Analysis): readonly Row[];
}

/** Makes a table from its columns and its rows. */
export function tableOf<Row>(definition: {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: (analysis: Analysis) => readonly Row[];
}): Table<Row> {
  const { name, title, columns, rows } = definition;
  return {
    name,
    title,
    columns,
    heads: columns,
    rows,
    cells: (analysis) => rows(analysis).map((row) => columns.map(({ value }) => value(row))),
  };
}

/** The column with a given key. @throws Error when the table has none: a slip in the program. */
export function columnNamed<Row>(table: Table<Row>, key: string): Column<Row> {
  const found = table.columns.find((column) => column.key === key);
  if (!found) throw new Error(`table ${table.name} has no column ${key}`);
  return found;
}
