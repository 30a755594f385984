// Source: FAA AC 43.13-1B (8 Sep 1998, change 1 27 Sep 2001), paragraphs beside each case, from a
// page-by-page copy. The clearance of the flap is from a list for a technical counselor's visit.
// Open the pages again before you change a value.

import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

const verdict = (typed: string, set: string, given: Record<string, string> = {}) =>
  judge(quantity(typed), setLimits(set, given)).kind;

describe("rivets by what they go through", () => {
  test("par. 4-58g(2)(a): about 3 t for a splice; 0.032 in asks for 0.096 in, without a limit", () => {
    const answer = askSet("rivet-diameter-splice-ac43-13-1b", { t: "0.032 in" });
    expect(answer.ok && answer.nominal?.typed).toBe("3 t");
    expect(setLimits("rivet-diameter-splice-ac43-13-1b", { t: "0.032 in" })).toEqual({});
  });

  test.each([
    ["0.079 in", "below"],
    ["0.080 in", "within"],
    ["0.120 in", "within"],
    ["1/8 in", "above"],
  ])("par. 4-58l: in a stringer's leg of 0.040 in a rivet of %s is %s", (rivet, kind) => {
    expect(verdict(rivet, "rivet-diameter-stringer-thickness", { t: "0.040 in" })).toBe(kind);
  });

  test.each([
    ["1/8 in", "within"],
    ["5/32 in", "above"],
  ])("par. 4-58l: in a leg 1/2 in wide a rivet of %s is %s", (rivet, kind) => {
    expect(verdict(rivet, "rivet-diameter-stringer-width", { W: "1/2 in" })).toBe(kind);
  });

  test.each([
    ["3/32 in", "below"],
    ["1/8 in", "within"],
  ])("par. 4-58a: through a tube of 1 in a rivet of %s is %s", (rivet, kind) => {
    expect(verdict(rivet, "rivet-diameter-tube", { OD: "1 in" })).toBe(kind);
  });

  test.each([
    ["2017", "3/16 in", "7/32 in"],
    ["2017", "5/32 in", "3/16 in"],
    ["2024", "5/32 in", "3/16 in"],
    ["2024", "1/8 in", "5/32 in"],
  ])("par. 4-57b: for %s of %s a 2117 rivet of %s", (replaces, D, needed) => {
    const given = { replaces, D };
    expect(verdict(needed, "rivet-2117-in-place-of-2017-or-2024", given)).toBe("within");
    expect(verdict(D, "rivet-2117-in-place-of-2017-or-2024", given)).toBe("below");
  });

  test.each([
    ["2017", "1/4 in", "3/16 in"],
    ["2024", "3/16 in", "5/32 in"],
  ])("par. 4-57b: %s of %s is beyond it, it ends at %s", (replaces, D, most) => {
    const answer = askSet("rivet-2117-in-place-of-2017-or-2024", { replaces, D });
    expect(answer).toMatchObject({ ok: false, parameter: "D" });
    expect(!answer.ok && answer.message).toContain(`\`${most}\``);
  });
});

describe("bolts", () => {
  // The letter drills larger than these bolts; the sizes of O and V were not read in a source.
  test.each([
    ["1/4 in", "0.257 in", "letter F drill"],
    ["5/16 in", "0.316 in", "letter O drill; its size was not read in a source"],
    ["3/8 in", "0.377 in", "letter V drill; its size was not read in a source"],
  ])("par. 7-39: the hole for a bolt of %s is at most %s", (D, hole, note) => {
    expect(setLimits("bolt-hole-ac43-13-1b", { D }).upper?.typed).toBe(hole);
    const answer = askSet("bolt-hole-ac43-13-1b", { D });
    expect(answer.ok && answer.notes).toEqual([note]);
  });

  test.each(["3/16 in", "7/16 in"])("no lettered drill is next to a bolt of %s", (D) => {
    expect(askSet("bolt-hole-ac43-13-1b", { D })).toMatchObject({ ok: false, parameter: "D" });
  });

  test("par. 7-39: the exceptions and the light drive fit are told", () => {
    const advice = ruleSetNamed("bolt-hole-ac43-13-1b").advice.join("\n");
    expect(advice).toMatch(/light-drive-fit AN hex.*NAS close-tolerance.*AN clevis/);
    expect(advice).toContain("0.0006 in on a 5/8 in bolt");
  });

  test.each([
    ["steel", "No. 8 bolt of 0.164 in", "0.164 in", "below"],
    ["steel", "10-32", "0.190 in", "within"],
    ["aluminium alloy", "10-32", "0.190 in", "below"],
    ["aluminium alloy", "1/4", "1/4 in", "within"],
  ])("par. 7-41: %s, %s in primary structure", (bolt, _name, D, kind) => {
    expect(verdict(D, "bolt-size-ac43-13-1b", { bolt })).toBe(kind);
  });

  test.each([
    ["0 threads", "below"],
    ["1 threads", "within"],
    ["3 threads", "within"],
  ])("par. 7-37: %s showing through the nut is %s", (threads, kind) => {
    expect(verdict(threads, "threads-showing-ac43-13-1b")).toBe(kind);
  });
});

test.each([
  ["3/8 in", "within"],
  ["7/16 in", "above"],
])("par. 7-148b: a cable of %s in a copper sleeve is %s", (cable, kind) => {
  expect(verdict(cable, "cable-copper-sleeve")).toBe(kind);
});

test("par. 7-148b to d: material, order of the presses and the lap splice are told", () => {
  const advice = ruleSetNamed("cable-copper-sleeve").advice.join("\n");
  expect(advice).toMatch(/only copper sleeves/);
  expect(advice).toMatch(/the middle one first, then the one next to the thimble/);
  expect(advice).toMatch(/two sleeves/);
});

test.each([
  ["0.12 in", "below"],
  ["1/8 in", "within"],
])("list for a counselor's visit: %s between flap and fuselage is %s", (gap, kind) => {
  expect(verdict(gap, "flap-clearance-counselor")).toBe(kind);
});
