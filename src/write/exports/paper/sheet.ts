import type { Ink } from "./inks.ts";
import type { Box } from "./sheet-format.ts";
import type { Line, Typesetter } from "./typesetter.ts";

/** A straight rule, in points from the top left. */
export interface Rule {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Thickness in points. */
  readonly weight: number;
  /** As the weight has it unless said. */
  readonly ink?: Ink;
}

/** What drawing needs. */
export interface Pen {
  readonly doc: PDFKit.PDFDocument;
  readonly setter: Typesetter;
  /** The structure element of the whole document. */
  readonly root: PDFKit.PDFStructureElement;
}

/** Something to be drawn on a sheet, in reading order; awaited where it reads from the disk. */
export type Mark = (pen: Pen) => void | Promise<void>;

/** A line of text and where it goes. */
export interface PlacedLine {
  readonly line: Line;
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
}

/** One sheet as planned: nothing is drawn before all sheets are known. */
export class Sheet {
  readonly rules: Rule[] = [];
  /** Grounds of light grey, drawn first. */
  readonly grounds: Box[] = [];
  readonly marks: Mark[] = [];
  /** Hours of the rows on this sheet; absent on sheets without rows. */
  minutes?: number;

  /**
   * @param part Name of the part, printed in the band at the top.
   * @param repeats Whether the part began on an earlier sheet, so that its name is not read out.
   */
  constructor(
    readonly part: string,
    readonly repeats: boolean,
  ) {}

  /** A horizontal rule. */
  across(left: number, right: number, y: number, weight = 0.4, ink?: Ink): void {
    this.rules.push({ from: [left, y], to: [right, y], weight, ...(ink ? { ink } : {}) });
  }

  /** A vertical rule. */
  down(x: number, top: number, bottom: number, weight = 0.4, ink?: Ink): void {
    this.rules.push({ from: [x, top], to: [x, bottom], weight, ...(ink ? { ink } : {}) });
  }

  /** Four rules around a box. */
  around({ left, top, right, bottom }: Box, weight = 0.4): void {
    this.across(left, right, top, weight);
    this.across(left, right, bottom, weight);
    this.down(left, top, bottom, weight);
    this.down(right, top, bottom, weight);
  }
}

/**
 * An element of the document's structure that holds others, over as many sheets as it takes.
 * It is opened by the first mark that needs it and has to be closed by the last.
 */
export class Branch {
  readonly #type: string;
  readonly #parent: Branch | undefined;
  #element: PDFKit.PDFStructureElement | undefined;

  /** @param parent The element that holds this one; the root of the document when absent. */
  constructor(type: string, parent?: Branch) {
    this.#type = type;
    this.#parent = parent;
  }

  /** The element itself. */
  at(pen: Pen): PDFKit.PDFStructureElement {
    if (this.#element) return this.#element;
    const above = this.#parent ? this.#parent.at(pen) : pen.root;
    this.#element = pen.doc.struct(this.#type);
    above.add(this.#element);
    return this.#element;
  }

  /** The last mark of all it holds. */
  readonly close: Mark = () => {
    this.#element?.end();
  };
}

/** Draws text as one element of the document's structure, below `within` or the root. */
export function tagged(type: string, lines: readonly PlacedLine[], within?: Branch): Mark {
  return (pen) => {
    const element = pen.doc.struct(type);
    (within ? within.at(pen) : pen.root).add(element);
    element.add(() => drawLines(pen.setter, lines));
    element.end();
  };
}

/** Draws text that is no part of the contents: what repeats, and what only decorates. */
export function untagged(lines: readonly PlacedLine[], type: "Pagination" | "Layout"): Mark {
  return ({ doc, setter }) => {
    doc.markContent("Artifact", { type });
    drawLines(setter, lines);
    doc.endMarkedContent();
  };
}

/** Draws placed lines in order. */
export function drawLines(setter: Typesetter, lines: readonly PlacedLine[]): void {
  for (const { line, x, y } of lines) setter.draw(line, x, y);
}
