import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { reckoned } from "../support/reckoned.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

const kinds = (readings: readonly string[], set: string, given: Record<string, string>) =>
  readings.map((reading) => judge(quantity(reading), setLimits(set, given)).kind);

// Source: US Army TM 10-5410-229-13&P, par. 5-6(3)(b), new sections: edge distance not below
// 2 D, pitch at least 3 D, rows not below 2.5 D apart.
describe("Army TM 10-5410-229-13&P", () => {
  test.each([
    ["3/32 in", "0.1875 in", "0.28125 in", "0.234375 in"],
    ["1/8 in", "0.250 in", "0.375 in", "0.3125 in"],
  ])("D = %s: edge %s, pitch %s, rows %s", (D, edge, pitch, rows) => {
    const least = (set: string, given: Record<string, string>) =>
      judge(quantity("0 in"), setLimits(set, given));
    for (const [set, given, limit] of [
      ["edge-distance-2d", { D }, edge],
      ["pitch-army-tm", { between: "rivets", D }, pitch],
      ["pitch-army-tm", { between: "rows", D }, rows],
    ] as const) {
      expect(kinds([limit], set, given)).toEqual(["within"]);
      const verdict = least(set, given);
      expect(verdict.kind === "below" && verdict.by.equals(quantity(limit).amount)).toBe(true);
    }
  });
});

// Source: NAVEDTRA 14018, chapter 13: spacing never below 3 D; rivet from 1 to 3 times the
// thickest sheet (rivet selection, rules 6 and 7).
describe("NAVEDTRA 14018", () => {
  test("spacing of 1/8 rivets", () => {
    const readings = ["0.374 in", "0.375 in", "4 in"];
    expect(kinds(readings, "pitch-3d-navy", { D: "1/8 in" })).toEqual([
      "below",
      "within",
      "within",
    ]);
  });

  test("rivet for a sheet of 0.040 in", () => {
    const readings = ["0.039 in", "0.040 in", "3/32 in", "0.120 in", "1/8 in"];
    expect(kinds(readings, "rivet-diameter-navy", { t: "0.040 in" })).toEqual([
      "below",
      "within",
      "within",
      "within",
      "above",
    ]);
  });
});

// Source: NAVEDTRA 14018, chapter 13, rivet selection, rule 5: nothing under 3/32 in structural
// parts, control parts and wing covering; rivet spacing: seldom below 4 D, seldom above 8 D, and
// measured to the centre.
describe("NAVEDTRA 14018, more of it", () => {
  test.each([
    ["1/16 in", "below"],
    ["3/32 in", "within"],
  ])("a rivet of %s in structure is %s", (D, verdict) => {
    expect(kinds([D], "rivet-smallest-navy", {})).toEqual([verdict]);
  });

  test("what is rare and where to measure is told with the set", () => {
    const { advice } = ruleSetNamed("pitch-3d-navy");
    expect(advice).toContain("measure from centre to centre");
    expect(advice.join()).toContain("below 4 D or above 8 D rare");
  });
});

// Source: NAVEDTRA 14018, figure 13-43, and FAA-H-8083-31: length = grip + 1.5 D. Army TM
// 10-5410-229-13&P, par. 5-6(2): the nearest standard length above the sum.
describe("rivet length", () => {
  test.each([
    // grip,      D,        sum,     next sixteenth
    ["0.064 in", "1/8 in", 0.2515, 0.3125],
    ["0.072 in", "3/32 in", 0.212625, 0.25],
    ["1/16 in", "1/8 in", 0.25, 0.25],
  ])("grip %s, D %s: %d, standard %d", (grip, diameter, sum, standard) => {
    const answer = reckoned("rivet-length", `grip=${grip}`, `diameter=${diameter}`);
    expect(answer).toMatchObject({ result: sum, standard });
  });
});

// Source: US Army TM 9-2320-363-34-2, tables 3 and 4, 100-degree blind rivets.
describe("Army TM 9-2320-363-34-2", () => {
  test.each([
    ["1/8 in", "0.222", "0.228"],
    ["5/32 in", "0.283", "0.289"],
    ["3/16 in", "0.350", "0.356"],
  ])("countersink for %s: %s to %s in", (D, smallest, largest) => {
    const limits = setLimits("countersink-army-tm", { D });
    expect([limits.lower?.typed, limits.upper?.typed]).toEqual([`${smallest} in`, `${largest} in`]);
  });

  test.each([
    ["3/32 in", "0.040 in"],
    ["1/8 in", "0.050 in"],
    ["5/32 in", "0.064 in"],
    ["3/16 in", "0.072 in"],
    ["1/4 in", "0.072 in"],
  ])("a machine countersink for %s needs a sheet of %s", (D, sheet) => {
    expect(setLimits("minimum-sheet-army-tm", { D }).lower?.typed).toBe(sheet);
  });

  test("a size without a row is told, with the rows there are", () => {
    const answer = askSet("countersink-army-tm", { D: "3/32 in" });
    expect(answer).toMatchObject({
      ok: false,
      parameter: "D",
      message: "the table has no row for `D` of `3/32 in`",
      help: ["the rows printed are `1/8 in`, `5/32 in`, `3/16 in`"],
    });
  });
});

// Source: service manual of a 1940s fighter, sheet-metal repair: AN430 heads and drills.
describe("service manual of the 1940s", () => {
  test.each([
    ["driven-head-1940s", { of: "diameter", D: "1/8 in" }, "0.188 in"],
    ["driven-head-1940s", { of: "height", D: "1/8 in" }, "0.063 in"],
    ["driven-head-1940s", { of: "diameter", D: "5/32 in" }, "0.234 in"],
    ["driven-head-1940s", { of: "height", D: "5/32 in" }, "0.078 in"],
    ["rivet-hole-1940s", { D: "1/16 in" }, "0.0635 in"],
    ["rivet-hole-1940s", { D: "3/32 in" }, "0.096 in"],
    ["rivet-hole-1940s", { D: "1/8 in" }, "0.1285 in"],
    ["rivet-hole-1940s", { D: "5/32 in" }, "0.157 in"],
    ["rivet-hole-1940s", { D: "3/16 in" }, "0.189 in"],
  ])("%s %o is nominally %s, without a limit", (set, given, nominal) => {
    const answer = askSet(set, given);
    expect(answer.ok && answer.nominal?.typed).toBe(nominal);
    expect(setLimits(set, given)).toEqual({});
  });
});

// Not seen in the documents themselves; the sets say so wherever they are shown.
describe("sets that rest on quotations or on common practice", () => {
  // AC 43.13-1B, figure 4-5, as quoted by others: 1/8 rivet, 0.1875 across and 0.0625 high.
  test("driven head by the AC rule", () => {
    const D = "1/8 in";
    expect(setLimits("driven-head-1.5d", { of: "diameter", D }).lower?.typed).toBe("0.1875 in");
    expect(setLimits("driven-head-1.5d", { of: "height", D }).lower?.typed).toBe("0.0625 in");
  });

  // MIL-R-47196A, as quoted by builders.
  test.each([
    ["1/8 in", "0.163 in", "0.050 in", "0.070 in"],
    ["3/32 in", "0.122 in", "0.038 in", "0.050 in"],
  ])("driven head by MIL for %s: %s across, %s to %s high", (D, across, low, high) => {
    expect(setLimits("driven-head-mil", { of: "diameter", D }).lower?.typed).toBe(across);
    const height = setLimits("driven-head-mil", { of: "height", D });
    expect([height.lower?.typed, height.upper?.typed]).toEqual([low, high]);
  });

  test("a 0.170 head on a 1/8 rivet fails the AC rule and passes the MIL one", () => {
    const given = { of: "diameter", D: "1/8 in" };
    expect(kinds(["0.170 in"], "driven-head-1.5d", given)).toEqual(["below"]);
    expect(kinds(["0.170 in"], "driven-head-mil", given)).toEqual(["within"]);
  });

  test.each([
    ["edge-distance-2d-ac-43-13-1b", "secondary"],
    ["driven-head-1.5d", "secondary"],
    ["driven-head-mil", "secondary"],
    ["rivet-hole-modern", "memory"],
  ])("%s says that it was not read", (name, status) => {
    const set = ruleSetNamed(name);
    expect(set.citation.status).toBe(status);
    expect(set.advice.join("\n")).toMatch(/compare with (the source itself|one) before relying/);
  });

  test.each([
    ["3/32 in", "No. 40 drill", "0.098 in"],
    ["1/8 in", "No. 30 drill", "0.1285 in"],
    ["5/32 in", "No. 21 drill", "0.159 in"],
    ["3/16 in", "No. 11 drill", "0.191 in"],
    ["1/4 in", "letter F drill", "0.257 in"],
  ])("common practice drills %s with a %s (%s)", (D, drill, hole) => {
    const answer = askSet("rivet-hole-modern", { D });
    expect(answer.ok && [answer.nominal?.typed, answer.notes]).toEqual([hole, [drill]]);
    expect(ruleSetNamed("rivet-hole-modern").authority).toBe("common practice");
  });
});
