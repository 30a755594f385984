import { describe, expect, test } from "vitest";
import type { JudgedReading } from "../../src/compute/analysis.ts";
import type { Assurance } from "../../src/compute/judge.ts";
import { outcomeOf, unprovenValues } from "../../src/compute/outcome.ts";
import { deviation, disposition } from "../support/small-build.ts";
import { reading, rule } from "../support/small-measurements.ts";

const decided = deviation({ disposition: disposition() });

function judged(overrides: Partial<JudgedReading>, kinds: readonly Assurance["kind"][] = []) {
  const typed = reading(["0.14 in"]);
  const [value] = typed.values;
  if (!value) throw new Error("the reading has a value");
  return {
    reading: typed,
    rule: rule(),
    limits: {},
    values: kinds.map((kind) => ({
      value,
      verdict: { kind: "within" as const },
      assurance: { kind, probability: 0.9 },
    })),
    standing: "within" as const,
    ...overrides,
  };
}

describe("how a reading counts", () => {
  test.each([
    ["superseded", "replaced"],
    ["out", "out"],
    ["accounted for", "accounted for"],
    ["no rule", "undecided"],
    ["within", "within"],
  ] as const)("%s is %s", (standing, outcome) => {
    expect(outcomeOf(judged({ standing }))).toBe(outcome);
  });

  test("within a guarded rule, only what is proven counts as within", () => {
    const guarded = { rule: rule({ decision: "guarded by U" }) };
    expect(outcomeOf(judged(guarded, ["proven", "proven"]))).toBe("within");
    for (const kind of ["not proven", "no acceptance zone"] as const) {
      expect(outcomeOf(judged(guarded, ["proven", kind]))).toBe("undecided");
      expect(outcomeOf(judged({ ...guarded, deviation: decided }, [kind]))).toBe("accounted for");
      expect(outcomeOf(judged({ ...guarded, deviation: deviation() }, [kind]))).toBe("undecided");
    }
  });

  test("a simple rule does not ask for proof, and no rule for nothing", () => {
    expect(outcomeOf(judged({}, ["not proven"]))).toBe("within");
    const { rule: _rule, ...bare } = judged({}, ["not proven"]);
    expect(unprovenValues(bare)).toEqual([]);
  });

  test("a value of unknown uncertainty is not proven", () => {
    const [value] = judged({}, ["proven"]).values;
    if (!value) throw new Error("there is one value");
    const { assurance: _assurance, ...unknown } = value;
    const values = [unknown];
    expect(outcomeOf(judged({ rule: rule({ decision: "guarded by U" }), values }))).toBe(
      "undecided",
    );
  });
});
