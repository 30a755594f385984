import { drawLines, type Pen, type PlacedLine, type Sheet, untagged } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import type { Line, Style, Typesetter } from "./typesetter.ts";

/** A column on paper. */
export interface PaperColumn {
  readonly heading: string;
  /** In points. */
  readonly width: number;
  readonly align: "left" | "right";
  readonly face: "text" | "small";
}

/** A cell on paper: its text, and notes in smaller type below. */
export interface PaperCell {
  readonly text: string;
  readonly notes?: readonly string[];
  readonly bold?: boolean;
  /** In red, for what departs; the words have to say so too. */
  readonly red?: boolean;
  /** Struck through: no longer in force. */
  readonly struck?: boolean;
  /** In points. */
  readonly indent?: number;
}

/** A row on paper, one cell per column. */
export interface PaperRow {
  readonly cells: readonly PaperCell[];
  readonly minutes?: number;
}

/** A table that runs over as many sheets as it needs. */
export interface PaperTable {
  /** Spoken name of the table. */
  readonly title: string;
  readonly columns: readonly PaperColumn[];
  readonly rows: readonly PaperRow[];
  /** The first row of every sheet, given the minutes so far. */
  readonly opening?: (minutes: number) => PaperRow;
  /** The last row of every sheet, given the minutes on it, with those before, and whether it ends the table. */
  readonly closing?: (sheet: number, toDate: number, last: boolean) => PaperRow;
  /** Whether the table goes down to the title block, its unused rows ruled through. */
  readonly filled: boolean;
  /** Least height of a row in points, where something is filled in by hand. */
  readonly tall?: number;
  /** True for pairs of label and value, which have no heads of columns. */
  readonly headless?: boolean;
  /** Printed in the place of rows when there are none. */
  readonly none: string;
}

const padding = 3;
const sizes = { text: 7, small: 8, note: 6.6 } as const;
const leading = { text: 9.4, note: 7.8 } as const;
const headHeight = 14;
const minimumHeight = 13.2;
const faint = 0.28;
const firm = 0.8;

interface LaidLine {
  readonly line: Line;
  readonly leading: number;
}

interface LaidCell {
  readonly lines: readonly LaidLine[];
  readonly indent: number;
}

interface LaidRow {
  readonly cells: readonly LaidCell[];
  readonly height: number;
  readonly minutes: number;
}

/** Lays a table out on sheets. */
export class TableLayout {
  readonly #setter: Typesetter;
  readonly #format: SheetFormat;
  readonly #table: PaperTable;
  readonly #lefts: readonly number[];
  readonly #right: number;
  #element: PDFKit.PDFStructureElement | undefined;

  constructor(setter: Typesetter, format: SheetFormat, table: PaperTable, left: number) {
    this.#setter = setter;
    this.#format = format;
    this.#table = table;
    let at = left;
    this.#lefts = table.columns.map(({ width }) => {
      const here = at;
      at += width;
      return here;
    });
    this.#right = at;
  }

  /** Height of the head and the first rows: what must be free for the table to begin on a sheet. */
  get least(): number {
    const [first] = this.#table.rows;
    const row = first ? this.#lay(first).height : 0;
    return headHeight + Math.min(Math.max(row + 1, minimumHeight * 3), this.#room);
  }

  /** The tallest that a row may be. */
  get #room(): number {
    return this.#format.body.bottom - this.#format.body.top - headHeight - 3 * minimumHeight;
  }

  /**
   * Places the whole table.
   * @param sheet Where it begins, at `top`.
   * @param next Makes the sheet after, and says where its contents begin.
   * @returns The last sheet and how far down the table goes on it.
   */
  place(
    sheet: Sheet,
    top: number,
    next: () => { readonly sheet: Sheet; readonly top: number },
  ): { readonly sheet: Sheet; readonly bottom: number } {
    const table = this.#table;
    const bottom = this.#format.body.bottom;
    const rows = table.rows.length > 0 ? table.rows : [this.#noneRow()];
    const laid = rows.flatMap((row) => this.#split(this.#lay(row), this.#room));
    let here = { sheet, top };
    let minutes = 0;
    let index = 0;
    for (let first = true; ; first = false) {
      const before = minutes;
      let y = this.#head(here.sheet, here.top, first);
      if (table.opening) y = this.#row(here.sheet, y, this.#lay(table.opening(minutes)), true);
      const reserve = table.closing ? this.#lay(table.closing(minutes, minutes, true)).height : 0;
      for (let placed = 0; index < laid.length; placed += 1) {
        const row = laid[index];
        // Every further sheet takes at least one row, so that the table always ends.
        const forced = !first && placed === 0;
        if (!row || (y + row.height + reserve > bottom && !forced)) break;
        y = this.#row(here.sheet, y, row, false);
        minutes += row.minutes;
        index += 1;
      }
      const last = index >= laid.length;
      if (table.filled) y = this.#unused(here.sheet, y, bottom - reserve);
      if (table.closing) {
        y = this.#row(
          here.sheet,
          y,
          this.#lay(table.closing(minutes - before, minutes, last)),
          true,
        );
      }
      this.#uprights(here.sheet, here.top, y);
      if (table.rows.some((row) => row.minutes !== undefined))
        here.sheet.minutes = minutes - before;
      if (last) {
        here.sheet.marks.push(() => {
          this.#element?.end();
        });
        return { sheet: here.sheet, bottom: y };
      }
      here = next();
    }
  }

  #noneRow(): PaperRow {
    const widest = this.#table.columns.reduce(
      (best, { width }, index, all) => (width > (all[best]?.width ?? 0) ? index : best),
      0,
    );
    return {
      cells: this.#table.columns.map((_, index) => ({
        text: index === widest ? this.#table.none : "",
      })),
    };
  }

  #lay(row: PaperRow): LaidRow {
    const cells = this.#table.columns.map((column, index): LaidCell => {
      const cell = row.cells[index];
      if (!cell) return { lines: [], indent: 0 };
      const indent = cell.indent ?? 0;
      const width = column.width - 2 * padding - indent;
      const bold = column.face === "text" ? "bold" : "caps";
      const style: Style = {
        face: cell.bold ? bold : column.face,
        size: sizes[column.face],
        ...(cell.red ? { ink: "red" } : {}),
        ...(cell.struck ? { struck: true } : {}),
      };
      const text = this.#setter.wrap(cell.text, style, width);
      const notes = (cell.notes ?? []).flatMap((note) =>
        this.#setter.wrap(note, { face: "small", size: sizes.note }, width),
      );
      return {
        lines: [
          ...text.map((line) => ({ line, leading: leading.text })),
          ...notes.map((line) => ({ line, leading: leading.note })),
        ],
        indent,
      };
    });
    const height = Math.max(heightOf(cells), this.#table.tall ?? 0);
    return { cells, height, minutes: row.minutes ?? 0 };
  }

  /** A row taller than a sheet, in pieces that fit; the minutes go with the first. */
  #split(row: LaidRow, room: number): LaidRow[] {
    if (row.height <= room) return [row];
    const most = Math.floor((room - 5) / leading.text);
    const pieces: LaidRow[] = [];
    const longest = Math.max(...row.cells.map(({ lines }) => lines.length));
    for (let from = 0; from < longest; from += most) {
      const cells = row.cells.map(({ lines, indent }) => ({
        lines: lines.slice(from, from + most),
        indent,
      }));
      pieces.push({ cells, height: heightOf(cells), minutes: from === 0 ? row.minutes : 0 });
    }
    return pieces;
  }

  #head(sheet: Sheet, top: number, first: boolean): number {
    const { columns, headless } = this.#table;
    if (headless) {
      sheet.across(this.#lefts[0] ?? 0, this.#right, top, faint);
      if (first) sheet.marks.push((pen) => this.#open(pen));
      return top;
    }
    const style: Style = { face: "caps", size: 6.6 };
    const placed = columns.map((column, index): PlacedLine => {
      const line = this.#setter.line(column.heading.toUpperCase(), style);
      return { line, x: this.#x(index, line, 0), y: top + 9.6 };
    });
    sheet.grounds.push({
      left: this.#lefts[0] ?? 0,
      top,
      right: this.#right,
      bottom: top + headHeight,
    });
    sheet.across(this.#lefts[0] ?? 0, this.#right, top, 0.4);
    sheet.across(this.#lefts[0] ?? 0, this.#right, top + headHeight, firm);
    sheet.marks.push((pen) => {
      // The head repeats on every sheet; it is read out once.
      if (!first) return untagged(placed, "Pagination")(pen);
      this.#open(pen);
      this.#tagRow(
        pen,
        placed.map((line) => [line]),
        "Column",
      );
    });
    return top + headHeight;
  }

  #open({ doc, root }: Pen): void {
    this.#element = doc.struct("Table", { title: this.#table.title });
    root.add(this.#element);
  }

  #row(sheet: Sheet, top: number, row: LaidRow, carries: boolean): number {
    const bottom = top + row.height;
    const cells = row.cells.map(({ lines, indent }, index): PlacedLine[] => {
      let y = top + 2;
      return lines.map(({ line, leading: advance }) => {
        y += advance;
        return { line, x: this.#x(index, line, indent), y: y - advance * 0.21 };
      });
    });
    if (carries) {
      sheet.grounds.push({ left: this.#lefts[0] ?? 0, top, right: this.#right, bottom });
      sheet.across(this.#lefts[0] ?? 0, this.#right, top, 0.4);
    }
    sheet.across(this.#lefts[0] ?? 0, this.#right, bottom, carries ? 0.4 : faint);
    sheet.marks.push((pen) => this.#tagRow(pen, cells, "Row"));
    return bottom;
  }

  /** One row of the structure: heads of columns, or a head of the row and its cells. */
  #tagRow({ doc, setter }: Pen, cells: readonly PlacedLine[][], scope: "Column" | "Row"): void {
    const row = doc.struct("TR");
    this.#element?.add(row);
    cells.forEach((lines, index) => {
      const isHead = scope === "Column" || (index === 0 && lines.length > 0);
      const cell = isHead ? doc.struct("TH", { scope }) : doc.struct("TD");
      row.add(cell);
      if (lines.length > 0) cell.add(() => drawLines(setter, lines));
      cell.end();
    });
    row.end();
  }

  /** Empty rows to the foot of the sheet, ruled through so that nothing can be added. */
  #unused(sheet: Sheet, top: number, bottom: number): number {
    const left = this.#lefts[0] ?? 0;
    const rows = Math.floor((bottom - top) / minimumHeight);
    if (rows >= 1) {
      for (let row = 1; row <= rows; row += 1) {
        const y = top + row * minimumHeight;
        if (y < bottom - 1) sheet.across(left, this.#right, y, faint);
      }
      sheet.rules.push({
        from: [left + padding, bottom - padding],
        to: [this.#right - padding, top + padding],
        weight: firm,
      });
    }
    return bottom;
  }

  #uprights(sheet: Sheet, top: number, bottom: number): void {
    this.#lefts.forEach((x, index) => {
      if (index > 0 || x > this.#format.frame.left) sheet.down(x, top, bottom, faint);
    });
    if (this.#right < this.#format.frame.right - 0.1) sheet.down(this.#right, top, bottom, faint);
  }

  #x(index: number, line: Line, indent: number): number {
    const column = this.#table.columns[index];
    const left = this.#lefts[index] ?? 0;
    if (column?.align === "right") return left + column.width - padding - line.width;
    return left + padding + indent;
  }
}

function heightOf(cells: readonly LaidCell[]): number {
  const tallest = Math.max(
    0,
    ...cells.map(({ lines }) => lines.reduce((sum, { leading: advance }) => sum + advance, 0)),
  );
  return Math.max(minimumHeight, tallest + 4);
}
