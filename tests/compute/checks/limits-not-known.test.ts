import { expect, test } from "vitest";
import type { Reading } from "../../../src/model/measurement.ts";
import type { ToleranceRule } from "../../../src/model/tolerance.ts";
import { foundBy } from "../../support/found-by.ts";
import { day, register, smallBuild } from "../../support/small-build.ts";
import { quantity, reading, rule, sizes } from "../../support/small-measurements.ts";

const found = (rules: readonly ToleranceRule[], readings: readonly Reading[] = []) =>
  foundBy("limits-not-known", smallBuild({ rules: register(...rules), days: [day({ readings })] }));

test("ends typed the wrong way around are found once, at the rule", () => {
  const crossed = rule({ lower: "0.2 in", upper: "0.1 in" });
  const diagnostics = found([crossed], [reading(["0.15 in"]), reading(["0.15 in"], { id: "R-2" })]);
  expect(diagnostics).toHaveLength(1);
  expect(diagnostics[0]).toMatchObject({
    severity: "error",
    message:
      "the limits of rule `heads-3-32` cannot be worked out: the lower one, 0.2 in, lies above the upper one, 0.1 in",
    span: crossed.span,
    notes: [],
  });
});

test("equal ends leave one value, and that is allowed", () => {
  expect(found([rule({ lower: "0.2 in", upper: "0.2 in" })])).toEqual([]);
});

test("ends crossed by a reading's own size are found at the reading", () => {
  const [one] = found(
    [rule({ lower: "2 D", upper: "0.25 in" })],
    [reading(["0.2 in"], { sizes: sizes({ D: "3/16 in" }), private: true })],
  );
  expect(one?.message).toContain("the lower one, 0.375 in, lies above the upper one, 0.25 in");
  expect(one?.span.line).toBe(20);
  expect(one?.notes).toEqual(["the rule: content/rules.yaml:2"]);
  expect(one?.private).toBe(true);
});

test("a size or a drag of another kind is found", () => {
  const [size] = found(
    [rule({ lower: "D + 0.05 in" })],
    [reading(["0.2 in"], { sizes: sizes({ D: "5 lbf" }) })],
  );
  expect(size?.message).toContain("a force and a length do not go together");
  const [drag] = found(
    [rule({ addsDrag: true })],
    [reading(["0.14 in"], { drag: quantity("4 lbf·in") })],
  );
  expect(drag?.message).toContain("a length and a torque do not go together");
});

test("a size missing from the upper end is found; one missing from the first, reading reports", () => {
  const [one] = found([rule({ lower: "D", upper: "3 t" })], [reading(["0.14 in"])]);
  expect(one?.message).toBe(
    "the limits of rule `heads-3-32` cannot be worked out: nothing says what `t` is",
  );
  expect(found([rule({ lower: "2 t" })], [reading(["0.14 in"])])).toEqual([]);
});

test("a reading without a rule is not concerned", () => {
  const { rule: _rule, ...bare } = reading(["0.14 in"]);
  expect(found([rule()], [bare, reading(["0.14 in"])])).toEqual([]);
});

test("a multiple of nothing is no limit: at the rule, or at the reading that says so", () => {
  const [one] = found([rule({ lower: "2 D", sizes: { D: "0 in" } })], [reading(["0.2 in"])]);
  expect(one?.message).toContain("`D` is 0 in, and a multiple of it is no limit");
  expect(one?.help).toEqual(["correct `sizes`: `D` has to be above zero"]);
  const sized = reading(["0.2 in"], { sizes: sizes({ D: "-1/8 in" }) });
  const [other] = found([rule({ lower: "2 D" })], [sized]);
  expect(other?.message).toContain("`D` is -1/8 in");
  expect(other?.span).toEqual(sized.span);
  expect(found([rule({ lower: "D", sizes: { D: "0 in" } })], [reading(["0.2 in"])])).toEqual([]);
});
