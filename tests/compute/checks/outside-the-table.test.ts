import { expect, test } from "vitest";
import type { Deviation } from "../../../src/model/deviation.ts";
import type { Reading } from "../../../src/model/measurement.ts";
import { foundBy } from "../../support/found-by.ts";
import { tableRule } from "../../support/limit-tables.ts";
import { day, deviation, disposition, register, smallBuild } from "../../support/small-build.ts";
import { quantity, reading } from "../../support/small-measurements.ts";

const tension = (at: string, overrides: Partial<Reading> = {}) =>
  reading(["60 lbf"], {
    what: "cable tension",
    rule: "cable",
    temperature: { quantity: quantity(at), from: "reading" },
    ...overrides,
  });
const found = (readings: readonly Reading[], deviations: readonly Deviation[] = []) =>
  foundBy(
    "outside-the-table",
    smallBuild({ rules: register(tableRule()), days: [day({ readings, deviations })] }),
  );

test("a reading below the first row or above the last has no verdict", () => {
  const [cold, hot, ...more] = found([
    tension("36 °F"),
    tension("33 °C", { id: "R-2", at: "aft" }),
    tension("40 °F", { id: "R-3" }),
    tension("90 °F", { id: "R-4" }),
  ]);
  expect(more).toEqual([]);
  expect(cold).toMatchObject({
    severity: "finding",
    message:
      "cable tension at rib 4 row A cannot be judged: the temperature is 36 °F, and the table runs from 40 °F to 90 °F",
    notes: [
      "Elevator cable tension: content/rules.yaml:2",
      "limit of the manual: Builder's manual (2025), sheet 5-2",
    ],
    help: [
      "measure again where the table has rows, and name this one there as `supersedes: R-1`",
      "if the source has more rows, copy them into the rule",
      "if it stays as it is, record a deviation and name it here as `deviation:`",
    ],
  });
  expect(hot?.message).toContain("the temperature is 33 °C");
  expect(cold).not.toHaveProperty("private");
});

test("a temperature of the day is said to be that", () => {
  const temperature = { quantity: quantity("36 °F"), from: "day" } as const;
  const [one] = found([tension("36 °F", { temperature })]);
  expect(one?.notes[2]).toBe("the temperature is that of the day's `conditions`");
  expect(one?.help[1]).toBe(
    "if it was another where it was measured, write `temperature:` beside the reading",
  );
});

test("what a later reading replaces, or a decided deviation accounts for, is not found", () => {
  const again = tension("60 °F", { id: "R-2", supersedes: "R-1" });
  expect(found([tension("36 °F"), again])).toEqual([]);
  const named = [tension("36 °F", { deviation: "D-014" })];
  expect(found(named, [deviation({ disposition: disposition() })])).toEqual([]);
  expect(found(named, [deviation()])).toHaveLength(1);
});

test("it is private when the reading is, or its deviation", () => {
  expect(found([tension("36 °F", { private: true })])[0]?.private).toBe(true);
  const named = [tension("36 °F", { deviation: "D-014" })];
  expect(found(named, [deviation({ private: true })])[0]?.private).toBe(true);
});
