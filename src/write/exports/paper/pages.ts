import { type PaperTable, TableLayout } from "./paper-table.ts";
import { type Branch, type PlacedLine, Sheet, tagged } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import { bandTitle } from "./title-block.ts";
import type { Line, Style, StyledText, Typesetter } from "./typesetter.ts";

const inset = 14;
const plain: Style = { face: "text", size: 7.8 };

/** A label and what it stands for. */
export type Fact = readonly [label: string, value: string];

/** How far contents reach across a sheet, in points from the left. */
export interface Column {
  readonly left: number;
  readonly right: number;
}

/** How a paragraph is set, where it is not set plainly. */
export interface Setting {
  /** Element of the document's structure; `P` unless said. */
  readonly type?: string;
  /** The element that holds it; the root of the document when absent. */
  readonly within?: Branch;
  /** From baseline to baseline, in points; 1.45 times the size of the first text unless said. */
  readonly advance?: number;
  /** Points left empty above and below; 3 unless said. */
  readonly gap?: number;
  /** Set before the first line, to the left of the paragraph: a bullet, a number. */
  readonly label?: Line;
}

/** Sheets in order, filled from the top: what is added goes below what came before. */
export class Pages {
  /** Those not taken away yet, the one in hand last. */
  readonly sheets: Sheet[] = [];
  /** Where contents go that are not told otherwise. */
  column: Column;
  /** Called with each sheet that goes on from the one before, before anything is on it. */
  turned: ((sheet: Sheet) => void) | undefined;
  readonly #setter: Typesetter;
  readonly #format: SheetFormat;
  #sheet: Sheet;
  #y: number;
  #begun = 0;

  /**
   * Begins with the first sheet of a part.
   * @param format Its body is what is filled; a narrower one leaves room for what repeats.
   */
  constructor(setter: Typesetter, format: SheetFormat, part: string) {
    this.#setter = setter;
    this.#format = format;
    this.column = { left: format.body.left + inset, right: format.body.right - inset };
    this.#y = format.body.top;
    this.#sheet = new Sheet(part, false);
    this.part(part);
  }

  /** Begins a part on a new sheet: its name goes in the band and into the outline. */
  part(name: string): void {
    this.#begin(new Sheet(name, false));
    this.#sheet.marks.push(
      ({ doc }) => {
        doc.outline.addItem(name, { expanded: false });
      },
      tagged("H1", [bandTitle(name, this.#format, this.#setter)]),
    );
  }

  /** The sheet in hand, for what is drawn at a fixed place. */
  get sheet(): Sheet {
    return this.#sheet;
  }

  /** How many sheets were begun, the one in hand among them. */
  get begun(): number {
    return this.#begun;
  }

  /** Takes away the sheets before the one in hand: nothing more comes on them. */
  takeFull(): Sheet[] {
    return this.sheets.splice(0, this.sheets.length - 1);
  }

  /** How far down the sheet in hand is filled, in points from the top. */
  get y(): number {
    return this.#y;
  }

  /** Where contents end, in points from the left. */
  get right(): number {
    return this.column.right;
  }

  /** How wide contents may be, in points. */
  get width(): number {
    return this.column.right - this.column.left;
  }

  /** Where contents begin and end on every sheet, in points from the top. */
  get top(): number {
    return this.#format.body.top;
  }

  get bottom(): number {
    return this.#format.body.bottom;
  }

  /** Leaves an empty strip. */
  space(height: number): void {
    this.#y += height;
  }

  /** Goes down to a place, unless the sheet is filled further already. */
  downTo(y: number): void {
    this.#y = Math.max(this.#y, y);
  }

  /** Goes on to a new sheet unless so many points are free on this one. */
  room(height: number): void {
    if (this.#y + height > this.#format.body.bottom) this.#turn();
  }

  /** Sets contents in from the left by so many points. */
  indented(points: number, add: () => void): void {
    const column = this.column;
    this.column = { left: column.left + points, right: column.right };
    add();
    this.column = column;
  }

  /**
   * A heading inside a part, kept together with what comes below it.
   * @param below Points that must be free for it and for that.
   */
  heading(text: string, below: number, size = 12): void {
    this.room(below);
    this.#y += size * 1.75;
    const line = this.#setter.line(text, { face: "caps", size });
    this.#sheet.marks.push(tagged("H2", [{ line, x: this.column.left, y: this.#y }]));
    this.#y += size * 0.3;
  }

  /** A paragraph across the column, or as far as `right`. */
  paragraph(text: string, style: Style = plain, right = this.right): void {
    this.styled([{ text, style }], {}, right);
  }

  /** A paragraph in several styles. */
  styled(
    texts: readonly StyledText[],
    { type = "P", within, advance, gap = 3, label }: Setting = {},
    right = this.right,
  ): void {
    const { left } = this.column;
    const step = advance ?? (texts[0]?.style.size ?? plain.size) * 1.45;
    const lines = this.#setter.wrapStyled(texts, right - left);
    // Three lines cannot be parted into two and two.
    const ends = lines.length === 3 ? 3 : Math.min(2, lines.length);
    let placed: PlacedLine[] = [];
    const put = () => {
      if (placed.length > 0) this.#sheet.marks.push(tagged(type, placed, within));
      placed = [];
    };
    this.#y += gap;
    lines.forEach((line, index) => {
      // Two lines stay together at either end, so that none stands alone on a sheet.
      const together = index === 0 || (index === lines.length - 2 && ends < 3) ? ends : 1;
      if (this.#y + step * together > this.#format.body.bottom - 4) {
        put();
        this.#turn();
      }
      this.#y += step;
      if (index === 0 && label) placed.push({ line: label, x: left - label.width, y: this.#y });
      placed.push({ line, x: left, y: this.#y });
    });
    put();
    this.#y += gap;
  }

  /** Labels and values, one pair to a line, ruled. */
  facts(title: string, facts: readonly Fact[], labels = 138): void {
    this.table(
      {
        title,
        columns: [
          { heading: "", width: labels, align: "left", face: "small" },
          { heading: "", width: this.width - labels, align: "left", face: "text" },
        ],
        rows: facts.map(([label, value]) => ({ cells: [{ text: label }, { text: value }] })),
        filled: false,
        headless: true,
        none: "none",
      },
      "inset",
    );
  }

  /** A table, over as many sheets as it takes. */
  table(table: PaperTable, place: "inset" | "full" = "inset"): void {
    const left = place === "full" ? this.#format.frame.left : this.column.left;
    const layout = new TableLayout(this.#setter, this.#format, table, left);
    const gap = place === "full" ? 0 : 5;
    this.room(layout.least + gap);
    this.#y += gap;
    const { bottom } = layout.place(this.#sheet, this.#y, () => {
      this.#turn();
      this.#y += 2 * gap;
      return { sheet: this.#sheet, top: this.#y };
    });
    this.#y = bottom;
  }

  #turn(): void {
    this.#begin(new Sheet(this.#sheet.part, true));
    this.turned?.(this.#sheet);
  }

  #begin(sheet: Sheet): void {
    this.#sheet = sheet;
    this.sheets.push(sheet);
    this.#begun += 1;
    this.#y = this.#format.body.top;
  }
}
