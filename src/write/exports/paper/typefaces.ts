import { createRequire } from "node:module";
import { readBytesIfThere } from "../../output.ts";
import { sfntFromWoff } from "./woff.ts";

const { resolve } = createRequire(import.meta.url);

/** A file of a typeface and the characters in it, as ranges of code points, ends included. */
export interface TypefaceFile {
  readonly name: string;
  readonly file: string;
  readonly characters: readonly (readonly [number, number])[];
}

const b612Characters = [
  [0x20, 0x7e],
  [0xa0, 0xac],
  [0xae, 0xff],
  [0x152, 0x153],
  [0x2c6, 0x2c6],
  [0x2da, 0x2da],
  [0x2dc, 0x2dc],
  [0x2013, 0x2014],
  [0x2018, 0x201a],
  [0x201c, 0x201e],
  [0x2022, 0x2022],
  [0x2026, 0x2026],
  [0x2032, 0x2033],
  [0x2039, 0x203a],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x2212, 0x2212],
] as const;

const barlowCharacters = [...b612Characters, [0x131, 0x131]] as const;

// Letters of European languages beyond Latin-1.
const barlowFurtherCharacters = [
  [0x100, 0x113],
  [0x116, 0x12b],
  [0x12d, 0x130],
  [0x133, 0x137],
  [0x139, 0x13e],
  [0x140, 0x148],
  [0x14a, 0x14d],
  [0x14f, 0x151],
  [0x154, 0x17e],
  [0x218, 0x21b],
  [0x1e80, 0x1e85],
  [0x2020, 0x2020],
] as const;

function typeface(
  name: string,
  file: string,
  characters: TypefaceFile["characters"],
): TypefaceFile {
  return { name, file: resolve(`@fontsource/${file}.woff`), characters };
}

const barlow = "barlow-condensed/files/barlow-condensed";
const further500 = typeface(
  "small further",
  `${barlow}-latin-ext-500-normal`,
  barlowFurtherCharacters,
);
const further600 = typeface(
  "caps further",
  `${barlow}-latin-ext-600-normal`,
  barlowFurtherCharacters,
);

/**
 * The faces of the paper, by use. The first file that has a character draws it. All are under
 * the SIL Open Font License 1.1 and are embedded, cut down to the characters used.
 */
export const typefaces = {
  /** Numbers, dates, and what was typed. */
  text: [typeface("text", "b612/files/b612-latin-400-normal", b612Characters), further500],
  /** Totals and what must be found at a glance. */
  bold: [typeface("bold", "b612/files/b612-latin-700-normal", b612Characters), further600],
  /** Words that the builder stressed. */
  italic: [typeface("italic", "b612/files/b612-latin-400-italic", b612Characters), further500],
  /** What has to keep its columns, and what was typed as code. */
  mono: [
    typeface("mono", "b612-mono/files/b612-mono-latin-400-normal", b612Characters),
    further500,
  ],
  /** Headings and the heads of columns. */
  caps: [typeface("caps", `${barlow}-latin-600-normal`, barlowCharacters), further600],
  /** Words in columns, labels and notes. */
  small: [typeface("small", `${barlow}-latin-500-normal`, barlowCharacters), further500],
} as const satisfies Readonly<Record<string, readonly TypefaceFile[]>>;

/** A use of type on the sheet. */
export type Face = keyof typeof typefaces;

/** Every file, once. */
export const typefaceFiles: readonly TypefaceFile[] = [...new Set(Object.values(typefaces).flat())];

/** Whether a file has a character. */
export function hasCharacter({ characters }: TypefaceFile, codePoint: number): boolean {
  return characters.some(([first, last]) => first <= codePoint && codePoint <= last);
}

/** The fonts themselves, by the name of their file, read once for the whole program. */
export function typefaceFonts(): Promise<ReadonlyMap<string, Uint8Array>> {
  reading ??= readFonts();
  return reading;
}

let reading: Promise<ReadonlyMap<string, Uint8Array>> | undefined;

async function readFonts(): Promise<ReadonlyMap<string, Uint8Array>> {
  const fonts = new Map<string, Uint8Array>();
  for (const { name, file } of typefaceFiles) {
    const woff = await readBytesIfThere(file);
    if (!woff) throw new Error(`the typeface ${file} is not installed`);
    fonts.set(name, sfntFromWoff(woff));
  }
  return fonts;
}
