import { describe, expect, test } from "vitest";
import type { JudgedReading } from "../../../src/compute/analysis.ts";
import { isWorse, readingsLedger } from "../../../src/compute/ledgers/readings.ts";
import type { Build } from "../../../src/model/build.ts";
import type { Reading } from "../../../src/model/measurement.ts";
import { tableRule } from "../../support/limit-tables.ts";
import {
  day,
  deviation,
  disposition,
  instrument,
  register,
  smallBuild,
  span,
} from "../../support/small-build.ts";
import { quantity, reading, rule, sizes } from "../../support/small-measurements.ts";

const rules = register(rule());

function judged(
  readings: readonly Reading[],
  overrides: Partial<Build> = {},
): readonly JudgedReading[] {
  return readingsLedger(
    smallBuild({ rules, days: [day({ readings, deviations: [deviation()] })], ...overrides }),
  );
}

const standings = (readings: readonly Reading[], overrides?: Partial<Build>) =>
  judged(readings, overrides).map(({ standing }) => standing);

describe("standing", () => {
  test.each([
    ["0.121875 in", "within"], // both limits are within …
    ["0.159375 in", "within"],
    ["0.1218 in", "out"],
    ["0.1594 in", "out"],
  ])("%s is %s", (typed, standing) => {
    expect(standings([reading([typed])])).toEqual([standing]);
  });

  test("no rule, no standing to speak of", () => {
    const { rule: _rule, ...bare } = reading(["9 in"]);
    const [state] = judged([bare]);
    expect(state).toMatchObject({ standing: "no rule", limits: {} });
    expect(state).not.toHaveProperty("verdict");
    expect(state).not.toHaveProperty("rule");
  });

  test("one value outside is enough, and the furthest outside gives the verdict", () => {
    const [state] = judged([reading(["0.14 in", "0.16 in", "0.1 in", "0.17 in"])]);
    expect(state?.standing).toBe("out");
    expect(state?.verdict).toMatchObject({ kind: "below" });
    expect(state?.values.map(({ verdict }) => verdict.kind)).toEqual([
      "within",
      "above",
      "below",
      "above",
    ]);
  });

  test("a deviation accounts for it once something is decided", () => {
    const out = reading(["0.1 in"], { deviation: "D-014" });
    expect(standings([out])).toEqual(["out"]);
    const decided = deviation({ disposition: disposition() });
    const days = [day({ readings: [out], deviations: [decided] })];
    expect(standings([], { days })).toEqual(["accounted for"]);
    expect(judged([], { days })[0]?.deviation).toBe(decided);
  });

  test("a later reading replaces an earlier one, and the newest of several counts", () => {
    const readings = [
      reading(["0.1 in"], { id: "R-1" }),
      reading(["0.11 in"], { id: "R-2", supersedes: "R-1" }),
      reading(["0.14 in"], { id: "R-3", supersedes: "R-1" }),
    ];
    expect(judged(readings).map(({ standing, supersededBy }) => [standing, supersededBy])).toEqual([
      ["superseded", "R-3"],
      ["out", undefined],
      ["within", undefined],
    ]);
  });

  test("nothing replaces itself or what comes after it", () => {
    expect(standings([reading(["0.1 in"], { supersedes: "R-1" })])).toEqual(["out"]);
    const earlier = reading(["0.14 in"], { id: "R-1", supersedes: "R-2" });
    const later = reading(["0.1 in"], { id: "R-2" });
    expect(standings([earlier, later])).toEqual(["within", "out"]);
  });

  test("a reading without a rule replaces only what had none either", () => {
    const { rule: _rule, ...bare } = reading(["0.14 in"], { id: "R-2", supersedes: "R-1" });
    expect(standings([reading(["0.1 in"]), bare])).toEqual(["out", "no rule"]);
    const { rule: _other, ...first } = reading(["0.1 in"]);
    expect(standings([first, bare])).toEqual(["superseded", "no rule"]);
  });
});

describe("limits", () => {
  test("a size given with the reading wins over that of the rule", () => {
    const [state] = judged([reading(["0.19 in"], { sizes: sizes({ D: "1/8 in" }) })]);
    expect(state?.limits.lower?.typed).toBe("0.1625 in");
    expect(state?.standing).toBe("within");
  });

  test("drag is added where the rule says so", () => {
    const torque = rule({ id: "torque", lower: "20 lbf·in", upper: "25 lbf·in", addsDrag: true });
    const wrench = reading(["31 lbf·in"], { rule: "torque", drag: quantity("8 lbf·in") });
    expect(standings([wrench], { rules: register(torque) })).toEqual(["within"]);
  });

  test.each([
    ["a size is not known", rule({ lower: "2 t" }), reading(["0.19 in"])],
    ["the ends are crossed", rule({ lower: "2 in", upper: "1 in" }), reading(["1.5 in"])],
    ["a value is of another kind", rule(), reading(["0.14 in", "5 lbf"])],
    ["there is no value", rule(), reading([])],
  ])("when %s there is no verdict", (_why, broken, typed) => {
    const [state] = judged([typed], { rules: register(broken) });
    expect(state?.standing).toBe("no rule");
    expect(state).not.toHaveProperty("verdict");
    expect(state?.rule).toBe(broken);
  });
});

describe("a rule that judges a figure", () => {
  const sides = rule({ id: "sides", upper: "0.010 in", sizes: {}, judges: "difference" });
  const left = reading(["14.381 in"], { id: "L", at: "left", instrument: "gauge-1" });
  const right = reading(["14.372 in"], { id: "R", at: "right", instrument: "gauge-1" });
  const of = ["L", "R"].map((id) => ({ reading: id, span: span({ line: 22, column: 40 }) }));
  const both = reading([], { id: "B", rule: "sides", of });
  const all = (...more: readonly Reading[]) =>
    judged([left, right, both, ...more], { rules: register(rule(), sides) });

  test("holds the figure against the limits, and says what it is made of", () => {
    const state = all()[2];
    expect(state).toMatchObject({
      standing: "within",
      figure: { kind: "difference", of: [left, right] },
      values: [
        {
          value: { quantity: { typed: "0.009 in" }, span: { line: 22, column: 40 } },
          parts: { larger: { reading: left }, smaller: { reading: right } },
        },
      ],
    });
    const within = rule({ id: "sides", upper: "0.008 in", sizes: {}, judges: "difference" });
    const [, , out] = judged([left, right, both], { rules: register(rule(), within) });
    expect(out?.verdict).toMatchObject({ kind: "above" });
  });

  test("follows the readings that replace those it names", () => {
    const again = reading(["14.350 in"], { id: "R-b", supersedes: "R" });
    const state = all(again)[2];
    expect(state?.figure?.of).toEqual([left, again]);
    expect(state?.standing).toBe("out");
  });

  test("of values of its own points at the first of them", () => {
    const own = reading(["14.381 in", "14.372 in"], { rule: "sides" });
    const [state] = judged([own], { rules: register(sides) });
    expect(state?.figure?.of).toEqual([own]);
    expect(state?.values.map(({ value }) => value.span)).toEqual([own.values[0]?.span]);
  });

  test("has no verdict where nothing can be made of the values", () => {
    const [lone] = judged([reading(["14.381 in"], { rule: "sides" })], { rules: register(sides) });
    expect(lone).toMatchObject({ standing: "no rule", values: [] });
    const [, gone] = judged([left, both], { rules: register(sides) });
    expect(gone).toMatchObject({ standing: "no rule", values: [] });
    const [empty] = judged([reading([], { rule: "sides" })], { rules: register(sides) });
    expect(empty?.values).toEqual([]);
  });

  describe("is as uncertain as the two values together", () => {
    const kinds = (u: string, named: Partial<Reading> = { instrument: "gauge-1" }) => {
      const instruments = register(
        instrument({ uncertainty: quantity(u) }),
        instrument({ id: "rule-1" }),
      );
      const guarded = { ...sides, decision: "guarded by U" } as const;
      const other = reading(["14.372 in"], { id: "R", ...named });
      const rules = register(rule(), guarded);
      return judged([left, other, both], { instruments, rules })[2]?.values[0]?.assurance?.kind;
    };

    test("0.001 in is 0.001 in from the limit: U of 0.7 thou each is proven, of 0.8 is not", () => {
      // sqrt(2) x 0.0007 = 0.00099, sqrt(2) x 0.0008 = 0.00113.
      expect(kinds("0.0007 in")).toBe("proven");
      expect(kinds("0.0008 in")).toBe("not proven");
    });

    test("an instrument that could not prove even a difference of nothing leaves no room", () => {
      expect(kinds("0.0072 in")).toBe("no acceptance zone"); // sqrt(2) x 0.0072 = 0.0102
      expect(kinds("0.0070 in")).toBe("not proven");
    });

    test("and unknown where one of the two is", () => {
      expect(kinds("0.0007 in", { instrument: "rule-1" })).toBeUndefined();
      expect(kinds("0.0007 in", {})).toBeUndefined();
    });
  });
});

describe("a rule that is a table", () => {
  const cable = register(tableRule());
  const at = (typed: string) => ({ quantity: quantity(typed), from: "day" as const });
  const tension = (value: string, temperature: string) =>
    judged([reading([value], { rule: "cable", temperature: at(temperature) })], {
      rules: cable,
    })[0];

  test("is entered with the temperature of the reading", () => {
    expect(tension("57.2 lbf", "53 °F")).toMatchObject({
      standing: "within",
      limits: { lower: { typed: "57.2 lbf" }, upper: { typed: "65.2 lbf" } },
    });
    expect(tension("57.1 lbf", "53 °F")?.standing).toBe("out");
  });

  test("gives no verdict outside its rows, or where nothing enters it", () => {
    expect(tension("70 lbf", "91 °F")).toMatchObject({
      standing: "no rule",
      fault: { kind: "outside the table", by: "temperature", at: { typed: "91 °F" } },
    });
    const [bare] = judged([reading(["70 lbf"], { rule: "cable" })], { rules: cable });
    expect(bare).toMatchObject({ standing: "no rule", fault: { kind: "unknown size" } });
  });
});

test("a rule that wins over the one named is judged by in its place", () => {
  const general = rule({ id: "general", lower: "0.1 in", sizes: {}, authority: "published" });
  const sheet = rule({
    id: "sheet",
    lower: "0.2 in",
    sizes: {},
    authority: "drawing",
    over: { rule: "general", steps: ["HS-08"] },
  });
  const rules = register(general, sheet);
  const named = (step: string) => reading(["0.15 in"], { rule: "general", step });
  const [plain, won] = judged([named("HS-07"), { ...named("HS-08"), id: "R-2" }], { rules });
  expect(plain).toMatchObject({ rule: general, standing: "within" });
  expect(plain).not.toHaveProperty("over");
  expect(won).toMatchObject({ rule: sheet, over: general, standing: "out" });
});

describe("assurance", () => {
  const gauge = instrument({ uncertainty: quantity("0.002 in") });
  const instruments = register(gauge, instrument({ id: "rule-1" }));
  const assurances = (typed: string, named: string | undefined, decision = rule().decision) =>
    judged([reading([typed], named === undefined ? {} : { instrument: named })], {
      instruments,
      rules: register(rule({ decision })),
    })[0]?.values.map(({ assurance }) => assurance?.kind);

  test("is there when the instrument's uncertainty is known", () => {
    expect(assurances("0.14 in", "gauge-1")).toEqual(["proven"]);
    expect(assurances("0.14 in", "rule-1")).toEqual([undefined]);
    expect(assurances("0.14 in", undefined)).toEqual([undefined]);
  });

  test("follows the decision rule", () => {
    expect(assurances("0.123 in", "gauge-1")).toEqual(["proven"]);
    expect(assurances("0.123 in", "gauge-1", "guarded by U")).toEqual(["not proven"]);
    expect(assurances("0.100 in", "gauge-1", "guarded by U")).toEqual(["disproven"]);
  });

  test("is absent without a limit to hold the value against", () => {
    const { rule: _rule, ...bare } = reading(["0.14 in"], { instrument: "gauge-1" });
    expect(judged([bare], { instruments })[0]?.values[0]).not.toHaveProperty("assurance");
  });
});

test("how far outside is compared in one unit", () => {
  const [inches, millimetres] = [rule({ lower: "1 in" }), rule({ lower: "25.4 mm" })].map(
    (each) => judged([reading(["0.9 in"])], { rules: register(each) })[0]?.verdict,
  );
  if (!inches || !millimetres) throw new Error("both are outside");
  expect(isWorse(inches, millimetres)).toBe(false);
  expect(isWorse(millimetres, inches)).toBe(false);
  expect(isWorse(inches, { kind: "within" })).toBe(true);
  expect(isWorse({ kind: "within" }, inches)).toBe(false);
});
