// Laws of limits that depend on other readings or on a table: whatever the unit, the order or
// the place between rows.

import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { figuresOf } from "../../src/compute/figure.ts";
import { interpolate } from "../../src/compute/interpolate.ts";
import { readingsLedger } from "../../src/compute/ledgers/readings.ts";
import type { LimitColumn } from "../../src/model/limit-table.ts";
import { compareQuantities, convert, type Quantity, quantityOf } from "../../src/model/quantity.ts";
import { figureKinds, type ToleranceRule } from "../../src/model/tolerance.ts";
import { unitOf } from "../../src/model/unit.ts";
import { limitTable, tableRule } from "../support/limit-tables.ts";
import { day, register, smallBuild, span } from "../support/small-build.ts";
import { reading, rule } from "../support/small-measurements.ts";

const inch = unitOf("in");
const pound = unitOf("lbf");
const fahrenheit = unitOf("°F");
const amount = fc
  .tuple(fc.integer({ min: -50_000, max: 50_000 }), fc.integer({ min: 1, max: 640 }))
  .map(([n, d]) => new Fraction(n, d));
const lengths = fc.array(amount, { minLength: 2, maxLength: 7 });
const asLength = (value: Fraction) => quantityOf(value, inch);
const inMillimetres = (quantity: Quantity) => convert(quantity, unitOf("mm"));
const inNewtons = (quantity: Quantity) => convert(quantity, unitOf("N"));
const inCelsius = (quantity: Quantity) => convert(quantity, unitOf("°C"));

// A column of two to six rows, entered with temperatures going up.
const someColumn = fc
  .uniqueArray(fc.integer({ min: -40, max: 140 }), { minLength: 2, maxLength: 6 })
  .map((temperatures) => temperatures.sort((a, b) => a - b))
  .chain((temperatures) =>
    fc.tuple(
      fc.constant(temperatures),
      fc.array(amount, { minLength: temperatures.length, maxLength: temperatures.length }),
    ),
  )
  .map(
    ([temperatures, values]): LimitColumn =>
      temperatures.map((at, index) => ({
        at: quantityOf(new Fraction(at), fahrenheit),
        value: quantityOf(values[index] ?? new Fraction(0), pound),
      })),
  );
const somewhere = fc
  .tuple(fc.integer({ min: -60_00, max: 160_00 }))
  .map(([hundredths]) => quantityOf(new Fraction(hundredths, 100), fahrenheit));

describe("a table", () => {
  test("holds its rows exactly, in whatever unit it is entered", () => {
    fc.assert(
      fc.property(someColumn, (column) => {
        for (const { at, value } of column) {
          expect(interpolate(column, at)).toBe(value);
          expect(interpolate(column, inCelsius(at))).toBe(value);
        }
      }),
    );
  });

  test("lies between its neighbours, and never turns between two rows", () => {
    fc.assert(
      fc.property(someColumn, somewhere, somewhere, (column, one, two) => {
        const [low, high] = compareQuantities(one, two) <= 0 ? [one, two] : [two, one];
        const [first, second] = [interpolate(column, low), interpolate(column, high)];
        const above = column.findIndex(({ at }) => compareQuantities(at, high) >= 0);
        const [before, after] = [column[above - 1], column[above]];
        if (!first || !second || !before || !after) return;
        if (compareQuantities(before.at, low) > 0) return;
        const slope = compareQuantities(after.value, before.value);
        expect(compareQuantities(second, first) * slope).toBeGreaterThanOrEqual(0);
        for (const value of [first, second]) {
          const ends = [before.value, after.value].sort(compareQuantities);
          const [least, most] = [ends[0] ?? value, ends[1] ?? value];
          expect(compareQuantities(value, least)).toBeGreaterThanOrEqual(0);
          expect(compareQuantities(value, most)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });

  test("says nothing outside its rows", () => {
    fc.assert(
      fc.property(someColumn, somewhere, (column, at) => {
        const [first, last] = [column[0], column.at(-1)];
        const inside =
          first !== undefined &&
          last !== undefined &&
          compareQuantities(first.at, at) <= 0 &&
          compareQuantities(at, last.at) <= 0;
        expect(interpolate(column, at) !== undefined).toBe(inside);
      }),
    );
  });

  test("that is typed in other units gives the same verdicts", () => {
    const table = limitTable();
    const moved = {
      by: table.by,
      rows: table.rows.map(({ at, lower, upper }) => ({
        at: inCelsius(at),
        ...(lower ? { lower: inNewtons(lower) } : {}),
        ...(upper ? { upper: inNewtons(upper) } : {}),
      })),
    };
    const verdictOf = (by: ToleranceRule, tension: Quantity, at: Quantity) => {
      const typed = {
        ...reading([], { rule: "cable", temperature: { quantity: at, from: "reading" } }),
        values: [{ quantity: tension, span: span() }],
      };
      const [judged] = readingsLedger(
        smallBuild({ rules: register(by), days: [day({ readings: [typed] })] }),
      );
      return [judged?.standing, judged?.verdict?.kind];
    };
    const tensions = fc
      .integer({ min: 400, max: 900 })
      .map((tenths) => quantityOf(new Fraction(tenths, 10), pound));
    fc.assert(
      fc.property(tensions, somewhere, (tension, at) => {
        const verdict = verdictOf(tableRule(table), tension, at);
        expect(verdictOf(tableRule(moved), tension, at)).toEqual(verdict);
        expect(verdictOf(tableRule(table), inNewtons(tension), inCelsius(at))).toEqual(verdict);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a figure", () => {
  const values = (list: readonly Quantity[]) => ({
    ...reading([]),
    values: list.map((quantity) => ({ quantity, span: span() })),
  });

  test("is the same in every unit, and never below zero", () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom(...figureKinds), (list, kind) => {
        const pair = kind === "difference" ? list.slice(0, 2) : list;
        const [own] = figuresOf(kind, [values(pair.map(asLength))]);
        const [moved] = figuresOf(kind, [
          values(pair.map((each) => inMillimetres(asLength(each)))),
        ]);
        if (!own || !moved) throw new Error("two values have a figure");
        expect(compareQuantities(own.quantity, moved.quantity)).toBe(0);
        expect(own.quantity.amount.gte(0)).toBe(true);
      }),
    );
  });

  test("does not depend on the order, nor on how values are shared out among readings", () => {
    const shuffled = lengths.chain((list) =>
      fc.tuple(
        fc.constant(list),
        fc.shuffledSubarray(list, { minLength: list.length }),
        fc.integer({ min: 0, max: list.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([list, again, cut]) => {
        const [whole] = figuresOf("range", [values(list.map(asLength))]);
        const parts = [again.slice(0, cut), again.slice(cut)].map((part) =>
          values(part.map(asLength)),
        );
        const [split] = figuresOf("range", parts);
        expect(split?.quantity.amount.equals(whole?.quantity.amount ?? -1)).toBe(true);
      }),
    );
  });

  test("of a series grows no smaller with one more value", () => {
    fc.assert(
      fc.property(lengths, amount, (list, more) => {
        const [before] = figuresOf("range", [values(list.map(asLength))]);
        const [after] = figuresOf("range", [values([...list, more].map(asLength))]);
        expect(after?.quantity.amount.gte(before?.quantity.amount ?? 0)).toBe(true);
      }),
    );
  });

  test("is the largest difference of any two of its values", () => {
    fc.assert(
      fc.property(lengths, (list) => {
        const [range] = figuresOf("range", [values(list.map(asLength))]);
        const differences = list.flatMap((one) =>
          list.map((two) => figuresOf("difference", [values([one, two].map(asLength))])[0]),
        );
        const largest = differences.reduce(
          (most, each) => (each?.quantity.amount.gt(most) ? each.quantity.amount : most),
          new Fraction(0),
        );
        expect(range?.quantity.amount.equals(largest)).toBe(true);
      }),
    );
  });

  test("within a limit stays within a wider one", () => {
    const width = fc.integer({ min: 0, max: 4000 });
    fc.assert(
      fc.property(lengths, width, width, (list, one, more) => {
        const standing = (most: number) => {
          const by = rule({ upper: `${most}/100 in`, sizes: {}, judges: "range" });
          const readings = [values(list.map(asLength))];
          return readingsLedger(smallBuild({ rules: register(by), days: [day({ readings })] }))[0]
            ?.standing;
        };
        if (standing(one) === "within") expect(standing(one + more)).toBe("within");
        if (standing(one + more) === "out") expect(standing(one)).toBe("out");
      }),
      { numRuns: 60 },
    );
  });
});
