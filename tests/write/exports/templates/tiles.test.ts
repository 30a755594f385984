import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tiling } from "../../../../src/write/exports/templates/tiles.ts";

const area = { width: 700, height: 450 };
const overlap = 57;

describe("tiling", () => {
  test("what fits is one sheet without joins", () => {
    expect(tiling({ width: 700, height: 450 }, area, overlap)).toEqual({
      tiles: [{ column: 0, row: 0, left: 0, top: 0 }],
      columns: 1,
      rows: 1,
      joinsAcross: [],
      joinsDown: [],
    });
  });

  test("a point more takes two, which share a strip", () => {
    const { tiles, joinsAcross } = tiling({ width: 701, height: 10 }, area, overlap);
    expect(tiles.map(({ left }) => left)).toEqual([0, 643]);
    expect(joinsAcross).toEqual([671.5]);
  });

  test("goes from left to right, then down", () => {
    const { tiles, columns, rows } = tiling({ width: 1000, height: 800 }, area, overlap);
    expect([columns, rows]).toEqual([2, 2]);
    expect(tiles.map(({ column, row }) => `${column}${row}`)).toEqual(["00", "10", "01", "11"]);
  });

  test("leaves nothing out, and every join is on both its sheets", () => {
    const size = fc.double({ min: 1, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(size, size, (width, height) => {
        const { tiles, columns, rows, joinsAcross, joinsDown } = tiling(
          { width, height },
          area,
          overlap,
        );
        expect(tiles).toHaveLength(columns * rows);
        const last = tiles.at(-1);
        expect((last?.left ?? 0) + area.width).toBeGreaterThanOrEqual(width);
        expect((last?.top ?? 0) + area.height).toBeGreaterThanOrEqual(height);
        // The last one is needed.
        if (columns > 1) expect((last?.left ?? 0) + overlap).toBeLessThanOrEqual(width);
        joinsAcross.forEach((join, index) => {
          const [before, behind] = [tiles[index], tiles[index + 1]];
          expect(join).toBeCloseTo((before?.left ?? 0) + area.width - overlap / 2, 6);
          expect(join).toBeCloseTo((behind?.left ?? 0) + overlap / 2, 6);
        });
        expect(joinsDown).toHaveLength(rows - 1);
      }),
    );
  });
});
