import { create, type Font, type PathCommand } from "fontkit";
import { printable } from "./exports/paper/printable.ts";
import {
  type Face,
  hasCharacter,
  type TypefaceFile,
  typefaceFonts,
  typefaces,
} from "./exports/paper/typefaces.ts";

/** Where and how words stand in a drawing; lengths in the drawing's own units, y going down. */
export interface Lettered {
  readonly face: Face;
  /** Height of an em. */
  readonly size: number;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  /** Which point of the words `x` is; the start unless told. */
  readonly anchor?: "start" | "middle" | "end";
  /** Words that are longer are cut and end in `…`. */
  readonly width?: number;
}

/** Sets words as outlines, so that a drawing needs no font where it is seen. */
export interface Lettering {
  /** How long words are. Nothing is cut. */
  readonly widthOf: (words: string, face: Face, size: number) => number;
  /** The words as the `d` of an SVG path; empty for no words. */
  readonly path: (words: string, how: Lettered) => string;
}

/** The typefaces of the paper, ready to be drawn with; read once for the whole program. */
export function lettering(): Promise<Lettering> {
  loading ??= loadLettering();
  return loading;
}

let loading: Promise<Lettering> | undefined;

async function loadLettering(): Promise<Lettering> {
  const fonts = new Map<string, Font>();
  for (const [name, bytes] of await typefaceFonts()) fonts.set(name, create(bytes));
  const fontOf = ({ name }: TypefaceFile): Font => {
    const font = fonts.get(name);
    if (font === undefined) throw new Error(`no typeface "${name}"`);
    return font;
  };

  const widthOf = (words: string, face: Face, size: number): number =>
    runsOf(words, typefaces[face]).reduce((sum, { text, file }) => {
      const font = fontOf(file);
      const { positions } = font.layout(text);
      return sum + positions.reduce((all, { xAdvance }) => all + xAdvance, 0) / font.unitsPerEm;
    }, 0) * size;

  const path = (words: string, how: Lettered): string => {
    const { face, size, y, anchor = "start", width } = how;
    const text =
      width === undefined ? words : fitting(words, width, (some) => widthOf(some, face, size));
    const shift = { start: 0, middle: 0.5, end: 1 }[anchor] * widthOf(text, face, size);
    let x = how.x - shift;
    const parts: string[] = [];
    for (const run of runsOf(text, typefaces[face])) {
      const font = fontOf(run.file);
      const scale = size / font.unitsPerEm;
      const { glyphs, positions } = font.layout(run.text);
      glyphs.forEach(({ path: { commands } }, index) => {
        parts.push(outline(commands, scale, x, y));
        x += (positions[index]?.xAdvance ?? 0) * scale;
      });
    }
    return parts.join("");
  };
  return { widthOf, path };
}

interface Run {
  readonly text: string;
  readonly file: TypefaceFile;
}

// Neighbours from one file stay together, so that they are kerned.
function runsOf(words: string, files: readonly TypefaceFile[]): Run[] {
  const runs: { text: string; file: TypefaceFile }[] = [];
  for (const character of printable(words, files)) {
    const code = character.codePointAt(0) ?? 0;
    const file = files.find((each) => hasCharacter(each, code)) ?? files[0];
    if (file === undefined) continue;
    const last = runs.at(-1);
    if (last?.file === file) last.text += character;
    else runs.push({ text: character, file });
  }
  return runs;
}

function fitting(words: string, width: number, widthOf: (some: string) => number): string {
  if (widthOf(words) <= width) return words;
  const characters = Array.from(words);
  let [fits, tooLong] = [0, characters.length];
  while (tooLong - fits > 1) {
    const half = Math.floor((fits + tooLong) / 2);
    if (widthOf(`${characters.slice(0, half).join("")}…`) <= width) fits = half;
    else tooLong = half;
  }
  return `${characters.slice(0, fits).join("").trimEnd()}…`;
}

const letters = {
  moveTo: "M",
  lineTo: "l",
  quadraticCurveTo: "q",
  bezierCurveTo: "c",
  closePath: "z",
} as const;

// Steps from point to point, in hundredths: half as long as whole places. What is rounded off
// one step is made up for by the next.
function outline(commands: readonly PathCommand[], scale: number, left: number, base: number) {
  let [atX, atY] = [0, 0];
  return commands
    .map(({ command, args }) => {
      const pen = letters[command];
      const absolute = pen === "M";
      const [fromX, fromY] = [absolute ? 0 : atX, absolute ? 0 : atY];
      let text = "";
      for (let index = 0; index + 1 < args.length; index += 2) {
        atX = Math.round((left + (args[index] ?? 0) * scale) * 100);
        atY = Math.round((base - (args[index + 1] ?? 0) * scale) * 100);
        text += joined(text, atX - fromX);
        text += joined(text, atY - fromY);
      }
      return `${pen}${text}`;
    })
    .join("");
}

// A minus sign, or the point of a second fraction, parts two numbers by itself.
function joined(before: string, hundredths: number): string {
  const text = String(hundredths / 100).replace(/^(-?)0\./, "$1.");
  const parted = before === "" || text.startsWith("-");
  return parted || (text.startsWith(".") && /\.\d+$/.test(before)) ? text : ` ${text}`;
}
