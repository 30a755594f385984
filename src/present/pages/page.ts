import type { SearchRecord } from "../search/search-record.ts";
import type { SharePicture } from "../share/share-sheet.ts";
import type { StructuredData } from "./structured-data.ts";

/** Words that lead somewhere; `href` is relative to the page that holds them. */
export interface Link {
  readonly text: string;
  readonly href: string;
}

/** Words that may lead somewhere. */
export interface Mention {
  readonly text: string;
  readonly href?: string;
}

/** Where the rows stand that a figure of hours is the sum of. */
export interface Sum {
  /** Of the build itself, or of study and shop. */
  readonly of: "build" | "apart";
  readonly href: string;
}

/** The figure a page is about, drawn as a dimension between two ends. */
export interface Dimension {
  /** What stands at the left end, such as the first clock time. */
  readonly from?: string;
  readonly to?: string;
  /** `3:40`. */
  readonly figure: string;
  /** What the figure is: `hours this day`. */
  readonly says: string;
  /** Present when the figure is a sum of hours with rows. */
  readonly sum?: Sum;
  /** Hours of study and shop beside those of building, and where their rows stand. */
  readonly apart?: { readonly figure: string; readonly sum: Sum };
}

/** One cell of the title block. */
export interface Cell {
  readonly label: string;
  readonly value: string;
  /** Present when the value is a sum of hours with rows. */
  readonly sum?: Sum;
}

/** The block at the foot of every sheet. */
export interface TitleBlock {
  readonly title: string;
  /** `sheet 87 of 120`, or the sheet's letter for the pages there is one of. */
  readonly number: string;
  readonly cells: readonly Cell[];
}

/** The sheet before and the sheet after. */
export interface Turn {
  readonly previous?: Link;
  readonly next?: Link;
}

/** What every page has, whatever it shows. */
export interface Page<Kind extends string> {
  readonly kind: Kind;
  /** From the site's root: `2026/03/14/`, "" for the home page, `404.html`. */
  readonly url: string;
  /** From this page back to the site's root: `../../../`; put before every link. */
  readonly root: string;
  /** Absent for the pages about the record itself. */
  readonly part?: Part;
  /** The heading, plain text. */
  readonly title: string;
  /** A sentence for search engines and shared links, plain text. */
  readonly description: string;
  /** A short line above the heading: the date, the sheet's number. */
  readonly over: readonly Mention[];
  readonly dimension?: Dimension;
  readonly block: TitleBlock;
  readonly turn?: Turn;
  /** Style sheets that this page needs beside the ones of all pages. */
  readonly styles?: readonly string[];
  /** A script that adds to this page; all that matters is there without it. */
  readonly script?: string;
  /** Absent: the page is not in the search index. */
  readonly search?: SearchRecord;
  /** Present when a feed of its own, Atom and JSON, stands beside the page. */
  readonly feed?: { readonly title: string };
  /** What stands for the page where it is shared; absent: what stands for the record. */
  readonly share?: SharePicture;
  /** What the page is, for programs that read pages; absent without an address. */
  readonly structured?: StructuredData;
}

/** The parts of the record, in the order of the index of sheets; each page belongs to one. */
export const parts = [
  "days",
  "assemblies",
  "hours",
  "readings",
  "balance",
  "portion",
  "open",
  "photographs",
  "limits",
  "search",
] as const;
export type Part = (typeof parts)[number];
