import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { layRow, mostRivets, type RowWanted } from "../../../src/compute/reckon/lay-row.ts";

const inches = (text: string) => new Fraction(text);

function row(more: Partial<RowWanted> = {}) {
  return layRow({
    length: inches("6"),
    edge: inches("0.25"),
    pitchMin: inches("0.375"),
    hole: inches("0.125"),
    keepOuts: [],
    ...more,
  });
}

test("takes as many as the least pitch allows", () => {
  const laid = row();
  expect(laid).toMatchObject({ ok: true, mostWithout: 15 });
  if (!laid.ok) return;
  expect(laid.pitch?.toFraction()).toBe("11/28");
  expect(laid.positions).toHaveLength(15);
});

test("a row at exactly the least pitch is found", () => {
  const laid = row({ length: inches("1.25") });
  expect(laid.ok && laid.pitch?.toFraction()).toBe("3/8");
  expect(laid.ok && laid.positions.map(Number)).toEqual([0.25, 0.625, 1]);
});

test("a thousandth less and there is room for two only", () => {
  const laid = row({ length: inches("1.249") });
  expect(laid.ok && laid.positions).toHaveLength(2);
});

test("where two do not fit, one stands in the middle", () => {
  const laid = row({ length: inches("0.7") });
  expect(laid.ok && laid.pitch).toBeUndefined();
  expect(laid.ok && laid.positions.map(Number)).toEqual([0.35]);
});

test("a piece of two edge distances holds one rivet", () => {
  expect(row({ length: inches("0.5") })).toMatchObject({ ok: true, mostWithout: 1 });
});

test("one rivet can be asked for", () => {
  const laid = row({ count: 1 });
  expect(laid.ok && laid.positions.map(Number)).toEqual([3]);
});

test("the pitch closest to the one wanted, the smaller of two", () => {
  const laid = row({ length: inches("12.5"), pitch: inches("5") });
  // 12 in between: spaces of 6 and of 4 are equally far from 5.
  expect(laid.ok && laid.pitch?.toFraction()).toBe("4");
});

test("rivets may stand on the ends of a stretch kept out, not inside", () => {
  const ends = row({
    length: inches("1.25"),
    keepOuts: [{ from: inches("0.25"), to: inches("0.625") }],
  });
  expect(ends.ok && ends.positions).toHaveLength(3);
  const inside = row({
    length: inches("1.25"),
    keepOuts: [{ from: inches("0.24"), to: inches("0.26") }],
  });
  expect(inside).toMatchObject({ ok: false, why: { kind: "kept out", fewest: 2, most: 3 } });
});

test("a stretch kept out takes the next row that misses it", () => {
  const laid = row({ keepOuts: [{ from: inches("2.0"), to: inches("2.6") }] });
  expect(laid.ok && laid.positions).toHaveLength(8);
  expect(laid.ok && laid.mostWithout).toBe(15);
});

describe("says why there is no row", () => {
  test.each([
    ["shorter than its edges", { length: inches("0.49") }],
    ["too many wanted", { count: 16 }],
    ["too few wanted", { count: 3, pitchMax: inches("1") }],
    ["between two pitches", { pitchMax: inches("0.38") }],
    ["kept out", { count: 3, keepOuts: [{ from: inches("2"), to: inches("4") }] }],
    ["kept out", { count: 1, keepOuts: [{ from: inches("2"), to: inches("4") }] }],
    ["beyond counting", { length: inches("5000") }],
  ] as const)("%s", (kind, more) => {
    expect(row(more)).toMatchObject({ ok: false, why: { kind } });
  });

  test("with the pitch that too many would have", () => {
    const laid = row({ count: 16 });
    expect(!laid.ok && laid.why.kind === "too many wanted" && laid.why.pitch.toFraction()).toBe(
      "11/30",
    );
  });

  test("with the two pitches on either side", () => {
    const laid = row({ pitchMax: inches("0.38") });
    if (laid.ok || laid.why.kind !== "between two pitches") throw new Error("expected two pitches");
    expect([laid.why.wide, laid.why.tight].map((each) => each.toFraction())).toEqual([
      "11/28",
      "11/30",
    ]);
  });
});

test("the longest row that is counted", () => {
  const laid = row({ length: inches("0.5").add(inches("0.375").mul(mostRivets)) });
  expect(laid.ok && laid.positions).toHaveLength(mostRivets + 1);
});

test("holes keep clear of the ends and of each other", () => {
  expect(row({ edge: inches("0.0625") }).ok).toBe(true);
  expect(row({ edge: inches("0.0624") })).toMatchObject({ why: { kind: "over the edge" } });
  const close = { pitchMin: inches("0.1"), count: 45 };
  expect(row({ ...close, count: 45 }).ok).toBe(true); // 5.5 in / 44 is just the hole
  expect(row({ ...close, count: 46 })).toMatchObject({ why: { kind: "into each other" } });
});
