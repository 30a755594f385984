import Fraction from "fraction.js";
import type { Citation } from "../citation.ts";

/** Rivet diameters across the head of the tables, in inches. */
export const spliceDiameters = ["3/32", "1/8", "5/32", "3/16", "1/4"] as const;
export type SpliceDiameter = (typeof spliceDiameters)[number];

/** Columns of the tables: rivets by their diameter, and the AN-3 bolt. */
export const spliceColumns = [...spliceDiameters, "AN-3"] as const;
export type SpliceColumn = (typeof spliceColumns)[number];

/** One of the circular's tables of rivets per inch in a single-lap joint. */
export interface SpliceTable {
  /** As printed: `4-10`. */
  readonly name: SpliceTableName;
  /** The sheets it speaks for. */
  readonly sheets: string;
  readonly citation: Citation;
  /** What a reader must know about the copy. */
  readonly caution?: string;
  /** Sheet thickness in inches, as printed, thinnest first. */
  readonly rows: readonly SpliceRow[];
}

/** Rivets or bolts per inch of width for one thickness of sheet; no entry where the table prints a dash. */
export interface SpliceRow {
  readonly thickness: string;
  readonly perInch: Readonly<Partial<Record<SpliceColumn, Fraction>>>;
}

export const spliceTableNames = ["4-9", "4-10", "4-11"] as const;
export type SpliceTableName = (typeof spliceTableNames)[number];

/** What part of the table's number is used, by the notes common to the three tables. */
export const spliceShares = {
  full: "1",
  sheet: "0.75",
  stringer: "0.8",
  frame: "0.6",
} as const;

const citation = (place: string): Citation => ({
  document: "AC 43.13-1B",
  edition: "8 Sep 1998, change 1 27 Sep 2001",
  place,
  status: "read",
});

type Cell = string | null;
type Typed = readonly [thickness: string, ...perInch: readonly Cell[]];

// biome-ignore format: one row per line, to be compared with the page by eye
const table4_9: readonly Typed[] = [
  //       3/32    1/8     5/32    3/16    1/4    AN-3
  [".016", "6.5",  "4.9",  null,   null,   null,   null],
  [".020", "6.9",  "4.9",  "3.9",  null,   null,   null],
  [".025", "8.6",  "4.9",  "3.9",  null,   null,   null],
  [".032", "11.1", "6.2",  "3.9",  "3.3",  null,   null],
  [".036", "12.5", "7.0",  "4.5",  "3.3",  "2.4",  null],
  [".040", "13.8", "7.7",  "5.0",  "3.5",  "2.4",  "3.3"],
  [".051", null,   "9.8",  "6.4",  "4.5",  "2.5",  "3.3"],
  [".064", null,   "12.3", "8.1",  "5.6",  "3.1",  "3.3"],
  [".081", null,   null,   "10.2", "7.1",  "3.9",  "3.3"],
  [".091", null,   null,   "11.4", "7.9",  "4.4",  "3.3"],
  [".102", null,   null,   "12.8", "8.9",  "4.9",  "3.4"],
  [".128", null,   null,   null,   "11.2", "6.2",  null],
];

// biome-ignore format: one row per line, to be compared with the page by eye
const table4_10: readonly Typed[] = [
  //       3/32    1/8     5/32    3/16    1/4    AN-3
  [".016", "6.5",  "4.9",  null,   null,   null,   null],
  [".020", "6.5",  "4.9",  "3.9",  null,   null,   null],
  [".025", "6.9",  "4.9",  "3.9",  null,   null,   null],
  [".032", "8.9",  "4.9",  "3.9",  "3.3",  null,   null],
  [".036", "10.0", "5.6",  "3.9",  "3.3",  "2.4",  null],
  [".040", "11.1", "6.2",  "4.0",  "3.3",  "2.4",  null],
  [".051", null,   "7.9",  "5.1",  "3.6",  "2.4",  "3.3"],
  [".064", null,   "9.9",  "6.5",  "4.5",  "2.5",  "3.3"],
  [".081", null,   "12.5", "8.1",  "5.7",  "3.1",  "3.3"],
  [".091", null,   null,   "9.1",  "6.3",  "3.5",  "3.3"],
  [".102", null,   null,   "10.3", "7.1",  "3.9",  "3.3"],
  [".128", null,   null,   "12.9", "8.9",  "4.9",  "3.3"],
];

// biome-ignore format: one row per line, to be compared with the page by eye
const table4_11: readonly Typed[] = [
  //       3/32    1/8     5/32    3/16    1/4    AN-3
  [".016", "6.3",  "4.7",  null,   null,   null,   null],
  [".020", "6.3",  "4.7",  "3.8",  null,   null,   null],
  [".025", "6.3",  "4.7",  "3.8",  null,   null,   null],
  [".032", "6.3",  "4.7",  "3.8",  "3.2",  null,   null],
  [".036", "7.1",  "4.7",  "3.8",  "3.2",  "2.4",  null],
  [".040", "7.9",  "4.7",  "3.8",  "3.2",  "2.4",  null],
  [".051", "10.1", "5.6",  "3.8",  "3.2",  "2.4",  null],
  [".064", "12.7", "7.0",  "4.6",  "3.2",  "2.4",  null],
  [".081", null,   "8.9",  "5.8",  "4.0",  "2.4",  "3.2"],
  [".091", null,   "10.0", "6.5",  "4.5",  "2.5",  "3.2"],
  [".102", null,   "11.2", "7.3",  "5.1",  "2.8",  "3.2"],
  [".128", null,   null,   "9.2",  "6.4",  "3.5",  "3.2"],
];

const rowsOf = (typed: readonly Typed[]): SpliceRow[] =>
  typed.map(([thickness, ...cells]) => ({
    thickness,
    perInch: Object.fromEntries(
      spliceColumns.flatMap((diameter, column) => {
        const cell = cells[column];
        return cell ? [[diameter, new Fraction(cell)]] : [];
      }),
    ),
  }));

/**
 * Number of 2117-T4 (AD) protruding-head rivets, or of AN-3 bolts, per inch of width, single-lap
 * joint. The bolts of table 4-9 in .128 sheet are left out: the copy and the table's own note
 * disagree on them. Which table fits the alloy is for the builder to say: 2024-T3 clad
 * stands in two of them with different numbers.
 */
export const spliceTables: Readonly<Record<SpliceTableName, SpliceTable>> = {
  "4-9": {
    name: "4-9",
    sheets: "bare or clad 2014-T6, 2024-T3, 2024-T36 and 7075-T6",
    citation: citation("table 4-9"),
    caution:
      "the copy of table 4-9 that was read has its columns scrambled; they were put back in order by hand, so compare the row with the circular",
    rows: rowsOf(table4_9),
  },
  "4-10": {
    name: "4-10",
    sheets: "2017, 2017 Alclad and 2024-T3 Alclad",
    citation: citation("table 4-10"),
    rows: rowsOf(table4_10),
  },
  "4-11": {
    name: "4-11",
    sheets: "5052, all hardnesses",
    citation: citation("table 4-11"),
    rows: rowsOf(table4_11),
  },
};
