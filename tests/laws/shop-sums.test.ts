import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { numberDrills } from "../../src/model/published/drill-sizes.ts";
import { exactText } from "../../src/model/quantity.ts";
import { reckoned } from "../support/reckoned.ts";

const tenths = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const load = fc
  .record({ weight: tenths(1, 2000), arm: tenths(-100, 200) })
  .map(({ weight, arm }) => `${weight} lb @ ${arm} in`);

describe("balance", () => {
  test("does not depend on the order of the items", () => {
    fc.assert(
      fc.property(fc.array(load, { minLength: 1, maxLength: 6 }), (loads) => {
        const there = reckoned("balance", ...loads.map((each) => `item=${each}`));
        const back = reckoned("balance", `item=${loads.toReversed().join(", ")}`);
        expect([there.weight, there.moment, there.cg]).toEqual([back.weight, back.moment, back.cg]);
      }),
      { numRuns: 60 },
    );
  });

  test("putting something in and taking it out again changes nothing", () => {
    fc.assert(
      fc.property(load, load, (aircraft, thing) => {
        const before = reckoned("balance", `item=${aircraft}`);
        const after = reckoned("balance", `item=${aircraft}, ${thing}, -${thing}`);
        expect([after.weight, after.cg]).toEqual([before.weight, before.cg]);
      }),
      { numRuns: 60 },
    );
  });

  test("ballast brings the centre of gravity to the limit", () => {
    fc.assert(
      fc.property(
        tenths(500, 5000),
        tenths(20, 30),
        tenths(31, 40),
        tenths(50, 200),
        (weight, cg, limit, arm) => {
          const { result } = reckoned(
            "ballast",
            `weight=${weight} lb`,
            `cg=${cg} in`,
            `limit=${limit} in`,
            `arm=${arm} in`,
          );
          const loaded = reckoned(
            "balance",
            `item=${weight} lb @ ${cg} in, ${Number(result).toFixed(9)} lb @ ${arm} in`,
          );
          expect(loaded.cg).toBeCloseTo(limit, 6);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("the three scales of a nosewheel or tailwheel say the same as their moments", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("nose", "tail"),
        tenths(10, 400),
        tenths(500, 1000),
        tenths(50, 250),
        tenths(-50, 150),
        (wheel, third, main, base, mains) => {
          const place = wheel === "nose" ? mains - base : mains + base;
          const byMoments = reckoned(
            "balance",
            `item=mains ${main} lb @ ${mains} in, third ${third} lb @ ${place.toFixed(1)} in`,
          );
          const byFormula = reckoned(
            "wheel-balance",
            `wheel=${wheel}`,
            `third=${third} lb`,
            `wheelbase=${base} in`,
            `weight=${(main + third).toFixed(1)} lb`,
            `mains=${mains} in`,
          );
          expect(byFormula.result).toBeCloseTo(Number(byMoments.cg), 8);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("what is drained is enough, and less than a tenth too much", () => {
    fc.assert(
      fc.property(tenths(1, 500), (over) => {
        const { result } = reckoned("drain", `over=${over} lb`, "density=6 lb/gal");
        expect(Number(result) * 6).toBeGreaterThanOrEqual(over - 1e-9);
        expect((Number(result) - 0.1) * 6).toBeLessThan(over);
      }),
    );
  });
});

describe("drills", () => {
  test("a drill is the nearest one to its own size", () => {
    for (const { name, inches } of numberDrills) {
      const { result, drills } = reckoned("drill", `size=${exactText(inches)} in`, "series=number");
      expect(result).toBe(inches.valueOf());
      expect(drills).toMatchObject([{ name: `No. ${name}`, difference: 0 }]);
    }
  });

  test("half-way between two drills both are named", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 78 }), (index) => {
        const [large, small] = [numberDrills[index], numberDrills[index + 1]];
        if (!large || !small) throw new Error("there are 80 number drills");
        const middle = exactText(large.inches.add(small.inches).div(2));
        const { result, drills } = reckoned("drill", `size=${middle} in`, "series=number");
        expect(result).toBeNull();
        expect(drills).toMatchObject([
          { name: `No. ${small.name}` },
          { name: `No. ${large.name}` },
        ]);
      }),
    );
  });
});

describe("travel", () => {
  test("angle to chord and back", () => {
    fc.assert(
      fc.property(tenths(1, 170), tenths(1, 60), (angle, radius) => {
        const { result } = reckoned("travel", `radius=${radius} in`, `angle=${angle} deg`);
        const back = reckoned(
          "travel",
          `radius=${radius} in`,
          `chord=${Number(result).toFixed(12)} in`,
        );
        expect(back.result).toBeCloseTo(angle, 5);
      }),
      { numRuns: 60 },
    );
  });
});
