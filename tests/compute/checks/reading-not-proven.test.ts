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
