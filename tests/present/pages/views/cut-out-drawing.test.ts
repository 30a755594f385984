import { describe, expect, test } from "vitest";
import { cutOutDrawing } from "../../../../src/present/pages/views/cut-out-drawing.ts";
import { cutOut, stated } from "../../../support/small-layout.ts";

const round = {
  shape: "circle",
  length: stated("2 in"),
  width: stated("2 in"),
  corner: stated("1 in"),
} as const;

describe("a cut-out", () => {
  test.each([
    ["a hatch", cutOut(), 8 / 5.5],
    ["a tall one", cutOut({ length: stated("50 mm"), width: stated("8 in") }), 50 / 203.2],
    ["a circle", cutOut(round), 1],
  ])("%s is drawn to one scale, within its frame", (_what, piece, ratio) => {
    const { reach, width, height, sheet, along, across } = cutOutDrawing(piece);
    expect(reach[0] / reach[1]).toBeCloseTo(ratio, 1);
    expect(sheet.x).toBeGreaterThanOrEqual(0);
    expect(along.to).toBeLessThan(width);
    expect(along.y).toBeLessThan(height);
    expect((across?.x ?? 0) + 60).toBeLessThanOrEqual(width + 10);
  });

  test("has four corners, drilled first where it says so", () => {
    expect(cutOutDrawing(cutOut()).holes).toEqual([]);
    const { holes, leader, outline } = cutOutDrawing(
      cutOut({ corner: stated("0.4375 in"), cornerHole: stated("7/8 in") }),
    );
    expect(holes).toHaveLength(4);
    expect(leader?.lines.map(({ text }) => text)).toEqual(["R 0.4375 in", "4 corners"]);
    expect(outline.match(/a/g)).toHaveLength(4);
  });

  test("a circle has one dimension, a slot says that its ends are round", () => {
    const circle = cutOutDrawing(cutOut(round));
    expect([circle.across, circle.leader, circle.along.text]).toEqual([
      undefined,
      undefined,
      "dia. 2 in",
    ]);
    const slot = cutOutDrawing(
      cutOut({
        shape: "slot",
        length: stated("40 mm"),
        width: stated("12 mm"),
        corner: stated("6 mm"),
      }),
    );
    expect(slot.leader?.lines.map(({ text }) => text)).toEqual(["ends rounded", "R 6 mm"]);
  });
});
