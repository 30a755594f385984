import { printable } from "./printable.ts";
import { type Face, hasCharacter, typefaces } from "./typefaces.ts";

/** A face at a size in points. */
export interface Style {
  readonly face: Face;
  readonly size: number;
}

/** Text in one file of a typeface. */
interface Run {
  readonly file: string;
  readonly text: string;
}

/** One line of text, measured. */
export interface Line {
  readonly runs: readonly Run[];
  readonly style: Style;
  /** In points. */
  readonly width: number;
}

/** Measures, breaks and draws text in the faces of the paper. */
export class Typesetter {
  readonly #doc: PDFKit.PDFDocument;
  readonly #widths = new Map<string, Map<string, number>>();
  readonly #lines = new Map<string, Line[]>();

  /** @param fonts Every font of the typefaces, by name. */
  constructor(doc: PDFKit.PDFDocument, fonts: ReadonlyMap<string, Uint8Array>) {
    this.#doc = doc;
    for (const [name, font] of fonts) {
      doc.registerFont(name, font);
      this.#widths.set(name, new Map());
    }
  }

  /**
   * Breaks text into lines that fit a width, at spaces, and inside a word only when the word
   * alone is too wide. Every visible character comes out, in order. An empty text gives no line.
   *
   * @param width In points.
   */
  wrap(text: string, style: Style, width: number): Line[] {
    const key = `${style.face}|${style.size}|${width}|${text}`;
    const known = this.#lines.get(key);
    if (known) return known;
    const lines: Line[] = [];
    let current = "";
    const words = printable(text, typefaces[style.face])
      .split(" ")
      .filter((word) => word !== "");
    for (const word of words) {
      const longer = current === "" ? word : `${current} ${word}`;
      if (this.width(longer, style) <= width) {
        current = longer;
        continue;
      }
      if (current !== "") lines.push(this.line(current, style));
      const pieces = this.#piecesOf(word, style, width);
      for (const piece of pieces.slice(0, -1)) lines.push(this.line(piece, style));
      current = pieces.at(-1) ?? "";
    }
    if (current !== "") lines.push(this.line(current, style));
    this.#lines.set(key, lines);
    return lines;
  }

  /** One line, however wide. */
  line(text: string, style: Style): Line {
    const runs = this.#runsOf(printable(text, typefaces[style.face]), style);
    return { runs, style, width: this.#widthOf(runs, style) };
  }

  /** How wide a text is on one line, in points. */
  width(text: string, style: Style): number {
    return this.#widthOf(this.#runsOf(printable(text, typefaces[style.face]), style), style);
  }

  /** Draws a line with its left end at `x` and its baseline at `y`, from the page's top left. */
  draw({ runs, style }: Line, x: number, y: number): void {
    let at = x;
    for (const run of runs) {
      this.#doc
        .font(run.file)
        .fontSize(style.size)
        .text(run.text, at, y, { lineBreak: false, baseline: "alphabetic" });
      at += this.#runWidth(run) * style.size;
    }
  }

  #piecesOf(word: string, style: Style, width: number): string[] {
    if (this.width(word, style) <= width) return [word];
    const pieces: string[] = [];
    let current = "";
    for (const character of word) {
      if (current !== "" && this.width(current + character, style) > width) {
        pieces.push(current);
        current = "";
      }
      current += character;
    }
    return [...pieces, current];
  }

  #runsOf(text: string, { face }: Style): Run[] {
    const files = typefaces[face];
    const [first] = files;
    if (/^[ -~]*$/.test(text)) return [{ file: first.name, text }];
    const runs: { file: string; text: string }[] = [];
    for (const character of text) {
      const code = character.codePointAt(0) ?? 0;
      const file = (files.find((each) => hasCharacter(each, code)) ?? first).name;
      const last = runs.at(-1);
      if (last?.file === file) last.text += character;
      else runs.push({ file, text: character });
    }
    return runs;
  }

  #widthOf(runs: readonly Run[], { size }: Style): number {
    return runs.reduce((sum, run) => sum + this.#runWidth(run) * size, 0);
  }

  /** In ems. */
  #runWidth({ file, text }: Run): number {
    const widths = this.#widths.get(file);
    const known = widths?.get(text);
    if (known !== undefined) return known;
    const width = this.#doc.font(file).fontSize(1000).widthOfString(text) / 1000;
    widths?.set(text, width);
    return width;
  }
}
