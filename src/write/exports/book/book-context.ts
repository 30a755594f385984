import type { CalendarDate } from "../../../model/calendar.ts";
import type { BookSection } from "../../../present/book/book-sections.ts";
import type { RecordIndex } from "../../../present/pages/record-index.ts";
import type { PrintPictures } from "../../photos/print-pictures.ts";
import type { Paper, SheetFormat } from "../paper/sheet-format.ts";
import type { Typesetter } from "../paper/typesetter.ts";

/** What the book says beside what is in the record. */
export interface BookImprint {
  readonly paper: Paper;
  readonly programVersion: string;
  /** SHA-256 of `record.json` of the same edition, as 64 hexadecimal digits. */
  readonly recordDigest: string;
  readonly sections: readonly BookSection[];
}

/** What every section is made from. */
export interface BookContext {
  readonly record: RecordIndex;
  readonly imprint: BookImprint;
  readonly pictures: PrintPictures;
  readonly setter: Typesetter;
  readonly format: SheetFormat;
  /** The page on which the entry of a day begins; absent: the book has no log. */
  readonly pageOf: (date: CalendarDate) => number | undefined;
}

/** A name in the contents and where it begins. */
export interface ContentsLine {
  readonly name: string;
  readonly page: number;
  /** 0 for a part, 1 for what stands inside one. */
  readonly depth: number;
}
