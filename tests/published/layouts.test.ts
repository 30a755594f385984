// Rows of fasteners against the published limits that were read, in the numbers of the source.

import { describe, expect, test } from "vitest";
import type { FastenerRow } from "../../src/model/layout.ts";
import type { ToleranceRule } from "../../src/model/tolerance.ts";
import { askSet, ruleSetNamed } from "../support/set-limits.ts";
import { register, span } from "../support/small-build.ts";
import { fastenerRow, laidOut, named, rowOf, stated } from "../support/small-layout.ts";
import { quantity } from "../support/typed-quantity.ts";

const verdicts = (piece: FastenerRow) => laidOut(piece).checks.map(({ verdict }) => verdict?.kind);

/** Two fasteners of one diameter, so far from the ends and so far apart. */
function pair(D: string, edge: string, pitch: string, check: Partial<FastenerRow["check"]>) {
  const [ends, apart] = [quantity(edge), quantity(pitch)];
  const length = ends.amount.mul(2).add(apart.amount).toFraction();
  return fastenerRow({
    length: stated(`${length} in`),
    diameter: quantity(D),
    edge: stated(edge),
    count: { value: 2, span: span() },
    check: { edge: [], pitch: [], ...check },
  });
}

// Source: US Army TM 10-5410-229-13&P, par. 5-6(3)(b), new sections: edge distance not below
// 2 D, pitch at least 3 D, distance between rows not below 2.5 D.
describe("Army TM 10-5410-229-13&P", () => {
  const check = { edge: named("edge-distance-2d"), pitch: named("pitch-army-tm") };
  const rows = [
    // D,      2 D,      3 D,       2.5 D
    ["1/8 in", "0.250", "0.375", "0.3125"],
    ["3/32 in", "0.1875", "0.28125", "0.234375"],
  ] as const;

  test.each(rows)("D = %s: edge of %s and pitch of %s are just enough", (D, edge, pitch) => {
    expect(verdicts(pair(D, `${edge} in`, `${pitch} in`, check))).toEqual(["within", "within"]);
    expect(verdicts(pair(D, `${Number(edge) - 0.0001} in`, `${pitch} in`, check))).toEqual([
      "below",
      "within",
    ]);
    expect(verdicts(pair(D, `${edge} in`, `${Number(pitch) - 0.0001} in`, check))).toEqual([
      "within",
      "below",
    ]);
  });

  // Laid out across the rows, the places are those of the rows.
  test.each(rows)("D = %s: rows %s, %s, %s apart", (D, _edge, _pitch, apart) => {
    const set = ruleSetNamed("pitch-army-tm");
    const limits = askSet("pitch-army-tm", { between: "rows", D });
    if (!limits.ok || !limits.lower) throw new Error("the set has a limit for rows");
    const between: ToleranceRule = {
      id: "rows",
      title: set.title,
      authority: set.authority,
      citation: set.citation,
      set: set.name,
      lower: limits.lower,
      sizes: limits.sizes,
      decision: "simple",
      addsDrag: false,
      advice: [],
      span: span(),
    };
    const across = (pitch: string) =>
      laidOut(pair(D, "1 in", pitch, { pitch: named("rows") }), { rules: register(between) });
    expect(across(`${apart} in`).standing).toBe("within");
    expect(across(`${Number(apart) - 0.0001} in`).standing).toBe("out");
  });
});

// Source: NAVEDTRA 14018, chapter 13, rivet spacing: never below 3 D.
describe("NAVEDTRA 14018", () => {
  const check = { edge: [], pitch: named("pitch-3d-navy") };

  test.each([
    ["1/8 in", "0.375"],
    ["3/32 in", "0.28125"],
  ])("D = %s: a pitch of %s is just enough", (D, pitch) => {
    expect(verdicts(pair(D, "1 in", `${pitch} in`, check))).toEqual(["within"]);
    expect(verdicts(pair(D, "1 in", `${Number(pitch) - 0.0001} in`, check))).toEqual(["below"]);
  });

  test("a row left to the rule has the most rivets at 3 D or more", () => {
    const piece = fastenerRow({ length: stated("6 in"), edge: stated("0.250 in"), check });
    const { positions, pitch } = rowOf(piece);
    // (6 - 2 × 0.250) / 0.375 = 14.67: 14 spaces of 0.39286 in.
    expect(positions).toHaveLength(15);
    expect(pitch?.toFraction()).toBe("11/28");
  });
});
