import { expect, test } from "vitest";
import type { Reading } from "../../../src/model/measurement.ts";
import type { DecisionRule } from "../../../src/model/tolerance.ts";
import { foundBy } from "../../support/found-by.ts";
import {
  day,
  deviation,
  disposition,
  instrument,
  register,
  smallBuild,
  span,
} from "../../support/small-build.ts";
import { quantity, reading, rule } from "../../support/small-measurements.ts";

const instruments = register(
  instrument({ uncertainty: quantity("0.002 in") }),
  instrument({ id: "rule-1", uncertainty: quantity("0.05 in") }),
  instrument({ id: "caliper-9" }),
);

const found = (
  values: readonly string[],
  overrides: Partial<Reading> = { instrument: "gauge-1" },
  decision: DecisionRule = "guarded by U",
) =>
  foundBy(
    "reading-not-proven",
    smallBuild({
      instruments,
      rules: register(rule({ decision })),
      days: [
        day({
          readings: [reading(values, overrides)],
          deviations: [
            deviation({ id: "D-1", disposition: disposition() }),
            deviation({ id: "D-2", private: true }),
          ],
        }),
      ],
    }),
  );

test("within the limits, but by less than the guard", () => {
  const [one, ...more] = found(["0.14 in", "0.123 in", "0.122 in"]);
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: "finding",
    message:
      "shop head diameter at rib 4 row A is 0.123 in, within the limits, but that is not proven",
    label: "too near the limit for `gauge-1`",
    notes: [
      "Shop head diameter, 3/32 rivet: 0.121875 in (1.3 D) to 0.159375 in (1.7 D), guarded by U",
      "limit of the manual: Builder's manual (2025), sheet 5-2",
      "2 of 3 values are not proven",
    ],
  });
  expect(one?.help).toHaveLength(2);
});

test("a rule that decides simply, a proven value, and one outside are not found", () => {
  expect(found(["0.123 in"], { instrument: "gauge-1" }, "simple")).toEqual([]);
  expect(found(["0.14 in"])).toEqual([]);
  expect(found(["0.11 in"])).toEqual([]);
});

test("nothing is proven by an instrument too uncertain, of unknown uncertainty, or not named", () => {
  const labels = [{ instrument: "rule-1" }, { instrument: "caliper-9" }, {}].map(
    (overrides) => found(["0.14 in"], overrides)[0]?.label,
  );
  expect(labels).toEqual([
    "`rule-1` is too uncertain for these limits",
    "the uncertainty of `caliper-9` is not known",
    "no instrument is named",
  ]);
  expect(found(["0.14 in"], {})[0]?.help[0]).toBe(
    "name the instrument as `with:`, and its `uncertainty` in `instruments.yaml`",
  );
});

test("a decided deviation accounts for it; an undecided one does not", () => {
  expect(found(["0.123 in"], { instrument: "gauge-1", deviation: "D-1" })).toEqual([]);
  const [one] = found(["0.123 in"], { instrument: "gauge-1", deviation: "D-2" });
  expect(one?.private).toBe(true);
});

test("a figure names its two values and their instruments", () => {
  const sides = rule({
    id: "sides",
    upper: "0.010 in",
    sizes: {},
    judges: "difference",
    decision: "guarded by U",
    over: { rule: "heads-3-32" },
  });
  const of = ["L", "R"].map((id) => ({ reading: id, span: span() }));
  const withSecond = (named: Partial<Reading>) => {
    const readings = [
      reading(["1.009 in"], { id: "L", at: "left", rule: "none", instrument: "gauge-1" }),
      reading(["1.000 in"], { id: "R", rule: "none", ...named }),
      reading([], { id: "B", of }),
    ];
    const build = smallBuild({
      instruments,
      rules: register(rule(), sides),
      days: [day({ readings })],
    });
    return foundBy("reading-not-proven", build)[0];
  };
  const labels = [
    withSecond({ instrument: "gauge-1" }),
    withSecond({ instrument: "rule-1" }),
    withSecond({ instrument: "caliper-9" }),
    withSecond({}),
  ];
  expect(labels.map((one) => one?.label)).toEqual([
    "too near the limit for `gauge-1`",
    "`gauge-1` and `rule-1` are too uncertain for these limits",
    "the uncertainty of `gauge-1` and `caliper-9` is not known",
    "no instrument is named",
  ]);
  expect(labels[0]?.message).toBe(
    "difference of shop head diameter at rib 4 row A is 0.009 in, within the limits, but that is not proven",
  );
  expect(labels[0]?.notes.slice(2)).toEqual([
    "it wins over `heads-3-32`: it is given for this step, the other in general",
    "from 1.009 in at left: content/days/2026-03-14.md:20",
    "to 1.000 in at rib 4 row A: content/days/2026-03-14.md:20",
  ]);
});
