import { type PaperTable, TableLayout } from "./paper-table.ts";
import { type PlacedLine, Sheet, tagged } from "./sheet.ts";
import type { SheetFormat } from "./sheet-format.ts";
import { bandTitle } from "./title-block.ts";
import type { Style, Typesetter } from "./typesetter.ts";

const inset = 14;
const plain: Style = { face: "text", size: 7.8 };

/** A label and what it stands for. */
export type Fact = readonly [label: string, value: string];

/** Sheets in order, filled from the top: what is added goes below what came before. */
export class Pages {
  readonly sheets: Sheet[] = [];
  readonly #setter: Typesetter;
  readonly #format: SheetFormat;
  #sheet: Sheet;
  #y: number;

  /** Begins with the first sheet of a part. */
  constructor(setter: Typesetter, format: SheetFormat, part: string) {
    this.#setter = setter;
    this.#format = format;
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

  /** How far down the sheet in hand is filled, in points from the top. */
  get y(): number {
    return this.#y;
  }

  /** Where contents that are set in end, in points from the left. */
  get right(): number {
    return this.#format.body.right - inset;
  }

  /** How wide contents that are set in may be, in points. */
  get width(): number {
    return this.right - this.#left;
  }

  /** Leaves an empty strip. */
  space(height: number): void {
    this.#y += height;
  }

  /** Goes on to a new sheet unless so many points are free on this one. */
  room(height: number): void {
    if (this.#y + height > this.#format.body.bottom) this.#turn();
  }

  /**
   * A heading inside a part, kept together with what comes below it.
   * @param below Points that must be free for it and for that.
   */
  heading(text: string, below: number, size = 12): void {
    this.room(below);
    this.#y += size * 1.75;
    const line = this.#setter.line(text, { face: "caps", size });
    this.#sheet.marks.push(tagged("H2", [{ line, x: this.#left, y: this.#y }]));
    this.#y += size * 0.3;
  }

  /** A paragraph across the sheet, or as far as `right`. */
  paragraph(text: string, style: Style = plain, right = this.right): void {
    const advance = style.size * 1.45;
    let placed: PlacedLine[] = [];
    this.#y += 3;
    for (const line of this.#setter.wrap(text, style, right - this.#left)) {
      if (this.#y + advance > this.#format.body.bottom - 4) {
        this.#sheet.marks.push(tagged("P", placed));
        placed = [];
        this.#turn();
      }
      this.#y += advance;
      placed.push({ line, x: this.#left, y: this.#y });
    }
    if (placed.length > 0) this.#sheet.marks.push(tagged("P", placed));
    this.#y += 3;
  }

  /** Labels and values, one pair to a line, ruled. */
  facts(title: string, facts: readonly Fact[]): void {
    this.table(
      {
        title,
        columns: [
          { heading: "", width: 138, align: "left", face: "small" },
          { heading: "", width: this.width - 138, align: "left", face: "text" },
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
    const left = place === "full" ? this.#format.frame.left : this.#left;
    const layout = new TableLayout(this.#setter, this.#format, table, left);
    this.room(layout.least);
    const gap = place === "full" ? 0 : 5;
    this.#y += gap;
    const { bottom } = layout.place(this.#sheet, this.#y, () => {
      this.#turn();
      this.#y += 2 * gap;
      return { sheet: this.#sheet, top: this.#y };
    });
    this.#y = bottom;
  }

  get #left(): number {
    return this.#format.body.left + inset;
  }

  #turn(): void {
    this.#begin(new Sheet(this.#sheet.part, true));
  }

  #begin(sheet: Sheet): void {
    this.#sheet = sheet;
    this.sheets.push(sheet);
    this.#y = this.#format.body.top;
  }
}
