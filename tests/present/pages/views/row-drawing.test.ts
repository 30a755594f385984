import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rowWords } from "../../../../src/compute/laid-out.ts";
import { rowDrawing } from "../../../../src/present/pages/views/row-drawing.ts";
import { span } from "../../../support/small-build.ts";
import { fastenerRow, rowOf, stated } from "../../../support/small-layout.ts";
import { quantity } from "../../../support/typed-quantity.ts";

const counted = (value: number) => ({ value, span: span() });
const drawn = (piece: Parameters<typeof fastenerRow>[0], broken?: ReadonlySet<string>) => {
  const row = fastenerRow(piece);
  return rowDrawing(row, rowOf(row), broken);
};
const texts = (drawing: ReturnType<typeof drawn>) => drawing.along.map(({ text }) => text);

describe("a row that fits as it is", () => {
  const drawing = drawn({ length: stated("10 in"), edge: stated("1 in"), count: counted(9) });

  test("is drawn to scale along its length", () => {
    expect(drawing.fasteners.map(({ x }) => x)).toEqual([
      "10%",
      "20%",
      "30%",
      "40%",
      "50%",
      "60%",
      "70%",
      "80%",
      "90%",
    ]);
    expect(drawing.breaks).toEqual([]);
  });

  test("has its dimensions, the short ones with their words outside", () => {
    expect(drawing.along.map(({ text, from, to, place }) => [text, from, to, place])).toEqual([
      ["edge 1 in", "0%", "10%", "right"],
      ["edge 1 in", "90%", "100%", "left"],
      ["pitch 1 in", "10%", "20%", "right"],
      ["8 spaces: 8 in", "10%", "90%", "between"],
      ["10 in over all", "0%", "100%", "between"],
    ]);
    const tops = drawing.along.map(({ y }) => y);
    expect(new Set(tops).size).toBe(5);
    expect(Math.max(...tops)).toBeLessThan(drawing.height);
  });

  test("says nothing of edges that it does not know", () => {
    expect([drawing.edges, drawing.across]).toEqual([{ near: false, far: false }, []]);
  });
});

describe("across the row", () => {
  test("the edge alongside, and the far one where the width is known", () => {
    const one = drawn({ side: stated("0.28 in") });
    expect([one.edges, one.across.map(({ text }) => text)]).toEqual([
      { near: true, far: false },
      ["0.28 in"],
    ]);
    const both = drawn({ side: stated("0.28 in"), width: stated("0.75 in") });
    expect([both.edges, both.across.map(({ text }) => text)]).toEqual([
      { near: true, far: true },
      ["0.47 in", "0.28 in"],
    ]);
    expect(both.across[0]?.to).toBe(both.line);
  });
});

describe("a long row", () => {
  const long = { length: stated("96.238 in"), edge: stated("0.625 in"), count: counted(118) };

  test("is broken where it is alike, and numbered at both ends", () => {
    const drawing = drawn(long);
    expect(drawing.breaks).toHaveLength(1);
    expect(drawing.fasteners).toHaveLength(10);
    expect(drawing.fasteners[0]?.number).toBe("1");
    expect(drawing.fasteners.at(-1)?.number).toBe("118");
    expect(texts(drawing)).toContain("117 spaces: 94.988 in");
  });

  test("shows what is kept out in the middle, with a fastener on either side", () => {
    const drawing = drawn({
      ...long,
      keepOuts: [{ from: quantity("47.9 in"), to: quantity("48.3 in"), what: "joint" }],
    });
    expect(drawing.breaks).toHaveLength(2);
    const [kept] = drawing.keepOuts;
    const at = (percent = "") => Number.parseFloat(percent);
    const xs = drawing.fasteners.map(({ x }) => at(x));
    expect(xs.some((x) => x < at(kept?.x) && x > at(drawing.breaks[0]))).toBe(true);
    expect(xs.some((x) => x > at(kept?.x) + at(kept?.width) && x < at(drawing.breaks[1]))).toBe(
      true,
    );
    expect(texts(drawing)).toContain("K1: 47.9 in to 48.3 in");
  });

  test("keeps everything within its frame and in order, however long", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 900 }),
        fc.integer({ min: 1, max: 90 }),
        (count, middle) => {
          const kept = { from: quantity(`${middle} in`), to: quantity(`${middle}.01 in`) };
          const piece = fastenerRow({
            ...long,
            length: stated("100 in"),
            count: counted(count),
            keepOuts: [kept],
          });
          let row: ReturnType<typeof rowOf>;
          try {
            row = rowOf(piece);
          } catch {
            return;
          }
          const drawing = rowDrawing(piece, row);
          const xs = drawing.fasteners.map(({ x }) => Number.parseFloat(x));
          expect(xs.length).toBeLessThanOrEqual(24);
          expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...xs)).toBeLessThanOrEqual(100);
          expect(xs.toSorted((a, b) => a - b)).toEqual(xs);
        },
      ),
      { numRuns: 100 },
    );
  });
});

test("what is outside its limits says so", () => {
  const drawing = drawn(
    { count: counted(9), side: stated("0.1 in"), width: stated("1 in") },
    new Set([rowWords.pitch, rowWords.near]),
  );
  expect(drawing.along.filter(({ out }) => out).map(({ text }) => text)).toEqual([
    "pitch 0.6719 in, out",
  ]);
  expect(drawing.across.map(({ out }) => out)).toEqual([false, true]);
});

test("one fastener has neither pitch nor spaces", () => {
  expect(texts(drawn({ count: counted(1) }))).toEqual(["edge 3 in", "6.000 in over all"]);
});

test("the margin of a keep-out stays on the piece", () => {
  const drawing = drawn({
    count: counted(2),
    keepOuts: [{ from: quantity("0.5 in"), to: quantity("5.5 in"), clear: stated("0.1 in") }],
  });
  expect(drawing.keepOuts[0]?.clear).toEqual({ x: "6.7%", width: "86.7%" });
});
