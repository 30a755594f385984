import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import type { Build } from "../../../src/model/build.ts";
import type { FastenerRow, Layout } from "../../../src/model/layout.ts";
import type { ToleranceRule } from "../../../src/model/tolerance.ts";
import {
  asOf,
  day,
  deviation,
  disposition,
  register,
  smallBuild,
  span,
} from "../../support/small-build.ts";
import {
  cutOut,
  fastenerRow,
  laidOut,
  layout,
  named,
  rowOf,
  stated,
} from "../../support/small-layout.ts";
import { rule } from "../../support/small-measurements.ts";
import { quantity } from "../../support/typed-quantity.ts";

const decimals = (row: { positions: readonly { valueOf(): number }[] }) =>
  row.positions.map(Number);
const counted = (value: number) => ({ value, span: span() });
const checksOf = (piece: Layout["piece"] | Layout, build?: Partial<Build>) =>
  laidOut(piece, build).checks.map(
    ({ what, value, rule: { id }, verdict }) => `${what} ${value.typed}, ${id}: ${verdict?.kind}`,
  );
const withRules = (...rules: readonly ToleranceRule[]): Partial<Build> => ({
  rules: register(...rules),
});

describe("where the fasteners stand", () => {
  test("a count is just that, from edge to edge", () => {
    const row = rowOf(
      fastenerRow({ length: stated("3 in"), edge: stated("1/2 in"), count: counted(5) }),
    );
    expect(decimals(row)).toEqual([0.5, 1, 1.5, 2, 2.5]);
    expect(row.pitch?.equals(0.5)).toBe(true);
  });

  test("one alone stands in the middle", () => {
    const row = rowOf(fastenerRow({ length: stated("3 in"), count: counted(1) }));
    expect(decimals(row)).toEqual([1.5]);
    expect(row.pitch).toBeUndefined();
  });

  test("a least pitch gives as many as it leaves room for", () => {
    const row = rowOf(fastenerRow({ pitchMin: stated("0.5 in", "4 D") }));
    expect(row.positions).toHaveLength(11);
    expect(Number(row.pitch)).toBeCloseTo(0.5375, 12);
  });

  test("a rule's least pitch binds where no count is given, and the larger of two", () => {
    const byRule = fastenerRow({ check: { edge: [], pitch: named("pitch-3d-navy") } });
    expect(rowOf(byRule).positions).toHaveLength(15);
    expect(rowOf({ ...byRule, pitchMin: stated("0.5 in") }).positions).toHaveLength(11);
    expect(rowOf({ ...byRule, pitchMin: stated("0.2 in") }).positions).toHaveLength(15);
    expect(laidOut(byRule).least?.typed).toBe("0.375 in");
  });

  test("a rule does not bind a count, and only judges it", () => {
    const tight = fastenerRow({
      count: counted(20),
      check: { edge: [], pitch: named("pitch-3d-navy") },
    });
    expect(laidOut(tight).least).toBeUndefined();
    expect(rowOf(tight).positions).toHaveLength(20);
    expect(laidOut(tight).standing).toBe("out");
  });

  test("a rule's greatest pitch binds as well, and so does one that is typed", () => {
    const apart = rule({ id: "apart", lower: "4 D", upper: "8 D" });
    const wide = fastenerRow({ pitch: stated("3 in"), check: { edge: [], pitch: named("apart") } });
    expect(Number(rowOf(wide, withRules(apart)).pitch)).toBeCloseTo(5.375 / 6, 12);
    expect(
      Number(rowOf({ ...wide, pitchMax: stated("0.6 in") }, withRules(apart)).pitch),
    ).toBeCloseTo(5.375 / 9, 12);
    expect(
      Number(rowOf({ ...wide, pitchMax: stated("2 in") }, withRules(apart)).pitch),
    ).toBeCloseTo(5.375 / 6, 12);
  });

  test("without any least pitch the even pitch closest to the one asked for is taken", () => {
    const row = rowOf(
      fastenerRow({ length: stated("22 in"), edge: stated("1/2 in"), pitch: stated("7/8 in") }),
    );
    expect(row.positions).toHaveLength(25);
    expect(row.pitch?.equals(0.875)).toBe(true);
  });

  test("a keep-out takes its margin on either side", () => {
    const piece = fastenerRow({
      length: stated("4 in"),
      edge: stated("1/2 in"),
      pitchMin: stated("0.4 in"),
      keepOuts: [{ from: quantity("1.9 in"), to: quantity("2.1 in") }],
    });
    const margin = {
      ...piece,
      keepOuts: piece.keepOuts.map((each) => ({ ...each, clear: stated("0.3 in", "2.4 D") })),
    };
    expect(decimals(rowOf(piece)).every((place) => place <= 1.9 || place >= 2.1)).toBe(true);
    expect(decimals(rowOf(margin)).every((place) => place <= 1.6 || place >= 2.4)).toBe(true);
    expect(rowOf(margin).positions.length).toBeLessThan(rowOf(piece).positions.length);
  });

  test("lengths in different units go together", () => {
    const row = rowOf(
      fastenerRow({
        length: stated("101.6 mm"),
        edge: stated("1/2 in"),
        count: counted(4),
        keepOuts: [{ from: quantity("1.9 in"), to: quantity("53.34 mm") }],
      }),
    );
    expect(decimals(row)).toEqual([12.7, 38.1, 63.5, 88.9]);
  });

  test("a row that does not fit says why", () => {
    const { row, standing, checks } = laidOut(
      fastenerRow({
        length: stated("0.5 in"),
        check: { edge: named("edge-distance-2d"), pitch: [] },
      }),
    );
    expect(row).toMatchObject({ ok: false, why: { kind: "shorter than its edges" } });
    expect([standing, checks]).toEqual(["no row", []]);
  });
});

describe("what is checked", () => {
  const wide: Partial<FastenerRow> = { side: stated("0.28 in"), width: stated("0.75 in") };

  test("the edge at both ends, alongside and on the far side, and the pitch", () => {
    const check = {
      edge: named("edge-distance-2d"),
      pitch: named("pitch-3d-navy", "pitch-army-tm"),
    };
    expect(checksOf(fastenerRow({ ...wide, count: counted(12), check }))).toEqual([
      "edge distance at both ends 0.3125 in, edge-distance-2d: within",
      "edge distance alongside 0.28 in, edge-distance-2d: within",
      "edge distance on the far side 0.47 in, edge-distance-2d: within",
      "pitch 43/88 in, pitch-3d-navy: within",
      "pitch 43/88 in, pitch-army-tm: within",
    ]);
  });

  test("the far side only where the width is known, the pitch only of several", () => {
    const check = { edge: named("edge-distance-2d"), pitch: named("pitch-3d-navy") };
    expect(checksOf(fastenerRow({ side: stated("0.2 in"), count: counted(1), check }))).toEqual([
      "edge distance at both ends 3 in, edge-distance-2d: within",
      "edge distance alongside 0.2 in, edge-distance-2d: below",
    ]);
  });

  test("a rule of the journal in terms of the layout's own diameter and thickness", () => {
    const byD = rule({ id: "by-d", lower: "2 D", sizes: { D: "1/4 in" } });
    const byT = rule({ id: "by-t", lower: "10 t" });
    const piece = fastenerRow({
      count: counted(4),
      check: { edge: named("by-d", "by-t"), pitch: [] },
    });
    expect(checksOf(layout(piece, { sheet: quantity("0.032 in") }), withRules(byD, byT))).toEqual([
      "edge distance at both ends 0.3125 in, by-d: within",
      "edge distance at both ends 0.3125 in, by-t: below",
    ]);
  });

  test("the rule that wins on the layout's step", () => {
    const general = rule({ id: "general", lower: "2 D", sizes: { D: "1/8 in" } });
    const drawn: ToleranceRule = {
      ...rule({ id: "drawn", lower: "0.5 in", authority: "drawing" }),
      over: { rule: "general", steps: ["HS-07"] },
    };
    const piece = fastenerRow({ count: counted(4), check: { edge: named("general"), pitch: [] } });
    expect(checksOf(piece, withRules(general, drawn))).toEqual([
      "edge distance at both ends 0.3125 in, general: within",
    ]);
    const onStep = laidOut(layout(piece, { step: "HS-07" }), withRules(general, drawn));
    expect(onStep.checks[0]).toMatchObject({
      rule: { id: "drawn" },
      over: { id: "general" },
      verdict: { kind: "below" },
    });
  });

  test("corners and the finish of a cut-out", () => {
    const corner = rule({ id: "corner", lower: "3/8 in" });
    const finish = rule({ id: "finish", upper: "125 µin" });
    const check = { corner: named("corner"), finish: named("finish") };
    const build = withRules(corner, finish);
    expect(checksOf(cutOut({ finish: stated("3.2 µm"), check }), build)).toEqual([
      "corner radius 3/8 in, corner: within",
      "roughness of the edge 3.2 µm, finish: above",
    ]);
    expect(checksOf(cutOut({ shape: "slot", corner: stated("0.37 in"), check }), build)).toEqual([
      "radius of the ends 0.37 in, corner: below",
    ]);
    expect(checksOf(cutOut({ shape: "circle", corner: stated("1 in"), check }), build)).toEqual([
      "radius 1 in, corner: within",
    ]);
  });

  test("a limit that cannot be worked out gives no verdict", () => {
    const crossed = rule({ id: "crossed", lower: "2 in", upper: "1 in" });
    const piece = fastenerRow({ count: counted(4), check: { edge: named("crossed"), pitch: [] } });
    const { checks, standing } = laidOut(piece, withRules(crossed));
    expect(checks[0]).toMatchObject({ fault: { kind: "crossed ends" }, limits: {} });
    expect(checks[0]).not.toHaveProperty("verdict");
    expect(standing).toBe("no rule");
  });

  test("a name that leads to no rule was reported when it was read", () => {
    const check = { edge: named("nobody"), pitch: named("edge-distance-2d") };
    expect(checksOf(fastenerRow({ count: counted(4), check }))).toEqual([]);
    expect(checksOf(fastenerRow({ count: counted(4), check: { edge: [], pitch: [] } }))).toEqual(
      [],
    );
  });
});

describe("how it stands", () => {
  const broken = fastenerRow({
    edge: stated("0.2 in"),
    count: counted(4),
    check: { edge: named("edge-distance-2d"), pitch: [] },
  });
  const standing = (...deviations: ReturnType<typeof deviation>[]) => {
    const build = smallBuild({
      days: [day({ layouts: [layout(broken, { deviation: "D-014" })], deviations })],
    });
    return analyze(build, asOf("2026-12-31")).layouts[0];
  };

  test("a deviation accounts for it once something has been decided", () => {
    expect(standing()?.standing).toBe("out");
    expect(standing(deviation())).toMatchObject({
      standing: "out",
      deviation: { id: "D-014" },
    });
    expect(standing(deviation({ disposition: disposition() }))?.standing).toBe("accounted for");
  });

  test("layouts are in the order of days", () => {
    const one = layout(fastenerRow(), { title: "later" });
    const two = layout(cutOut(), { title: "earlier" });
    const build = smallBuild({
      days: [
        day({ date: "2026-03-15", layouts: [one] }),
        day({ date: "2026-03-14", layouts: [two] }),
      ],
    });
    const { layouts } = analyze(build, asOf("2026-12-31"));
    expect(layouts.map((each) => each.layout.title)).toEqual(["earlier", "later"]);
  });
});
