import { describe, expect, test } from "vitest";
import type { Build } from "../../../src/model/build.ts";
import type { Reading } from "../../../src/model/measurement.ts";
import { foundBy } from "../../support/found-by.ts";
import { tableRule } from "../../support/limit-tables.ts";
import { day, deviation, disposition, register, smallBuild } from "../../support/small-build.ts";
import { quantity, reading, rule } from "../../support/small-measurements.ts";

const found = (readings: readonly Reading[], overrides: Partial<Build> = {}) =>
  foundBy(
    "reading-out-of-limits",
    smallBuild({
      rules: register(rule()),
      days: [day({ readings, deviations: [deviation()] })],
      ...overrides,
    }),
  );

test("names the value furthest outside, the limit, and who says so", () => {
  const [one, ...more] = found([reading(["0.14 in", "0.12 in", "0.11 in", "0.16 in"])]);
  expect(more).toEqual([]);
  expect(one).toMatchObject({
    severity: "finding",
    message: "shop head diameter at rib 4 row A is 0.11 in, below the limit of 0.121875 in",
    label: "0.011875 in below the limit",
    span: { line: 20, column: 21 },
    notes: [
      "Shop head diameter, 3/32 rivet: 0.121875 in (1.3 D) to 0.159375 in (1.7 D)",
      "limit of the manual: Builder's manual (2025), sheet 5-2",
      "3 of 4 values are outside",
    ],
    help: [
      "if it was put right, or measured wrong, measure again and name this one there as `supersedes: R-1`",
      "if it stays as it is, record a deviation and name it here as `deviation:`",
    ],
  });
  expect(one).not.toHaveProperty("private");
});

test.each([
  ["lower", "2 D", "0.1 in", "at least 0.1875 in (2 D)"],
  ["upper", "0.25 in", "0.3 in", "at most 0.25 in"],
])("a limit at the %s end alone", (end, typed, value, text) => {
  const rules = register(rule({ [end]: typed }));
  const [one] = found([reading([value])], { rules });
  expect(one?.notes[0]).toBe(`Shop head diameter, 3/32 rivet: ${text}`);
});

test("a published rule never passes for the drawing's", () => {
  const published = rule({ authority: "published", citation: { document: "AC 43.13-1B" } });
  const [one] = found([reading(["0.1 in"])], { rules: register(published) });
  expect(one?.notes[1]).toBe("published limit, not the drawing's: AC 43.13-1B");
});

test("what is within, replaced, or accounted for is not found", () => {
  expect(found([reading(["0.14 in"])])).toEqual([]);
  const again = reading(["0.14 in"], { id: "R-2", supersedes: "R-1" });
  expect(found([reading(["0.1 in"]), again])).toEqual([]);
  const decided = deviation({ disposition: disposition() });
  const readings = [reading(["0.1 in"], { deviation: "D-014" })];
  expect(found([], { days: [day({ readings, deviations: [decided] })] })).toEqual([]);
});

test("an undecided deviation is named", () => {
  const [one] = found([reading(["0.1 in"], { deviation: "D-014" })]);
  expect(one?.help[1]).toBe("deviation `D-014` accounts for it once it has a disposition");
});

test("a successor without a rule is named", () => {
  const { rule: _rule, ...bare } = reading(["0.14 in"], { id: "R-2", supersedes: "R-1" });
  const [one] = found([reading(["0.1 in"]), bare]);
  expect(one?.notes[2]).toBe(
    "reading `R-2` replaces it but names no rule, so nothing shows that it is put right: content/days/2026-03-14.md:20",
  );
});

describe("a torque above its limit", () => {
  const torque = rule({
    id: "torque",
    lower: "20 lbf·in",
    upper: "25 lbf·in",
    addsDrag: true,
    advice: ["dry threads are meant"],
  });
  const wrench = (typed: string, overrides: Partial<Reading> = {}) =>
    found([reading([typed], { rule: "torque", ...overrides })], { rules: register(torque) })[0];

  test("asks for the drag, and notes what the rule has to say", () => {
    expect(wrench("31 lbf·in")?.help[0]).toBe(
      "if the wrench reading includes friction drag, record the drag beside it as `drag:`",
    );
    expect(wrench("31 lbf·in")?.notes[2]).toBe("dry threads are meant");
  });

  test("does not where the drag is there, or the torque too low", () => {
    const drag = quantity("4 lbf·in");
    expect(wrench("31 lbf·in", { drag })?.help.join()).not.toContain("drag beside it");
    expect(wrench("10 lbf·in")?.help.join()).not.toContain("drag beside it");
  });
});

test("it is private when the reading is, or what its notes name", () => {
  const hidden = deviation({ private: true });
  const readings = [reading(["0.1 in"], { deviation: "D-014" })];
  const days = [day({ readings, deviations: [hidden] })];
  expect(found([], { days })[0]?.private).toBe(true);
  expect(found([reading(["0.1 in"], { private: true })])[0]?.private).toBe(true);
});

test("how far outside is left out where no short decimal says it", () => {
  const [short] = found([reading(["0.12 in"])]);
  expect(short?.label).toBe("0.001875 in below the limit");
  // 3 mm is 0.11811… in, which is no decimal that ends.
  const [mixed] = found([reading(["3 mm"])]);
  expect(mixed?.label).toBe("below the limit");
});

test("a figure names the two values that it is made of", () => {
  const range = rule({ id: "range", upper: "0.003 in", sizes: {}, judges: "range" });
  const row = reading(["0.750 in", "0.755 in", "0.751 in"], { rule: "range", at: "row A" });
  const [one] = found([row], { rules: register(range) });
  expect(one?.message).toBe(
    "range of shop head diameter at row A is 0.005 in, above the limit of 0.003 in",
  );
  expect(one?.notes.slice(2)).toEqual([
    "from 0.755 in at row A: content/days/2026-03-14.md:20",
    "to 0.750 in at row A: content/days/2026-03-14.md:20",
  ]);
});

test("a rule that wins over the one named says why", () => {
  const general = rule({ id: "general", authority: "published" });
  const sheet = rule({ id: "sheet", lower: "0.2 in", sizes: {}, over: { rule: "general" } });
  const [one] = found([reading(["0.15 in"], { rule: "general" })], {
    rules: register(general, sheet),
  });
  expect(one?.notes[2]).toBe(
    "it wins over `general`: a limit of the manual comes before a published one",
  );
});

test("limits of a table say what it was entered with", () => {
  const temperature = { quantity: quantity("53 °F"), from: "day" } as const;
  const [one] = found([reading(["50 lbf"], { rule: "cable", temperature })], {
    rules: register(tableRule()),
  });
  expect(one?.notes[0]).toBe("Elevator cable tension: 57.2 lbf to 65.2 lbf at 53 °F");
});
