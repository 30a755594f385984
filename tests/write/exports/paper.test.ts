import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { beginPdf } from "../../../src/write/exports/paper/pdf-document.ts";
import { printable } from "../../../src/write/exports/paper/printable.ts";
import { sheetFormat } from "../../../src/write/exports/paper/sheet-format.ts";
import { typefaceFiles, typefaces } from "../../../src/write/exports/paper/typefaces.ts";
import { sfntFromWoff } from "../../../src/write/exports/paper/woff.ts";

/** What the tests use of the library that reads fonts. */
interface OpenFont {
  readonly characterSet: readonly number[];
  readonly numGlyphs: number;
  layout(text: string): { readonly advanceWidth: number };
}
const fontkit: { create(data: Uint8Array): OpenFont } = createRequire(import.meta.url)("fontkit");

describe.each(typefaceFiles.map((file) => [file.name, file] as const))(
  "the typeface %s",
  (_, file) => {
    const woff = readFileSync(file.file);

    test("has every character it is said to have", () => {
      const has = new Set(fontkit.create(woff).characterSet);
      const missing = file.characters.flatMap(([first, last]) =>
        Array.from({ length: last - first + 1 }, (_each, index) => first + index).filter(
          (code) => !has.has(code),
        ),
      );
      expect(missing).toEqual([]);
    });

    test("unpacked, is the same font", () => {
      const packed = fontkit.create(woff);
      const plain = fontkit.create(sfntFromWoff(woff));
      expect(plain.numGlyphs).toBe(packed.numGlyphs);
      expect(plain.characterSet).toEqual(packed.characterSet);
      const sample = "0123456789 Łódź Hours logbook";
      expect(plain.layout(sample).advanceWidth).toBe(packed.layout(sample).advanceWidth);
    });
  },
);

test("what is not a packed font is refused", () => {
  expect(() => sfntFromWoff(new Uint8Array(64))).toThrow("the file is not a WOFF 1.0 file");
});

describe("text for the paper", () => {
  test.each([
    ["plain text", "plain text"],
    ["  two \n lines\tand tabs ", " two lines and tabs "],
    ["61 °F ± 2 µm × 3", "61 °F ± 2 µm × 3"],
    ["≤ ≥ ⌀ → ✓", "<= >= dia.  -> [check]"],
    ["e\u0301", "é"],
    ["⅛ in", "1/8 in"],
    ["soft\u00adhyphen\u200b", "softhyphen"],
    ["\u202eabc", "abc"],
    ["Ж 🛩", "[U+0416] [U+1F6E9]"],
  ])("%j is printed as %j", (typed, printed) => {
    expect(printable(typed, typefaces.text)).toBe(printed);
  });
});

describe("breaking lines", async () => {
  const { setter } = await beginPdf(
    { title: "t", subject: "s", asOf: "2026-03-14", program: "p" },
    sheetFormat("A4"),
  );
  const style = { face: "small", size: 8 } as const;
  const wrap = (text: string, width: number) =>
    setter.wrap(text, style, width).map(({ runs }) => runs.map(({ text: each }) => each).join(""));

  test("no line is wider than it may be, and every word comes out in order", () => {
    const text =
      "Seal and rivet the front spar, with the doublers, brackets and covers of both sides";
    for (const width of [40, 61, 90, 152, 400]) {
      for (const line of setter.wrap(text, style, width))
        expect(line.width).toBeLessThanOrEqual(width);
      expect(wrap(text, width).join(" ")).toBe(text);
    }
  });

  test("a word too wide for a line is cut, and nothing of it is lost", () => {
    const word = "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft";
    const lines = wrap(word, 60);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join("")).toBe(word);
  });

  test("an empty text has no lines", () => {
    expect(wrap("", 60)).toEqual([]);
    expect(wrap(" \n ", 60)).toEqual([]);
  });
});
