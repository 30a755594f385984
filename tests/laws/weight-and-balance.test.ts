// What must hold for any register of weight and balance, tried on generated ones.

import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { type BalanceLedger, balanceLedger } from "../../src/compute/ledgers/balance.ts";
import type { ArmLimit } from "../../src/model/arm-limit.ts";
import type { Balance, BalanceItem, Extreme } from "../../src/model/balance.ts";
import { add, convert, type Quantity, quantityOf } from "../../src/model/quantity.ts";
import { unitOf } from "../../src/model/unit.ts";
import { span } from "../support/small-build.ts";

const pound = unitOf("lb");
const inch = unitOf("in");
const hundredths = (of: number) => new Fraction(of, 100);
const weight = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((of) => quantityOf(hundredths(of), pound));
const arm = fc.integer({ min: -5000, max: 20_000 }).map((of) => quantityOf(hundredths(of), inch));

const item: fc.Arbitrary<BalanceItem> = fc
  .record({ weight: weight(0, 300), arm })
  .map((made) => ({ name: "item", estimated: false, span: span(), ...made }));
const items = fc.array(item, { maxLength: 5 });

const armLimit = (end: Extreme): fc.Arbitrary<ArmLimit> =>
  fc
    .record({
      constant: fc.boolean(),
      arms: fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 3, maxLength: 3 }),
    })
    .map(({ constant, arms }) => {
      const at = (of: number) =>
        quantityOf(hundredths(end === "forward" ? 2000 + of : 9000 - of), inch);
      if (constant) return { kind: "constant", arm: at(arms[0] ?? 0) };
      return {
        kind: "corners",
        corners: arms.map((of, index) => ({
          weight: quantityOf(new Fraction(800 + 500 * index), pound),
          arm: at(of),
        })),
      };
    });

const register: fc.Arbitrary<Balance> = fc
  .record({
    points: fc.array(fc.record({ reads: weight(100, 600), tare: weight(0, 50), arm }), {
      minLength: 1,
      maxLength: 4,
    }),
    out: items,
    put: items,
    changeOut: items,
    changeIn: items,
    loads: fc.array(items, { minLength: 1, maxLength: 4 }),
    forward: armLimit("forward"),
    aft: armLimit("aft"),
    maxWeight: weight(900, 3000),
  })
  .map(({ points, out, put, changeOut, changeIn, loads, forward, aft, maxWeight }) => ({
    datum: "firewall",
    emptyWeight: { oil: "in", unusableFuel: "in" },
    units: { weight: pound, arm: inch },
    chord: {
      leading: quantityOf(new Fraction(20), inch),
      trailing: quantityOf(new Fraction(70), inch),
    },
    limits: { citation: { document: "Sheet" }, maxWeight, forward, aft, span: span() },
    weighings: [
      {
        id: "W-1",
        date: "2026-01-01",
        title: "First",
        points: points.map((point) => ({ at: "wheel", span: span(), ...point })),
        out,
        in: put,
        with: [],
        who: [],
        day: "2026-01-01",
        span: span(),
      },
    ],
    changes: [
      {
        id: "C-1",
        date: "2026-02-01",
        title: "Change",
        out: changeOut,
        in: changeIn,
        day: "2026-02-01",
        span: span(),
      },
    ],
    cases: loads.map((each, index) => ({
      id: `L-${index}`,
      title: "Case",
      items: each,
      private: false,
      span: span(),
    })),
    span: span(),
  }));

/** Every length or weight of a register, changed in one way. */
function everywhere(
  { weighings, changes, cases, limits, chord, ...rest }: Balance,
  { weight: toWeight = same, arm: toArm = same }: { weight?: Change; arm?: Change },
): Balance {
  const moved = (each: readonly BalanceItem[]) =>
    each.map((one) => ({ ...one, weight: toWeight(one.weight), arm: toArm(one.arm) }));
  const limit = (of: ArmLimit): ArmLimit =>
    of.kind === "constant"
      ? { kind: "constant", arm: toArm(of.arm) }
      : {
          kind: "corners",
          corners: of.corners.map((corner) => ({
            weight: toWeight(corner.weight),
            arm: toArm(corner.arm),
          })),
        };
  return {
    ...rest,
    weighings: weighings.map((each) => ({
      ...each,
      points: each.points.map((point) => ({
        ...point,
        reads: toWeight(point.reads),
        ...(point.tare ? { tare: toWeight(point.tare) } : {}),
        arm: toArm(point.arm),
      })),
      out: moved(each.out),
      in: moved(each.in),
    })),
    changes: changes.map((each) => ({ ...each, out: moved(each.out), in: moved(each.in) })),
    cases: cases.map((each) => ({ ...each, items: moved(each.items) })),
    ...(limits
      ? {
          limits: {
            ...limits,
            ...(limits.maxWeight ? { maxWeight: toWeight(limits.maxWeight) } : {}),
            ...(limits.forward ? { forward: limit(limits.forward) } : {}),
            ...(limits.aft ? { aft: limit(limits.aft) } : {}),
          },
        }
      : {}),
    ...(chord ? { chord: { leading: toArm(chord.leading), trailing: toArm(chord.trailing) } } : {}),
  };
}
type Change = (of: Quantity) => Quantity;
const same: Change = (of) => of;

const verdicts = ({ cases }: BalanceLedger) => cases.map(({ verdict }) => verdict.kind);
const centres = ({ empty, cases }: BalanceLedger) =>
  [empty, ...cases].map((each) => each?.sum.cg?.amount);

test("the order of points and items does not matter", () => {
  fc.assert(
    fc.property(register, (of) => {
      const turned: Balance = {
        ...of,
        weighings: of.weighings.map((each) => ({
          ...each,
          points: each.points.toReversed(),
          out: each.out.toReversed(),
          in: each.in.toReversed(),
        })),
        changes: of.changes.map((each) => ({
          ...each,
          out: each.out.toReversed(),
          in: each.in.toReversed(),
        })),
        cases: of.cases.map((each) => ({ ...each, items: each.items.toReversed() })),
      };
      const [one, other] = [balanceLedger(of), balanceLedger(turned)];
      expect(other.empty).toEqual(one.empty);
      expect(other.cases.map(({ sum, verdict }) => ({ sum, verdict }))).toEqual(
        one.cases.map(({ sum, verdict }) => ({ sum, verdict })),
      );
    }),
  );
});

test("moving the datum moves every centre of gravity by as much, and no verdict", () => {
  fc.assert(
    fc.property(register, fc.integer({ min: -500, max: 500 }), (of, inches) => {
      const by = quantityOf(new Fraction(inches), inch);
      const [one, other] = [
        balanceLedger(of),
        balanceLedger(everywhere(of, { arm: (each) => add(each, by) })),
      ];
      expect(verdicts(other)).toEqual(verdicts(one));
      expect(other.cases.map(({ sum }) => sum.chordPercent)).toEqual(
        one.cases.map(({ sum }) => sum.chordPercent),
      );
      for (const [index, cg] of centres(one).entries()) {
        const moved = centres(other)[index];
        expect(moved?.toFraction()).toBe(cg?.add(inches).toFraction());
      }
    }),
  );
});

test("other units change no verdict and no place on the chord", () => {
  const kilograms = unitOf("kg");
  const millimetres = unitOf("mm");
  fc.assert(
    fc.property(register, (of) => {
      const metric = everywhere(of, {
        weight: (each) => convert(each, kilograms),
        arm: (each) => convert(each, millimetres),
      });
      const shown = balanceLedger({ ...metric, units: { weight: kilograms, arm: millimetres } });
      const mixed = balanceLedger(metric);
      const one = balanceLedger(of);
      for (const other of [shown, mixed]) {
        expect(verdicts(other)).toEqual(verdicts(one));
        expect(other.cases.map(({ sum }) => sum.chordPercent)).toEqual(
          one.cases.map(({ sum }) => sum.chordPercent),
        );
      }
      expect(centres(mixed)).toEqual(centres(one));
    }),
  );
});

test("a case of nothing is the empty aircraft, and what is put in and out again leaves no trace", () => {
  fc.assert(
    fc.property(register, items, (of, more) => {
      const nothing = { id: "L-0", title: "Nothing", items: [], private: false, span: span() };
      const [change] = of.changes;
      const there = {
        id: "C-2",
        date: "2026-03-01",
        title: "There and back",
        out: more,
        in: more,
        day: "2026-03-01",
        span: span(),
      };
      const bare = balanceLedger({ ...of, cases: [nothing] });
      const back = balanceLedger({
        ...of,
        cases: [nothing],
        changes: [...(change ? [change] : []), there],
      });
      expect(bare.cases[0]?.sum).toEqual(bare.empty?.sum);
      expect(back.empty?.sum).toEqual(bare.empty?.sum);
    }),
  );
});

test("the generated registers have cases of every kind", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(register, (of) => {
      for (const { verdict } of balanceLedger(of).cases) {
        seen.add(verdict.beyond.length > 0 ? "beyond" : verdict.kind);
      }
    }),
    { numRuns: 300, seed: 1 },
  );
  expect([...seen].sort()).toEqual(["beyond", "inside", "no weight", "outside"]);
});
