import { type Ink, inks } from "./inks.ts";
import { printable } from "./printable.ts";
import { type Face, hasCharacter, typefaces } from "./typefaces.ts";

/** A face at a size in points. */
export interface Style {
  readonly face: Face;
  readonly size: number;
  /** `ink` unless said. */
  readonly ink?: Ink;
  /** A line through it: no longer in force, still to be read. */
  readonly struck?: boolean;
}

/** Text in one style, as a part of a paragraph of several. */
export interface StyledText {
  readonly text: string;
  readonly style: Style;
}

/** Text in one file of a typeface. */
interface Run {
  readonly file: string;
  readonly text: string;
  readonly style: Style;
}

/** One line of text, measured. */
export interface Line {
  readonly runs: readonly Run[];
  /** In points. */
  readonly width: number;
}

/** What stands between two spaces, in one style or several. */
interface Word {
  readonly parts: readonly StyledText[];
  readonly width: number;
}

// Words come again and again; whole lines do not, and would fill the memory.
const longestKept = 24;

/** Measures, breaks and draws text in the faces of the paper. */
export class Typesetter {
  readonly #doc: PDFKit.PDFDocument;
  readonly #widths = new Map<string, Map<string, number>>();

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
    return this.wrapStyled([{ text, style }], width);
  }

  /** The same for a paragraph in several styles. */
  wrapStyled(texts: readonly StyledText[], width: number): Line[] {
    const lines: Line[] = [];
    let current: StyledText[] = [];
    let at = 0;
    const finish = () => {
      if (current.length > 0) lines.push(this.#lineOf(current));
      current = [];
      at = 0;
    };
    for (const word of this.#wordsOf(texts)) {
      const space = current.length === 0 ? 0 : this.#spaceBefore(word);
      if (at + space + word.width <= width) {
        current = [...withSpace(current, word), ...word.parts];
        at += space + word.width;
        continue;
      }
      finish();
      const pieces = word.width <= width ? [word.parts] : this.#piecesOf(word, width);
      for (const piece of pieces.slice(0, -1)) lines.push(this.#lineOf(piece));
      current = [...(pieces.at(-1) ?? [])];
      at = this.#widthOf(current);
    }
    finish();
    return lines;
  }

  /** One line, however wide. */
  line(text: string, style: Style): Line {
    return this.#lineOf([{ text: printable(text, typefaces[style.face]), style }]);
  }

  /** How wide a text is on one line, in points. */
  width(text: string, style: Style): number {
    return this.line(text, style).width;
  }

  /** Draws a line with its left end at `x` and its baseline at `y`, from the page's top left. */
  draw({ runs }: Line, x: number, y: number): void {
    let at = x;
    for (const run of runs) {
      const { size, ink = "ink", struck } = run.style;
      const width = this.#runWidth(run);
      // A sheet is in ink unless something else is asked for.
      if (ink !== "ink") this.#doc.fillColor(inks[ink]).strokeColor(inks[ink]);
      this.#doc
        .font(run.file)
        .fontSize(size)
        .text(run.text, at, y, { lineBreak: false, baseline: "alphabetic" });
      if (struck) {
        const through = y - size * 0.27;
        this.#doc
          .lineWidth(0.7)
          .moveTo(at, through)
          .lineTo(at + width, through)
          .stroke();
      }
      if (ink !== "ink") this.#doc.fillColor(inks.ink).strokeColor(inks.ink);
      at += width;
    }
  }

  /** Words in order. Where two styles meet without a space, the word is of both. */
  #wordsOf(texts: readonly StyledText[]): Word[] {
    const words: Word[] = [];
    let parts: StyledText[] = [];
    const finish = () => {
      if (parts.length > 0) words.push({ parts, width: this.#widthOf(parts) });
      parts = [];
    };
    for (const { text, style } of texts) {
      printable(text, typefaces[style.face])
        .split(" ")
        .forEach((piece, index) => {
          if (index > 0) finish();
          if (piece !== "") parts.push({ text: piece, style });
        });
    }
    finish();
    return words;
  }

  #spaceBefore({ parts }: Word): number {
    const style = parts[0]?.style;
    return style ? this.#widthOf([{ text: " ", style }]) : 0;
  }

  #piecesOf({ parts }: Word, width: number): StyledText[][] {
    const pieces: StyledText[][] = [];
    let current: StyledText[] = [];
    let at = 0;
    for (const { text, style } of parts) {
      for (const character of text) {
        const wide = this.#widthOf([{ text: character, style }]);
        if (current.length > 0 && at + wide > width) {
          pieces.push(current);
          current = [];
          at = 0;
        }
        current.push({ text: character, style });
        at += wide;
      }
    }
    return [...pieces, current].map(joined);
  }

  #lineOf(parts: readonly StyledText[]): Line {
    const runs = joined(parts).flatMap((part) => this.#runsOf(part));
    return { runs, width: runs.reduce((sum, run) => sum + this.#runWidth(run), 0) };
  }

  #widthOf(parts: readonly StyledText[]): number {
    return parts
      .flatMap((part) => this.#runsOf(part))
      .reduce((sum, run) => sum + this.#runWidth(run), 0);
  }

  #runsOf({ text, style }: StyledText): Run[] {
    const files = typefaces[style.face];
    const [first] = files;
    if (/^[ -~]*$/.test(text)) return [{ file: first.name, text, style }];
    const runs: { file: string; text: string; style: Style }[] = [];
    for (const character of text) {
      const code = character.codePointAt(0) ?? 0;
      const file = (files.find((each) => hasCharacter(each, code)) ?? first).name;
      const last = runs.at(-1);
      if (last?.file === file) last.text += character;
      else runs.push({ file, text: character, style });
    }
    return runs;
  }

  #runWidth({ file, text, style }: Run): number {
    const widths = this.#widths.get(file);
    const known = widths?.get(text);
    if (known !== undefined) return known * style.size;
    const ems = this.#doc.font(file).fontSize(1000).widthOfString(text) / 1000;
    if (text.length <= longestKept) widths?.set(text, ems);
    return ems * style.size;
  }
}

/** The line so far with the space that comes before a word: struck only between struck words. */
function withSpace(line: readonly StyledText[], { parts }: Word): StyledText[] {
  const before = line.at(-1)?.style;
  const after = parts[0]?.style;
  const style = after?.struck ? before : after;
  return style && line.length > 0 ? [...line, { text: " ", style }] : [...line];
}

/** Neighbours of one style as one text. */
function joined(parts: readonly StyledText[]): StyledText[] {
  const whole: { text: string; style: Style }[] = [];
  for (const { text, style } of parts) {
    const last = whole.at(-1);
    if (last && last.style === style) last.text += text;
    else whole.push({ text, style });
  }
  return whole;
}
