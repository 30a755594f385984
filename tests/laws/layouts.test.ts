// Whatever row a builder describes: it reads the same from either end, keeps to what was named,
// and does not care which unit it was typed in.

import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import type { LaidOut } from "../../src/compute/laid-out.ts";
import type { FastenerRow, StatedLength } from "../../src/model/layout.ts";
import { compareQuantities, convert, type Quantity, quantityOf } from "../../src/model/quantity.ts";
import { type Unit, unitOf } from "../../src/model/unit.ts";
import { span } from "../support/small-build.ts";
import { laidOut, named } from "../support/small-layout.ts";

const inch = unitOf("in");
const inches = (most: number) =>
  fc.oneof(
    fc.integer({ min: 1, max: most * 64 }).map((n) => quantityOf(new Fraction(n, 64), inch)),
    fc.integer({ min: 1, max: most * 1000 }).map((n) => quantityOf(new Fraction(n, 1000), inch)),
  );
const stated = (length: Quantity): StatedLength => ({
  typed: length.typed,
  length,
  span: span(),
});

const diameter = fc
  .constantFrom("3/32", "1/8", "5/32", "3/16")
  .map((size) => quantityOf(new Fraction(size), inch));

const row: fc.Arbitrary<FastenerRow> = fc
  .record({
    length: inches(24),
    diameter,
    edge: inches(1),
    count: fc.option(fc.integer({ min: 1, max: 40 })),
    pitch: fc.option(inches(2)),
    side: fc.option(inches(1)),
    keepOuts: fc.array(fc.tuple(inches(20), inches(2), fc.option(inches(1))), { maxLength: 2 }),
    edgeRule: fc.constantFrom("edge-distance-2d", "edge-distance-2d-ac-43-13-1b"),
    pitchRule: fc.constantFrom("pitch-3d-navy", "pitch-army-tm"),
  })
  .map(({ length, edge, count, pitch, side, keepOuts, edgeRule, pitchRule, diameter: d }) => ({
    kind: "row",
    length: stated(length),
    diameter: d,
    edge: stated(edge),
    ...(count === null ? {} : { count: { value: count, span: span() } }),
    ...(count === null && pitch ? { pitch: stated(pitch) } : {}),
    ...(side ? { side: stated(side) } : {}),
    keepOuts: keepOuts.map(([from, size, clear]) => ({
      from,
      to: quantityOf(from.amount.add(size.amount), inch),
      ...(clear ? { clear: stated(clear) } : {}),
    })),
    check: { edge: named(edgeRule), pitch: named(pitchRule) },
  }));

/** Says something of every row that can be laid out, and that there are some. */
function ofEveryRow(
  holds: (of: LaidOut & { positions: readonly Fraction[] }, piece: FastenerRow) => void,
) {
  let found = 0;
  fc.assert(
    fc.property(row, (piece) => {
      const result = laidOut(piece);
      if (!result.row?.ok) return;
      found += 1;
      holds({ ...result, positions: result.row.positions }, piece);
    }),
    { numRuns: 300 },
  );
  expect(found).toBeGreaterThan(60);
}

describe("a row in a journal", () => {
  test("reads the same from either end", () => {
    ofEveryRow(({ positions }, { length }) => {
      const mirrored = positions.map((place) => length.length.amount.sub(place)).toReversed();
      expect(mirrored.map(String)).toEqual(positions.map(String));
    });
  });

  test("keeps to the least pitch of the rule it names, unless it says its count", () => {
    ofEveryRow(({ positions, checks }, { count, diameter: { amount } }) => {
      const gaps = positions.slice(1).map((place, index) => place.sub(positions[index] ?? place));
      const keeps = gaps.every((gap) => gap.gte(amount.mul(3)));
      if (!count) expect(keeps).toBe(true);
      const verdicts = checks.filter(({ subject }) => subject === "pitch");
      expect(verdicts.every(({ verdict }) => verdict?.kind === "within")).toBe(keeps);
    });
  });

  test("is out when an edge distance is short of 2 D, and only then or for its pitch", () => {
    ofEveryRow(({ positions, checks, standing }, { side, length, diameter: { amount } }) => {
      const least = amount.mul(2);
      const ends = [positions[0], length.length.amount.sub(positions.at(-1) ?? 0)];
      const edges = [...ends, ...(side ? [side.length.amount] : [])];
      const short = edges.some((each) => each?.lt(least));
      const tight = checks.some(
        (each) => each.subject === "pitch" && each.verdict?.kind !== "within",
      );
      expect(standing).toBe(short || tight ? "out" : "within");
    });
  });

  test("has no fastener in a stretch kept out, nor closer to it than it is to be clear", () => {
    ofEveryRow(({ positions }, { keepOuts }) => {
      for (const place of positions)
        for (const { from, to, clear } of keepOuts) {
          const margin = clear?.length.amount ?? new Fraction(0);
          expect(place.gt(from.amount.sub(margin)) && place.lt(to.amount.add(margin))).toBe(false);
        }
    });
  });

  test("has as many fasteners as it says", () => {
    ofEveryRow(({ positions }, { count }) => {
      if (count) expect(positions).toHaveLength(count.value);
    });
  });

  test("is the same row in millimetres", () => {
    fc.assert(
      fc.property(row, (piece) => {
        const [here, there] = [laidOut(piece), laidOut(inUnit(piece, unitOf("mm")))];
        expect(there.standing).toBe(here.standing);
        expect(there.row?.ok).toBe(here.row?.ok);
        expect(there.checks.map(({ verdict }) => verdict?.kind)).toEqual(
          here.checks.map(({ verdict }) => verdict?.kind),
        );
        if (!here.row?.ok || !there.row?.ok) return;
        const inMillimetres = here.row.positions.map((place) => place.mul("25.4"));
        expect(there.row.positions.map(String)).toEqual(inMillimetres.map(String));
      }),
      { numRuns: 150 },
    );
  });
});

test("a larger edge, fewer fasteners or a smaller rivet never breaks a least distance that held", () => {
  fc.assert(
    fc.property(row, inches(1), (piece, more) => {
      const before = laidOut(piece);
      const { edge, count } = piece;
      if (before.standing !== "within" || !count || count.value < 3) return;
      const eased = laidOut({
        ...piece,
        count: { ...count, value: count.value - 1 },
        keepOuts: [],
      });
      const smaller = laidOut({ ...piece, diameter: quantityOf(new Fraction(1, 16), inch) });
      expect([eased.standing, smaller.standing]).toEqual(["within", "within"]);
      const wider = laidOut({
        ...piece,
        edge: stated(quantityOf(edge.length.amount.add(more.amount), inch)),
        keepOuts: [],
      });
      const [was, is] = [before, wider].map(({ checks }) => checks[0]?.value);
      if (wider.row?.ok && was && is) expect(compareQuantities(is, was)).toBeGreaterThan(0);
    }),
    { numRuns: 300 },
  );
});

function inUnit(piece: FastenerRow, unit: Unit): FastenerRow {
  const turned = (length: StatedLength) => stated(convert(length.length, unit));
  const { pitch, side } = piece;
  return {
    ...piece,
    length: turned(piece.length),
    diameter: convert(piece.diameter, unit),
    edge: turned(piece.edge),
    ...(pitch ? { pitch: turned(pitch) } : {}),
    ...(side ? { side: turned(side) } : {}),
    keepOuts: piece.keepOuts.map(({ from, to, clear }) => ({
      from: convert(from, unit),
      to: convert(to, unit),
      ...(clear ? { clear: turned(clear) } : {}),
    })),
  };
}
