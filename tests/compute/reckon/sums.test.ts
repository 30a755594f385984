// What holds for every sum, and what each one says about inputs that do not go together.

import { describe, expect, test } from "vitest";
import { sums } from "../../../src/compute/reckon/index.ts";
import { metricDrills, metricDrillsCitation } from "../../../src/model/published/metric-drills.ts";
import { reckoned, reckonedText, refusal, sumNamed } from "../../support/reckoned.ts";
import { quantity } from "../../support/typed-quantity.ts";

const row = ["length=6 in", "diameter=1/8 in", "edge=2D"];

describe.each(sums.map((sum) => [sum.name, sum] as const))("%s", (name, sum) => {
  const answer = reckoned(name, ...sum.example);

  test("has formula, source and cautions, and defers to the drawing last", () => {
    expect(answer.formula).toBeTruthy();
    expect(answer.source).toBeTruthy();
    expect(answer.cautions).toContain(
      "general information: the drawings, the manufacturer's data, local rules and a licensed person govern",
    );
    expect((answer.cautions as string[]).at(-1)).toMatch(/^general information/);
  });

  test("has a number, or null and several parts", () => {
    if (answer.result === null) expect(Object.keys(answer).length).toBeGreaterThan(8);
    else expect(Number.isFinite(answer.result)).toBe(true);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });

  test("the text shows the same", () => {
    const text = reckonedText(name, ...sum.example);
    expect(text.startsWith(`${name}: `)).toBe(true);
    expect(text).toMatch(/ {2}formula: /);
    expect(text).not.toMatch(/undefined|NaN|\[object|Infinity/);
  });

  test("each input has an example that can be read", () => {
    for (const [input, { example }] of Object.entries(sum.inputs)) {
      const others = sum.example.filter((each) => !each.startsWith(`${input}=`));
      let said = "";
      try {
        reckoned(name, ...others, `${input}=${example}`);
      } catch (error) {
        said = String(error);
      }
      // It may not go with the others, but it is not misread.
      expect(said).not.toMatch(/ is not an? | has to be | is not known|expected/);
    }
  });

  test("says what is missing when nothing is given", () => {
    expect(refusal(name)).toContain("is missing");
  });
});

test("names are unique", () => {
  expect(new Set(sums.map(({ name }) => name)).size).toBe(sums.length);
});

describe("rivet-row", () => {
  test("the row of the handbook line", () => {
    const answer = reckoned("rivet-row", ...row, "pitch-min=3D");
    expect(answer).toMatchObject({ count: 15, unit: "in", result: null });
    expect(answer.pitch).toBeCloseTo(5.5 / 14, 10);
    expect(answer.positions).toHaveLength(15);
    expect(answer.inputs).toMatchObject({ edge: { typed: "2D", value: 0.25, unit: "in" } });
  });

  test("places come in the unit of the length", () => {
    const answer = reckoned(
      "rivet-row",
      "length=150 mm",
      "diameter=1/8 in",
      "edge=2D",
      "pitch-min=3D",
    );
    expect(answer.unit).toBe("mm");
    expect(answer.positions).toMatchObject({ 0: 6.35 });
  });

  test("a published rule gives the least pitch, and a smaller one typed beside it does not undercut it", () => {
    for (const rule of ["pitch-3d-navy", "pitch-army-tm"]) {
      expect(reckoned("rivet-row", ...row, `rule=${rule}`).count).toBe(15);
      expect(reckoned("rivet-row", ...row, `rule=${rule}`, "pitch-min=2D").count).toBe(15);
      expect(reckoned("rivet-row", ...row, `rule=${rule}`, "pitch-min=4D").count).toBe(12);
    }
    expect(reckoned("rivet-row", ...row, "rule=pitch-3d-navy").source).toContain("NAVEDTRA 14018");
  });

  test("count, pitch and the greatest pitch", () => {
    expect(reckoned("rivet-row", ...row, "pitch-min=3D", "count=12").pitch).toBe(0.5);
    expect(reckoned("rivet-row", ...row, "pitch-min=3D", "pitch=0.52 in").count).toBe(12);
    expect(reckoned("rivet-row", ...row, "pitch-min=3D", "pitch-max=8D").count).toBe(15);
  });

  test("cautions on small edges and pitches", () => {
    const tight = ["length=6 in", "diameter=1/8 in", "edge=1.5D", "pitch-min=2D"];
    const said = (reckoned("rivet-row", ...tight).cautions as string[]).join("\n");
    expect(said).toContain("the edge distance is 1.5 D, below the 2 D of Army TM 10-5410-229-13&P");
    expect(said).toContain("the least pitch is 2 D, below the 3 D of Army TM 10-5410-229-13&P");
  });

  test("cautions on rivets lost to a stretch kept out, and on a single rivet", () => {
    const kept = reckoned("rivet-row", ...row, "pitch-min=3D", "keep-out=2.0-2.6 in");
    expect(kept.count).toBe(8);
    expect((kept.cautions as string[])[0]).toContain("15 rivets would fit: 7 fewer");
    const single = reckoned(
      "rivet-row",
      "length=0.7 in",
      "diameter=1/8 in",
      "edge=2D",
      "pitch-min=3D",
    );
    expect(single).toMatchObject({ count: 1, pitch: null, positions: [0.35] });
    expect((single.cautions as string[])[0]).toContain("one stands in the middle");
  });

  test.each([
    [["pitch-min=3D", "pitch-max=2D"], "`pitch-max` of 2D is below the least pitch of 3D"],
    [["pitch-min=3D", "count=4", "pitch=1 in"], "`count` and `pitch` are both given"],
    [["pitch-min=3D", "pitch=0.3 in"], "`pitch` of 0.3 in is below the least pitch of 3D"],
    [["pitch-min=3D", "pitch-max=4D", "pitch=1 in"], "`pitch` of 1 in is above `pitch-max` of 4D"],
    [["pitch-min=3D", "keep-out=7-8 in"], "the stretch from 7 in to 8 in lies beyond the row"],
    [
      ["pitch-min=3D", "count=16"],
      "so many rivets would stand 0.3667 in apart, below the least pitch of 0.375 in",
    ],
    [["pitch-min=3D", "pitch-max=1 in", "count=3"], "so few rivets would stand 2.75 in apart"],
    [["pitch-min=3D", "pitch-max=3.01D"], "no even row fits: 15 rivets stand 0.3929 in apart"],
    [
      ["pitch-min=3D", "pitch-max=5D", "keep-out=2.0-2.6 in"],
      "every even row from 10 to 15 rivets puts one in a stretch kept out",
    ],
    [["pitch-min=3D", "count=3", "keep-out=2-4 in"], "a row of 3 puts a rivet at 3 in"],
    [["pitch-min=0.0001 in"], "more than 10000 rivets would fit"],
  ])("%s", (more, said) => {
    expect(refusal("rivet-row", ...row, ...more)).toContain(said);
  });

  test("rivets that overlap, or hang over the end, are no row", () => {
    const typed = ["length=6 in", "diameter=1/8 in"];
    expect(refusal("rivet-row", ...typed, "edge=2D", "pitch-min=0.5D")).toContain(
      "run into each other at a pitch of 0.0625 in",
    );
    expect(refusal("rivet-row", ...typed, "edge=0.4D", "pitch-min=3D")).toContain(
      "from the edge runs over it",
    );
  });

  test("a piece shorter than its edges", () => {
    expect(
      refusal("rivet-row", "length=0.3 in", "diameter=1/8 in", "edge=2D", "pitch-min=3D"),
    ).toContain("no rivet fits: the two edge distances take 0.5 in of 0.3 in");
  });
});

describe("rivet-length", () => {
  test("grip + 1.5 D, and the sixteenths around it", () => {
    expect(reckoned("rivet-length", "grip=0.064 in", "diameter=1/8 in")).toMatchObject({
      result: 0.2515,
      nearest: 0.25,
      standard: 0.3125,
      dash: "-4-5",
    });
  });

  test("half-way between two sixteenths goes to the longer", () => {
    // 1/32 + 3/16 = 7/32
    expect(reckoned("rivet-length", "grip=1/32 in", "diameter=1/8 in")).toMatchObject({
      nearest: 0.25,
      standard: 0.25,
    });
  });

  test("in millimetres the sum is in millimetres, the lengths in inches; odd diameters have no dash", () => {
    const answer = reckoned("rivet-length", "grip=1.6 mm", "diameter=3.2 mm");
    expect(answer).toMatchObject({ result: 6.4, unit: "mm", nearest: 0.25, standard: 0.3125 });
    expect(answer.dash).toBeUndefined();
  });
});

describe("drill", () => {
  test("letter E and 1/4 in are the same size", () => {
    const answer = reckoned("drill", "size=1/4 in");
    expect(answer.result).toBe(0.25);
    expect(answer.drills).toMatchObject([{ name: "letter E" }, { name: "1/4 in" }]);
    expect(answer.below).toMatchObject([{ name: "letter D" }]);
    expect(answer.above).toMatchObject([{ name: "letter F" }]);
  });

  test("one series only", () => {
    expect(reckoned("drill", "size=1/4 in", "series=number").drills).toMatchObject([
      { name: "No. 1", diameter: 0.228 },
    ]);
  });

  test("metric drills: only when asked for, or for a size in millimetres", () => {
    // No. 30 is 0.1285 in, 3.3 mm would be nearer to 0.1300 in.
    expect(reckoned("drill", "size=0.1300 in").drills).toMatchObject([{ name: "No. 30" }]);
    expect(reckoned("drill", "size=0.1300 in", "series=all").drills).toMatchObject([
      { name: "3.3 mm", diameter: 0.129921259843 },
    ]);
    const metric = reckoned("drill", "size=3.26 mm");
    expect(metric).toMatchObject({ unit: "mm", result: 3.2639 });
    expect(metric.drills).toMatchObject([{ name: "No. 30", diameter: 3.2639 }]);
    expect(reckoned("drill", "size=3.25 mm", "series=metric")).toMatchObject({
      result: null,
      drills: [{ name: "3.2 mm" }, { name: "3.3 mm" }],
    });
    expect(reckoned("drill", "size=3.25 mm").source).toContain("BS 328");
    expect(reckoned("drill", "size=1/4 in").source).not.toContain("BS 328");
  });

  test("the metric series by its rule: 230 sizes less the three above 25 mm", () => {
    expect(metricDrills).toHaveLength(227);
    const millimetres = metricDrills.map((size) => size.valueOf());
    expect(millimetres.slice(0, 5)).toEqual([0.2, 0.22, 0.25, 0.28, 0.3]);
    expect(millimetres.filter((size) => size > 0.95 && size < 1.1)).toEqual([0.98, 1, 1.05]);
    expect(millimetres.filter((size) => size > 2.9 && size < 3.2)).toEqual([2.95, 3, 3.1]);
    expect(millimetres.filter((size) => size > 13.8 && size < 14.5)).toEqual([13.9, 14, 14.25]);
    expect(millimetres.at(-1)).toBe(25);
    expect(millimetres.toSorted((a, b) => a - b)).toEqual(millimetres);
    expect(metricDrillsCitation.status).toBe("secondary");
  });

  test("the end of the series asked for is outside as well, unless it is that very drill", () => {
    const told = (...typed: string[]) =>
      String(reckoned("drill", ...typed).cautions).includes("outside the drills listed");
    expect(told("size=0.25 in", "series=number")).toBe(true);
    expect(told("size=0.228 in", "series=number")).toBe(false);
    expect(told("size=1 in")).toBe(false);
  });

  test("two drills equally near are both named", () => {
    // Half-way between No. 31 (0.1200) and No. 30 (0.1285).
    const answer = reckoned("drill", "size=0.12425 in", "series=number");
    expect(answer.result).toBeNull();
    expect(answer.drills).toMatchObject([{ name: "No. 31" }, { name: "No. 30" }]);
  });

  test("outside the list it says so", () => {
    for (const size of ["0.001 in", "2 in"])
      expect(reckoned("drill", `size=${size}`).cautions).toContain(
        "the size lies outside the drills listed; the nearest one is far off",
      );
  });

  test.each([
    // 1940s: read in the service manual; today: common practice, not read
    ["3/32 in", ["No. 40", "No. 41"]],
    ["1/8 in", ["No. 30", "No. 30"]],
    ["5/32 in", ["No. 21", "No. 22"]],
    ["3/16 in", ["No. 11", "No. 12"]],
    ["1/4 in", ["letter F"]],
    ["1/16 in", ["No. 52"]],
  ])("the two practices apart for a %s rivet", (rivet, names) => {
    const answer = reckoned("drill", `rivet=${rivet}`);
    expect(answer.result).toBeNull();
    expect((answer.drills as { name: string }[]).map(({ name }) => name)).toEqual(names);
  });

  test.each([
    [["rivet=7/32 in"], "neither practice has a drill for a 7/32 in rivet"],
    [["rivet=1/8 in", "series=number"], "`series` goes with `size`"],
    [["rivet=1/8 in", "size=1/8 in"], "`size` and `rivet` are both given"],
  ])("%s", (typed, said) => {
    expect(refusal("drill", ...typed)).toContain(said);
  });
});

describe("shop-head", () => {
  test("a head of 0.170 in on a 1/8 in rivet fails one set and passes another", () => {
    const answer = reckoned("shop-head", "diameter=1/8 in", "width=0.170 in", "height=0.055 in");
    expect(answer.ruleSets).toMatchObject([
      {
        set: "driven-head-1.5d",
        leastDiameter: 0.1875,
        leastHeight: 0.0625,
        widthVerdict: "below",
        heightVerdict: "below",
      },
      {
        set: "driven-head-mil",
        leastDiameter: 0.163,
        leastHeight: 0.05,
        mostHeight: 0.07,
        widthVerdict: "within",
        heightVerdict: "within",
      },
      {
        set: "driven-head-1940s",
        nominalDiameter: 0.188,
        widthVerdict: "not judged: no limits printed",
      },
    ]);
  });

  test("sets without a row for the rivet are named", () => {
    const answer = reckoned("shop-head", "diameter=3/16 in");
    expect(answer.ruleSets).toHaveLength(1);
    expect(answer.cautions).toContain("no MIL sizes for a 3/16 in rivet");
    expect(answer.cautions).toContain("no 1940s nominal sizes for a 3/16 in rivet");
  });
});

describe("splice", () => {
  const typed = ["table=4-10", "width=10 in", "joint=sheet"];

  test("sizes that the table does not print are all named at once", () => {
    const said = refusal("splice", ...typed, "thickness=0.033 in", "diameter=7/32 in");
    expect(said).toContain("table 4-10 has no row for 0.033 in");
    expect(said).toContain("table 4-10 has no column for a 7/32 in rivet");
  });

  test("a dash in the table is no number", () => {
    const said = refusal("splice", ...typed, "thickness=0.016 in", "diameter=1/4 in");
    expect(said).toContain("prints no number for a 1/4 in rivet in .016 in sheet");
    expect(said).toContain("for that sheet it has 3/32, 1/8 in");
  });

  test("says when rounding to a tenth changed the count", () => {
    // 4.9 x 0.75 = 3.675, rounded 3.7: over 100 in that is 370 rivets instead of 368.
    const answer = reckoned(
      "splice",
      ...typed.with(1, "width=100 in"),
      "thickness=0.032 in",
      "diameter=1/8 in",
    );
    expect(answer.result).toBe(370);
    expect((answer.cautions as string[])[0]).toContain("it would be 368 rivets");
  });

  test("cautions on rivets thinner or thicker than the sheet asks for, and on the copy of table 4-9", () => {
    const said = (sheet: string, diameter: string) =>
      (
        reckoned(
          "splice",
          "table=4-9",
          "width=10 in",
          "joint=sheet",
          `thickness=${sheet}`,
          `diameter=${diameter}`,
        ).cautions as string[]
      ).join("\n");
    expect(said("0.032 in", "1/8 in")).toContain("thicker than three times the sheet");
    expect(said("0.128 in", "3/16 in")).not.toMatch(/thicker than three|thinner than the sheet/);
    expect(said("0.128 in", "3/16 in")).toContain("columns scrambled");
  });
});

describe("countersink", () => {
  test("Army TM 9-2320-363-34-2, tables 3 and 4", () => {
    expect(reckoned("countersink", "diameter=1/8 in")).toMatchObject({
      low: 0.222,
      high: 0.228,
      leastSheet: 0.05,
    });
    expect(reckoned("countersink", "diameter=1/4 in")).toMatchObject({ leastSheet: 0.072 });
    expect(reckoned("countersink", "diameter=1/4 in").low).toBeUndefined();
  });

  test("the sheet is compared, the least one included", () => {
    const verdict = (sheet: string) =>
      reckoned("countersink", "diameter=1/8 in", `sheet=${sheet}`).sheetVerdict;
    expect(verdict("0.050 in")).toBe("thick enough");
    expect(verdict("0.0499 in")).toMatch(/^too thin/);
  });

  test("a rivet outside the tables", () => {
    expect(refusal("countersink", "diameter=7/32 in")).toContain("no row for a 7/32 in rivet");
  });
});

describe("bends", () => {
  const sheet = ["thickness=0.040 in", "radius=0.16 in"];

  test.each(["setback", "bend-allowance"])("%s: a sheet folded flat has no mold line", (name) => {
    expect(refusal(name, ...sheet, "angle=180 deg")).toContain("folds the sheet flat on itself");
  });

  test("flat-pattern: needs a bend, and legs longer than their setbacks", () => {
    expect(refusal("flat-pattern", ...sheet, "angle=180 deg", "legs=1, 1 in")).toContain("folds");
    expect(refusal("flat-pattern", ...sheet, "angle=90 deg", "legs=1 in")).toContain(
      "one mold-line dimension makes no bend",
    );
    const short = refusal("flat-pattern", ...sheet, "angle=90 deg", "legs=1 in, 0.39 in, 0.19 in");
    expect(short).toContain("`0.39 in`, `0.19 in`: shorter than the setbacks beside it");
  });

  test("flat-pattern: several bends, each with its own radius and angle", () => {
    // A joggled angle, by hand: SB 0.2 (90°, R 0.16), 0.1 (90°, R 0.06), 0.041421 (45°, R 0.06).
    const answer = reckoned(
      "flat-pattern",
      "legs=1, 2, 1.5, 0.75 in",
      "radius=0.16, 0.06, 0.06 in",
      "thickness=0.040 in",
      "angle=90, 90, 45 deg",
    );
    const back = 0.1 * Math.tan(Math.PI / 8);
    const of = (radius: number, degrees: number) => (0.01743 * radius + 0.0078 * 0.04) * degrees;
    const close = (figures: unknown, expected: number[]) => {
      expect(figures).toHaveLength(expected.length);
      for (const [index, each] of expected.entries())
        expect((figures as number[])[index]).toBeCloseTo(each, 9);
    };
    close(answer.setbacks, [0.2, 0.1, back]);
    close(answer.flats, [0.8, 1.7, 1.4 - back, 0.75 - back]);
    close(answer.allowances, [of(0.16, 90), of(0.06, 90), of(0.06, 45)]);
    expect(answer.width).toBeCloseTo(
      5.25 - 0.6 - 2 * back + of(0.16, 90) + of(0.06, 90) + of(0.06, 45),
      9,
    );
    expect(answer.setback).toBeUndefined();
  });

  test("flat-pattern: one radius typed for each bend is the same part", () => {
    const legs = ["legs=1.00, 2.00, 1.00 in", "thickness=0.040 in"];
    const once = reckoned("flat-pattern", ...legs, "radius=0.16 in", "angle=90 deg");
    const each = reckoned("flat-pattern", ...legs, "radius=0.16, 4.064 mm", "angle=90, 90 deg");
    const inches = reckoned("flat-pattern", ...legs, "radius=0.16, 0.16 in", "angle=90, 90 deg");
    expect(inches).toMatchObject({ flats: once.flats, width: once.width });
    expect(each.width).not.toBe(once.width);
  });

  test("flat-pattern: as many radii and angles as bends, or one", () => {
    const typed = ["legs=1, 1, 1, 1 in", "thickness=0.040 in"];
    expect(refusal("flat-pattern", ...typed, "radius=0.1, 0.2 in", "angle=90 deg")).toContain(
      "`radius` is given 2 times for 3 bends",
    );
    expect(refusal("flat-pattern", ...typed, "radius=0.1 in", "angle=90, 45 deg")).toContain(
      "`angle` is given 2 times for 3 bends",
    );
    expect(refusal("flat-pattern", ...typed, "radius=0.1 in", "angle=90, 180, 45 deg")).toContain(
      "folds the sheet flat",
    );
    expect(refusal("flat-pattern", ...typed, "radius=0.1, -0.1, 0.1 in", "angle=90 deg")).toContain(
      "has to be zero or more",
    );
    expect(refusal("flat-pattern", ...typed, "radius=0.1 in", "angle=90, 4, 4 in")).toContain(
      "expected an angle",
    );
  });

  test("an open bend is not exact, a square one is", () => {
    expect(reckonedText("setback", "radius=1/4 in", "thickness=1/16 in", "angle=90 deg")).toContain(
      "0.3125 in (exactly 5/16 in)",
    );
    expect(reckonedText("setback", ...sheet, "angle=45 deg")).not.toContain("exactly");
  });

  test("sizes in different units", () => {
    expect(reckoned("setback", "radius=0.2 in", "thickness=2.54 mm", "angle=90 deg").result).toBe(
      0.3,
    );
  });
});

describe("torque", () => {
  test("unit of the answer: the one typed, or that of the table", () => {
    expect(reckoned("torque", "torque=10 N·m", "drag=1 N·m")).toMatchObject({
      result: 11,
      unit: "N·m",
    });
    expect(reckoned("torque", "thread=10-32", "nut=tension").unit).toBe("lbf·in");
  });

  test("values printed as estimates say so", () => {
    expect(reckoned("torque", "thread=1-14", "nut=shear").cautions).toContain(
      "printed as an estimated corresponding value",
    );
  });

  test("the band on a wrench with an adapter", () => {
    expect(
      reckoned(
        "torque",
        "thread=1/4-28",
        "nut=tension",
        "drag=12 lbf·in",
        "wrench=10 in",
        "adapter=10 in",
      ),
    ).toMatchObject({ low: 31, high: 41, max: 56, share: 0.5 });
  });

  test.each([
    [
      ["torque=100 lbf·in", "thread=10-32", "nut=tension"],
      "`torque` stands instead of `thread` and `nut`",
    ],
    [["thread=10-32"], "`nut` (or `torque`) is missing"],
    [["nut=shear"], "`thread` (or `torque`) is missing"],
    [["torque=1 N·m", "adapter=1 in"], "`adapter` changes the lever, but `wrench` is missing"],
    [["torque=1 N·m", "angle=10 deg"], "`adapter` is missing"],
    [["torque=1 N·m", "adapter=1 in", "wrench=5 in", "angle=181 deg"], "more than half a turn"],
    [["torque=1 N·m", "adapter=-5 in", "wrench=5 in"], "takes the whole lever away"],
  ])("%s", (typed, said) => {
    expect(refusal("torque", ...typed)).toContain(said);
  });
});

describe("travel", () => {
  test("computed, not published: 4.0 in at 12.0 in is 19.19 degrees, not the 19.10 of a small angle", () => {
    const { result } = reckoned("travel", "radius=12.0 in", "chord=4.0 in");
    expect(result).toBeCloseTo(19.19, 2);
    expect(result).not.toBeCloseTo(19.1, 1);
  });

  test("angles that are exact", () => {
    expect(reckoned("travel", "radius=12 in", "chord=12 in").result).toBe(60);
    expect(reckoned("travel", "radius=12 in", "chord=2 ft").result).toBe(180);
  });

  test("the chord to look for", () => {
    const { result, unit } = reckoned("travel", "radius=12 in", "angle=25 deg");
    expect(result).toBeCloseTo(24 * Math.sin((12.5 * Math.PI) / 180), 10);
    expect(unit).toBe("in");
  });

  test.each([
    [["radius=12 in", "chord=24.01 in"], "no point 12 in from the hinge can move 24.01 in"],
    [["radius=12 in", "angle=181 deg"], "more than half a turn"],
    [["radius=12 in", "angle=10 deg", "chord=1 in"], "`chord` and `angle` are both given"],
  ])("%s", (typed, said) => {
    expect(refusal("travel", ...typed)).toContain(said);
  });
});

describe("cure", () => {
  const epoxy = ["material=epoxy", "time=60 min", "at=72 °F"];

  test("the rule for epoxy is refused for sealant", () => {
    const said = refusal("cure", "material=sealant", "class=B-2", "temperature=90 °F");
    expect(said).toContain("no source says how the time of a sealant changes with temperature");
  });

  test("a schedule is not read between its points", () => {
    expect(refusal("cure", "material=adhesive-5", "temperature=90 °F")).toContain(
      "the schedule has no time for 90 °F",
    );
  });

  test("what belongs to another material, and what is missing, are said together", () => {
    const said = refusal("cure", "material=epoxy", "class=B-2", "time=60 min");
    expect(said).toContain("`class` has no meaning for `material=epoxy`");
    expect(said).toContain("`at` is missing for `material=epoxy`");
    expect(said).toContain("`temperature` is missing for `material=epoxy`");
  });

  test("below what the source speaks of it says so", () => {
    const cautions = (temperature: string) =>
      (reckoned("cure", ...epoxy, `temperature=${temperature}`).cautions as string[]).join("\n");
    expect(cautions("90 °F")).not.toContain("below 72 °F");
    expect(cautions("68 °F")).toContain("below 72 °F the source says nothing");
    expect(cautions("54 °F")).toContain("all but dormant");
  });

  test("temperatures in any unit, and none that means nothing", () => {
    expect(
      reckoned("cure", "material=epoxy", "time=1 h", "at=25 °C", "temperature=35 °C"),
    ).toMatchObject({
      result: 0.5,
      unit: "h",
    });
    expect(refusal("cure", ...epoxy, "temperature=500 °F")).toContain("means nothing");
  });
});

describe("conformity", () => {
  const limit = ["at-least=0.125 in"];

  test("without an uncertainty there is a verdict and no probability", () => {
    expect(reckoned("conformity", "value=0.1255 in", ...limit)).toMatchObject({
      verdict: "within",
      assurance: null,
      probability: null,
    });
  });

  test("on the limit it is within, with even chances", () => {
    expect(
      reckoned("conformity", "value=0.125 in", ...limit, "uncertainty=0.001 in"),
    ).toMatchObject({ verdict: "within", assurance: "proven", probability: 0.5 });
  });

  test("the decision rule moves the limit, not the verdict", () => {
    const assurance = (value: string, rule: string) =>
      reckoned("conformity", `value=${value}`, ...limit, "uncertainty=0.001 in", `rule=${rule}`)
        .assurance;
    expect(assurance("0.126 in", "guarded by U")).toBe("proven");
    expect(assurance("0.1259 in", "guarded by U")).toBe("not proven");
    expect(assurance("0.1259 in", "guarded for 95 %")).toBe("proven");
    expect(assurance("0.1239 in", "guarded by U")).toBe("disproven");
  });

  test("says from where on conformity is proven, rounded inwards, and which k it took", () => {
    const typed = ["value=0.1255 in", "at-least=0.125 in", "at-most=0.130 in"];
    const guarded = [...typed, "uncertainty=0.001 in", "rule=guarded for 95 %"];
    const answer = reckoned("conformity", ...guarded);
    expect(answer.standardUncertainty).toBe(0.0005);
    expect(answer.acceptFrom).toBeCloseTo(0.1258225, 12);
    expect(answer.acceptTo).toBeCloseTo(0.1291775, 12);
    const text = reckonedText("conformity", ...guarded);
    expect(text).toMatch(/proven from +0\.1259 in/);
    expect(text).toMatch(/proven up to +0\.1291 in/);
    expect(text).toContain("`coverage` was not given");
    expect(reckonedText("conformity", ...guarded, "coverage=2")).not.toContain("was not given");
    expect(reckoned("conformity", ...typed, "uncertainty=0.001 in")).toMatchObject({
      acceptFrom: 0.125,
      acceptTo: 0.13,
    });
    expect(reckoned("conformity", ...typed)).not.toHaveProperty("acceptFrom");
  });

  test("an uncertainty of zero leaves the limits where they are, whatever the rule", () => {
    for (const rule of ["simple", "guarded by U", "guarded for 95 %"]) {
      const typed = ["at-least=0.125 in", "uncertainty=0 in", `rule=${rule}`];
      expect(reckoned("conformity", "value=1/8 in", ...typed)).toMatchObject({
        verdict: "within",
        assurance: "proven",
        probability: 1,
        acceptFrom: 0.125,
      });
      expect(reckoned("conformity", "value=0.12499999 in", ...typed).assurance).toBe("disproven");
    }
  });

  test("coverage and resolution", () => {
    const probability = (...more: string[]) =>
      Number(
        reckoned("conformity", "value=0.1255 in", ...limit, "uncertainty=0.001 in", ...more)
          .probability,
      );
    expect(probability("coverage=1")).toBeLessThan(probability());
    expect(probability("resolution=0.001 in")).toBeLessThan(probability());
  });

  test("outside: by how much", () => {
    expect(reckoned("conformity", "value=0.124 in", ...limit)).toMatchObject({
      verdict: "below",
      outside: 0.001,
    });
    expect(reckoned("conformity", "value=71 °F", "at-most=70 °F")).toMatchObject({
      verdict: "above",
      outside: 1,
      units: { outside: "Δ°F" },
    });
  });

  test("no room between the guard bands", () => {
    const answer = reckoned(
      "conformity",
      "value=10 mm",
      "at-least=9.9 mm",
      "at-most=10.1 mm",
      "uncertainty=0.2 mm",
      "rule=guarded by U",
    );
    expect(answer.assurance).toBe("no acceptance zone");
    expect((answer.cautions as string[]).join("\n")).toContain("the guard bands meet");
    expect(answer).toMatchObject({ acceptFrom: null, acceptTo: null });
  });

  test("no room between the guard bands is said of a value far outside as well", () => {
    const answer = reckoned(
      "conformity",
      "value=11 mm",
      "at-least=9.9 mm",
      "at-most=10.1 mm",
      "uncertainty=0.2 mm",
      "rule=guarded by U",
    );
    expect(answer).toMatchObject({ assurance: "disproven", acceptFrom: null, acceptTo: null });
    expect((answer.cautions as string[]).join("\n")).toContain("the guard bands meet");
  });

  test("an uncertainty in per cent, and one in degrees", () => {
    expect(
      reckoned("conformity", "value=100 lbf·in", "at-most=104 lbf·in", "uncertainty=4 %")
        .probability,
    ).toBeCloseTo(0.9772, 4);
    expect(
      reckoned("conformity", "value=70 °F", "at-most=72 °F", "uncertainty=2 Δ°F").probability,
    ).toBeCloseTo(0.9772, 4);
  });

  test.each([
    [["value=1 in"], "`at-least` (or `at-most`) is missing"],
    [
      ["value=1 in", "at-most=1 lbf·in"],
      "`1 lbf·in` is a torque, but the value `1 in` is a length",
    ],
    [["value=1 in", "at-most=1 in", "uncertainty=1 lb"], "`1 lb` is a mass, but the value"],
    [["value=1 °F", "at-most=1 °F", "uncertainty=1 %"], "`1 %` is a ratio, but the value"],
    [["value=1 in", "at-most=1 in", "uncertainty=-1 in"], "`uncertainty` is below zero"],
    [["value=1 in", "at-most=1 in", "coverage=2"], "`coverage` goes with `uncertainty`"],
    [
      ["value=1 in", "at-most=1 in", "at-least=2 in"],
      "`at-most` of 1 in lies below `at-least` of 2 in",
    ],
  ])("%s", (typed, said) => {
    expect(refusal("conformity", ...typed)).toContain(said);
  });
});

describe("weight and balance", () => {
  test("limits are compared, both ends included", () => {
    const verdict = (arm: string) =>
      reckoned("balance", `item=100 lb @ ${arm}`, "forward=10 in", "aft=20 in", "max-weight=99 lb");
    expect(verdict("10 in")).toMatchObject({
      cgVerdict: "within the limits given",
      weightVerdict: "above the greatest weight",
    });
    expect(verdict("20 in").cgVerdict).toBe("within the limits given");
    expect(verdict("9.99 in").cgVerdict).toBe("ahead of the forward limit");
    expect(verdict("20.01 in").cgVerdict).toBe("behind the aft limit");
  });

  test("units of the first item hold for the answer", () => {
    expect(reckoned("balance", "item=a 10 kg @ 1 m, b 10 kg @ 200 cm")).toMatchObject({
      weight: 20,
      moment: 30,
      cg: 1.5,
      unit: null,
      units: { weight: "kg", moment: "kg·m", cg: "m" },
    });
  });

  test("items without a name are counted, the start by its own", () => {
    const answer = reckoned("balance", "start=100 lb @ 1 in", "item=1 lb @ 2 in, 1 lb @ 3 in");
    expect((answer.items as { name: string }[]).map(({ name }) => name)).toEqual([
      "start",
      "item 1",
      "item 2",
    ]);
    expect((reckoned("balance", "item=1 lb @ 2 in").items as { name: string }[])[0]?.name).toBe(
      "item 1",
    );
  });

  test("arm of the mains on either side of the datum, nosewheel and tailwheel", () => {
    const at = (wheel: string, mains: string) =>
      reckoned(
        "wheel-balance",
        `wheel=${wheel}`,
        "third=100 lb",
        "wheelbase=80 in",
        "weight=1000 lb",
        `mains=${mains}`,
      ).result;
    expect(at("nose", "70 in")).toBe(62);
    expect(at("nose", "-70 in")).toBe(-78);
    expect(at("tail", "7.5 in")).toBe(15.5);
    expect(at("tail", "-7.5 in")).toBe(0.5);
  });

  test("the new centre of gravity after a shift", () => {
    expect(
      reckoned(
        "weight-shift",
        "moved=100 lb",
        "from=10 in",
        "to=0 in",
        "weight=1000 lb",
        "cg=50 in",
      ),
    ).toMatchObject({ result: -1, cg: 49 });
  });

  test("the chord by its length", () => {
    expect(reckoned("mac", "cg=663 in", "lemac=625.6 in", "mac=134.5 in").result).toBeCloseTo(
      27.807,
      3,
    );
  });

  test.each([
    [
      "balance",
      ["item=1 lb @ 1 in", "start=1 lb @ 1 in, 1 lb @ 2 in"],
      "`start` is one weight at one arm",
    ],
    ["balance", ["item=1 lb @ 1 in", "forward=2 in", "aft=1 in"], "lies ahead of `forward`"],
    ["balance", ["item=1 lb @ 1 in, -1 lb @ 1 in"], "all together weighs 0 lb"],
    [
      "wheel-balance",
      ["wheel=nose", "third=2 lb", "wheelbase=1 in", "weight=1 lb"],
      "more than the 1 lb of the aircraft",
    ],
    [
      "ballast",
      ["weight=1 lb", "cg=1 in", "limit=2 in", "arm=2 in"],
      "never brings the centre of gravity there",
    ],
    [
      "ballast",
      ["weight=1 lb", "cg=1 in", "limit=2 in", "arm=0 in"],
      "moves the centre of gravity away from 2 in",
    ],
    [
      "weight-shift",
      ["moved=2 lb", "from=1 in", "to=2 in", "weight=1 lb"],
      "more than the 1 lb of the whole aircraft",
    ],
    ["mac", ["cg=1 in", "lemac=2 in", "temac=1 in"], "does not lie behind the leading edge"],
    [
      "mac",
      ["cg=1 in", "lemac=2 in", "temac=3 in", "mac=1 in"],
      "`temac` and `mac` are both given",
    ],
  ])("%s %s", (name, typed, said) => {
    expect(refusal(name, ...typed)).toContain(said);
  });
});

describe("convert", () => {
  test.each([
    // Worked with exact factors.
    ["1/8 in", "mm", 3.175],
    ["0.032 in", "mm", 0.8128],
    ["77 °F", "°C", 25],
    ["18 Δ°F", "Δ°C", 10],
    ["1 gal", "in³", 231],
    ["12 in-lbf", "lbf·ft", 1],
    ["No. 30", "mm", 3.2639],
  ])("%s is in %s: %s", (value, to, result) => {
    expect(reckoned("convert", `value=${value}`, `to=${to}`).result).toBe(result);
  });

  test("a temperature is no difference", () => {
    expect(refusal("convert", "value=18 Δ°F", "to=°C")).toContain("`to=Δ°C`");
    expect(refusal("convert", "value=18 lb", "to=lbf")).toContain("name a unit of mass");
  });

  test("gallons are said to be those of the US", () => {
    expect((reckoned("convert", "value=1 gal", "to=L").cautions as string[])[0]).toContain(
      "of the US",
    );
  });
});

describe("called without the command line, a sum still refuses what does not go together", () => {
  test.each([
    [
      "rivet-row",
      { length: quantity("6 in"), diameter: quantity("1/8 in"), edge: quantity("1/4 in") },
      "`pitch-min` is missing",
    ],
    ["torque", {}, "neither `torque` nor `thread` and `nut` are given"],
    ["torque", { thread: "10-32" }, "`nut` is missing"],
    ["torque", { nut: "shear" }, "`thread` is missing"],
    ["conformity", { value: quantity("1 in") }, "`at-least` and `at-most` are both missing"],
    ["balance", { item: [] }, "there is nothing to add up"],
    ["drill", {}, "`size` or `rivet` is missing"],
    ["travel", { radius: quantity("1 in") }, "`chord` or `angle` is missing"],
    ["mac", { cg: quantity("1 in"), lemac: quantity("1 in") }, "`temac` or `mac` is missing"],
  ])("%s", (name, values, message) => {
    const outcome = sumNamed(name).reckon(values);
    expect(!outcome.ok && outcome.problems.map((each) => each.message)).toContainEqual(
      expect.stringContaining(message),
    );
  });

  test("a thread that is not in the table is a fault of the program", () => {
    const values = { thread: "10-33", nut: "tension" };
    expect(() => sumNamed("torque").reckon(values)).toThrow(RangeError);
  });
});

test("a part that there is none of says why in text", () => {
  const single = ["length=0.7 in", "diameter=1/8 in", "edge=2D", "pitch-min=3D"];
  expect(reckonedText("rivet-row", ...single)).toContain("none: one rivet has none");
});

describe("inspection-risk", () => {
  test("limits that crossed, a share that is none, and bands that meet", () => {
    const typed = ["mean=0.5 in", "spread=0.004 in", "measuring=0.001 in"];
    const crossed = ["at-least=0.508 in", "at-most=0.492 in"];
    expect(refusal("inspection-risk", ...typed, ...crossed)).toContain("lies below `at-least`");
    expect(refusal("inspection-risk", ...typed, "at-most=0.508 in", "wanted=1")).toContain(
      "`wanted` is a share",
    );
    const narrow = ["at-least=0.492 in", "at-most=0.508 in", "guard=0.01 in"];
    expect(String(reckoned("inspection-risk", ...typed, ...narrow).cautions)).toContain(
      "the guard bands meet",
    );
  });

  const bearings = ["shape=4", "scale=0.25 mm", "measuring=0.25 mm", "at-most=2 mm"];

  test("gives the guard band for a risk that is wanted, in the unit of the measuring", () => {
    const answer = reckoned("inspection-risk", ...bearings, "wanted=0.001");
    expect(answer.guard).toBeCloseTo(0.32817, 5);
    expect(answer.acceptTo).toBeCloseTo(1.67183, 5);
    const inches = reckoned(
      "inspection-risk",
      ...["mean=0.5 in", "spread=0.004 in", "measuring=0.001 in", "at-least=0.492 in"],
      "guard=0.001 in",
    );
    expect(inches.acceptFrom).toBeCloseTo(0.493, 10);
  });

  test.each([
    [["shape=4", "measuring=0.25 mm", "at-most=2 mm"], "described by `mean` and `spread`"],
    [[...bearings, "guard=2 lbf"], "`2 lbf` is a force, but `measuring` is a length"],
    [[...bearings, "guard=0.1 mm", "wanted=0.01"], "asks for the guard band"],
    [
      ["mean=1 mm", "spread=-1 mm", "measuring=1 mm", "at-most=2 mm"],
      "`spread` has to be above zero",
    ],
    [
      [
        "mean=9 mm",
        "spread=1 mm",
        "measuring=90 mm",
        "at-most=2 mm",
        "wanted=0.000000000000000000000001",
      ],
      "no guard band",
    ],
  ])("%j has no answer", (typed, says) => {
    expect(refusal("inspection-risk", ...typed)).toContain(says);
  });
});
