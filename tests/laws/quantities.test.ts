import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { assure, type StandardUncertainty } from "../../src/compute/uncertainty.ts";
import { compareQuantities, convert, type Quantity, quantityOf } from "../../src/model/quantity.ts";
import { decisionRules, type Limits } from "../../src/model/tolerance.ts";
import { dimensions, type Unit, unitOf, units } from "../../src/model/unit.ts";
import { formatInchFraction, formatQuantity } from "../../src/present/format/quantity.ts";
import { parseExpression } from "../../src/read/expression-syntax.ts";
import { parseQuantities, parseQuantity } from "../../src/read/quantity-syntax.ts";
import { setLimits } from "../support/set-limits.ts";

const amount = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 4096 }))
  .map(([n, d]) => new Fraction(n, d));
const positive = fc
  .tuple(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 4096 }))
  .map(([n, d]) => new Fraction(n, d));
const sameKind = fc
  .constantFrom(...dimensions)
  .map((dimension) => units.filter((unit) => unit.dimension === dimension));
const unitPair = sameKind.chain((those) =>
  fc.tuple(fc.constantFrom(...those), fc.constantFrom(...those)),
);
// Two ends in order, or one, or none.
const limitsIn = (unit: Unit) =>
  fc.tuple(amount, positive, fc.boolean(), fc.boolean()).map(
    ([low, width, hasLower, hasUpper]): Limits => ({
      ...(hasLower ? { lower: quantityOf(low, unit) } : {}),
      ...(hasUpper ? { upper: quantityOf(low.add(width), unit) } : {}),
    }),
  );

describe("units", () => {
  test("there and back again is where one was", () => {
    fc.assert(
      fc.property(unitPair, amount, ([from, to], value) => {
        const there = convert(quantityOf(value, from), to);
        expect(convert(there, from).amount.equals(value)).toBe(true);
        expect(compareQuantities(there, quantityOf(value, from))).toBe(0);
      }),
    );
  });

  test("a verdict is the same in every unit", () => {
    const inUnits = unitPair.chain(([own, other]) =>
      fc.tuple(fc.constant(own), fc.constant(other), amount, limitsIn(own)),
    );
    fc.assert(
      fc.property(inUnits, ([own, other, value, limits]) => {
        const verdict = judge(quantityOf(value, own), limits);
        const moved: Limits = {
          ...(limits.lower ? { lower: convert(limits.lower, other) } : {}),
          ...(limits.upper ? { upper: convert(limits.upper, other) } : {}),
        };
        for (const reading of [quantityOf(value, own), convert(quantityOf(value, own), other)])
          for (const ends of [limits, moved]) expect(judge(reading, ends).kind).toBe(verdict.kind);
        const again = judge(quantityOf(value, own), moved);
        if (verdict.kind !== "within" && again.kind !== "within")
          expect(
            again.by.mul(other.factor).equals(verdict.by.mul(own.factor)) && again.by.gt(0),
          ).toBe(true);
      }),
    );
  });
});

describe("text", () => {
  const read = (text: string): Quantity => {
    const parsed = parseQuantity(text);
    if (!parsed.ok) throw new Error(`${text}: expected ${parsed.expected}`);
    return parsed.quantity;
  };

  test("a quantity that is written reads back as itself", () => {
    fc.assert(
      fc.property(unitPair, amount, ([unit, other], value) => {
        // Nothing is colder than absolute zero, and a typed temperature is refused there.
        const amount = unit.dimension === "temperature" ? value.abs().add(1) : value;
        const written = quantityOf(amount, unit);
        const back = read(formatQuantity(written));
        expect(back.amount.equals(amount) && back.unit === unit).toBe(true);
        const moved = formatQuantity(written, { unit: other });
        expect(moved.length > 50 || compareQuantities(read(moved), written) === 0).toBe(true);
      }),
    );
  });

  test("what was typed is kept and reads back", () => {
    const places = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(fc.integer({ min: -99_999, max: 99_999 }), places, (digits, count) => {
        const text = `${(digits / 10 ** count).toFixed(count)} in`;
        const once = read(text);
        expect(formatQuantity(once)).toBe(text);
        expect(read(formatQuantity(once)).amount.equals(once.amount)).toBe(true);
      }),
    );
  });

  test("a tape's fractions read back exactly", () => {
    fc.assert(
      fc.property(fc.integer({ min: -6400, max: 6400 }), (marks) => {
        const length = quantityOf(new Fraction(marks, 64), unitOf("in"));
        const text = formatInchFraction(length) ?? "";
        expect(read(text).amount.equals(length.amount)).toBe(true);
      }),
    );
  });

  test("whatever is typed is read or refused, with a place inside it", () => {
    const pieces = fc.constantFrom(
      ..."0 1 30 .5 / - + − ( ) [ ] , ; ' \" ° ± D t in lbf·in F drill No. # AD4 ft % e3".split(
        " ",
      ),
      " ",
    );
    const typed = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 12 }).map((all) => all.join("")),
    );
    fc.assert(
      fc.property(typed, (text) => {
        for (const parse of [parseQuantity, parseQuantities, parseExpression]) {
          const parsed = parse(text);
          if (parsed.ok) continue;
          expect(parsed.length).toBeGreaterThan(0);
          expect(parsed.offset).toBeGreaterThanOrEqual(0);
          expect(parsed.offset + parsed.length).toBeLessThanOrEqual(Math.max(1, text.length));
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe("limits", () => {
  const sizes = fc.integer({ min: 1, max: 64 });

  test("a thicker rivet asks for no less edge distance", () => {
    fc.assert(
      fc.property(sizes, sizes, (a, b) => {
        const least = (size: number) => {
          const { lower } = setLimits("edge-distance-2d", { D: `${size}/64 in` });
          return lower ?? quantityOf(new Fraction(0), unitOf("in"));
        };
        expect(Math.sign(compareQuantities(least(a), least(b)))).toBe(Math.sign(a - b));
      }),
    );
  });

  test("more drag moves both ends up by as much", () => {
    fc.assert(
      fc.property(sizes, (drag) => {
        const set = ["ac43-13-1b-table-7-1", { thread: "1/4-28", nut: "tension" }] as const;
        const [dry, dragged] = [setLimits(...set), setLimits(...set, `${drag} lbf·in`)];
        for (const end of ["lower", "upper"] as const)
          expect(dragged[end]?.amount.sub(dry[end]?.amount ?? 0).equals(drag)).toBe(true);
      }),
    );
  });

  test("a wider limit turns nothing from within to outside", () => {
    const millimetre = unitOf("mm");
    fc.assert(
      fc.property(limitsIn(millimetre), amount, positive, (limits, value, more) => {
        const reading = quantityOf(value, millimetre);
        const wider: Limits = {
          ...(limits.lower ? { lower: quantityOf(limits.lower.amount.sub(more), millimetre) } : {}),
          ...(limits.upper ? { upper: quantityOf(limits.upper.amount.add(more), millimetre) } : {}),
        };
        if (judge(reading, limits).kind === "within")
          expect(judge(reading, wider).kind).toBe("within");
      }),
    );
  });
});

describe("assurance", () => {
  const millimetre = unitOf("mm");
  const uncertainty = (u: Fraction): StandardUncertainty => ({
    dimension: "length",
    variance: u.div(1000).pow(2),
  });
  const any = [limitsIn(millimetre), amount, positive] as const;

  test("without uncertainty is the verdict, whatever the rule", () => {
    fc.assert(
      fc.property(...any, fc.constantFrom(...decisionRules), (limits, value, _, decision) => {
        const reading = quantityOf(value, millimetre);
        const within = judge(reading, limits).kind === "within";
        expect(assure(reading, limits, uncertainty(new Fraction(0)), decision)).toEqual({
          kind: within ? "proven" : "disproven",
          probability: within ? 1 : 0,
        });
      }),
    );
  });

  test("what is proven is within, what is disproven is not, and a guard proves no more", () => {
    fc.assert(
      fc.property(...any, (limits, value, u) => {
        const reading = quantityOf(value, millimetre);
        const within = judge(reading, limits).kind === "within";
        const [simple, byU, for95] = decisionRules.map((decision) =>
          assure(reading, limits, uncertainty(u), decision),
        );
        expect(simple?.kind).toBe(within ? "proven" : "disproven");
        for (const { kind, probability } of [byU, for95].filter((each) => each !== undefined)) {
          if (kind === "proven") expect(within).toBe(true);
          if (kind === "disproven") expect(within).toBe(false);
          expect(probability).toBeGreaterThanOrEqual(0);
          expect(probability).toBeLessThanOrEqual(1);
        }
        if (byU?.kind === "proven") expect(for95?.kind).toBe("proven");
        if (byU?.kind === "proven") expect(byU.probability).toBeGreaterThan(0.95);
      }),
    );
  });
});
