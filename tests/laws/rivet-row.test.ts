import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import {
  type KeepOut,
  layRow,
  mostRivets,
  type Row,
  type RowWanted,
} from "../../src/compute/reckon/lay-row.ts";

// Sixty-fourths and thousandths, as a drawing has them.
const size = (most: number) =>
  fc.oneof(
    fc.integer({ min: 1, max: most * 64 }).map((n) => new Fraction(n, 64)),
    fc.integer({ min: 1, max: most * 1000 }).map((n) => new Fraction(n, 1000)),
  );
const keepOut: fc.Arbitrary<KeepOut> = fc
  .tuple(size(12), size(2))
  .map(([from, width]) => ({ from, to: from.add(width) }));

const plain: fc.Arbitrary<RowWanted> = fc
  .record({ length: size(12), edge: size(1), pitchMin: size(1) })
  .map((sizes) => {
    const { edge, pitchMin } = sizes;
    const hole = edge.mul(2).lt(pitchMin) ? edge.mul(2) : pitchMin;
    return { ...sizes, hole, keepOuts: [] };
  });

const wanted: fc.Arbitrary<RowWanted> = fc
  .record({
    row: plain,
    slack: fc.option(size(2)),
    count: fc.option(fc.integer({ min: 1, max: 40 })),
    pitch: fc.option(size(2)),
    keepOuts: fc.array(keepOut, { maxLength: 3 }),
  })
  .map(({ row, slack, count, pitch, keepOuts }) => ({
    ...row,
    ...(slack ? { pitchMax: row.pitchMin.add(slack) } : {}),
    ...(count === null ? {} : { count }),
    ...(count === null && pitch ? { pitch } : {}),
    keepOuts,
  }));

/** Says something of every row that is found, and that some are. */
function ofEveryRow(arbitrary: fc.Arbitrary<RowWanted>, holds: (row: Row, of: RowWanted) => void) {
  let found = 0;
  fc.assert(
    fc.property(arbitrary, (each) => {
      const row = layRow(each);
      if (!row.ok) return;
      found += 1;
      holds(row, each);
    }),
    { numRuns: 400 },
  );
  expect(found).toBeGreaterThan(40);
}

function gaps(row: Row): Fraction[] {
  return row.positions.slice(1).map((place, index) => place.sub(row.positions[index] ?? place));
}

describe("a row of rivets", () => {
  test("reads the same from either end", () => {
    ofEveryRow(wanted, ({ positions }, { length }) => {
      const mirrored = positions.map((place) => length.sub(place)).toReversed();
      expect(mirrored.map(String)).toEqual(positions.map(String));
    });
  });

  test("is pitched evenly, never below the least pitch nor above the greatest", () => {
    ofEveryRow(wanted, (row, { pitchMin, pitchMax }) => {
      for (const gap of gaps(row)) {
        expect(gap.equals(row.pitch ?? 0)).toBe(true);
        expect(gap.gte(pitchMin)).toBe(true);
        if (pitchMax) expect(gap.lte(pitchMax)).toBe(true);
      }
    });
  });

  test("keeps the edge distance at both ends, exactly where there are two rivets or more", () => {
    ofEveryRow(wanted, ({ positions }, { length, edge }) => {
      const first = positions[0] ?? new Fraction(-1);
      const last = positions.at(-1) ?? new Fraction(-1);
      expect(first.gte(edge)).toBe(true);
      expect(length.sub(last).gte(edge)).toBe(true);
      if (positions.length > 1) expect(first.equals(edge)).toBe(true);
    });
  });

  test("puts no rivet inside a stretch kept out", () => {
    ofEveryRow(wanted, ({ positions }, { keepOuts }) => {
      for (const place of positions)
        for (const { from, to } of keepOuts) expect(place.gt(from) && place.lt(to)).toBe(false);
    });
  });

  test("has as many rivets as were asked for", () => {
    ofEveryRow(wanted, ({ positions }, { count }) => {
      if (count !== undefined) expect(positions).toHaveLength(count);
    });
  });

  test("has no room for one more when nothing else was asked", () => {
    ofEveryRow(plain, ({ positions }, { length, edge, pitchMin }) => {
      const between = length.sub(edge.mul(2));
      expect(between.div(positions.length).lt(pitchMin)).toBe(true);
    });
  });

  test("has the even pitch closest to the one asked for", () => {
    const asked = fc
      .tuple(plain, size(2))
      .map(([row, more]) => ({ ...row, pitch: row.pitchMin.add(more) }));
    ofEveryRow(asked, (row, { length, edge, pitchMin, pitch }) => {
      if (!row.pitch) return;
      const between = length.sub(edge.mul(2));
      const off = (spaces: number) =>
        between
          .div(spaces)
          .sub(pitch ?? 0)
          .abs();
      for (let spaces = 1; between.div(spaces).gte(pitchMin); spaces++)
        expect(off(row.positions.length - 1).lte(off(spaces))).toBe(true);
    });
  });

  test("is found whenever there is one", () => {
    fc.assert(
      fc.property(wanted, (each) => {
        const answer = layRow(each);
        if (answer.ok) return;
        const between = each.length.sub(each.edge.mul(2));
        if (answer.why.kind === "beyond counting") {
          expect(between.div(each.pitchMin).gt(mostRivets)).toBe(true);
          return;
        }
        const counts = each.count === undefined ? range(60) : [each.count];
        for (const rivets of counts) expect(serves(rivets, between, each)).toBe(false);
      }),
      {
        numRuns: 400,
        examples: [
          [
            {
              length: new Fraction(641, 64),
              edge: new Fraction(1, 1000),
              pitchMin: new Fraction(1, 1000),
              hole: new Fraction(1, 1000),
              keepOuts: [],
            },
          ],
        ],
      },
    );
  });
});

function range(most: number): number[] {
  return Array.from({ length: most - 1 }, (_, index) => index + 2);
}

// Tried one rivet after the other, without the shortcuts of the program.
function serves(rivets: number, between: Fraction, each: RowWanted): boolean {
  if (between.lt(0)) return false;
  const pitch = rivets > 1 ? between.div(rivets - 1) : undefined;
  if (pitch?.lt(each.pitchMin) || (each.pitchMax && pitch?.gt(each.pitchMax))) return false;
  return Array.from({ length: rivets }, (_, index) =>
    pitch ? each.edge.add(pitch.mul(index)) : each.length.div(2),
  ).every((place) => !each.keepOuts.some(({ from, to }) => place.gt(from) && place.lt(to)));
}
