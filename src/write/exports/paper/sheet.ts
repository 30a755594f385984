import type { Box } from "./sheet-format.ts";
import type { Line, Typesetter } from "./typesetter.ts";

/** A straight rule, in points from the top left. */
export interface Rule {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Thickness in points. */
  readonly weight: number;
}

/** What drawing needs. */
export interface Pen {
  readonly doc: PDFKit.PDFDocument;
  readonly setter: Typesetter;
  /** The structure element of the whole document. */
  readonly root: PDFKit.PDFStructureElement;
}

/** Something to be drawn on a sheet, in reading order. */
export type Mark = (pen: Pen) => void;

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
  across(left: number, right: number, y: number, weight = 0.4): void {
    this.rules.push({ from: [left, y], to: [right, y], weight });
  }

  /** A vertical rule. */
  down(x: number, top: number, bottom: number, weight = 0.4): void {
    this.rules.push({ from: [x, top], to: [x, bottom], weight });
  }

  /** Four rules around a box. */
  around({ left, top, right, bottom }: Box, weight = 0.4): void {
    this.across(left, right, top, weight);
    this.across(left, right, bottom, weight);
    this.down(left, top, bottom, weight);
    this.down(right, top, bottom, weight);
  }
}

/** Draws text as one element of the document's structure, directly below its root. */
export function tagged(type: string, lines: readonly PlacedLine[]): Mark {
  return ({ doc, setter, root }) => {
    const element = doc.struct(type);
    root.add(element);
    element.add(() => drawLines(setter, lines));
    element.end();
  };
}

/** Draws placed lines in order. */
export function drawLines(setter: Typesetter, lines: readonly PlacedLine[]): void {
  for (const { line, x, y } of lines) setter.draw(line, x, y);
}
