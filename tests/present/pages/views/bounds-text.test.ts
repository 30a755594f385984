import { expect, test } from "vitest";
import { boundsText } from "../../../../src/present/pages/views/bounds-text.ts";
import { tableRule } from "../../../support/limit-tables.ts";
import { bound } from "../../../support/small-measurements.ts";

const text = (given: { lower?: string; upper?: string; nominal?: string }) =>
  boundsText(
    Object.fromEntries(Object.entries(given).map(([side, typed]) => [side, bound(typed)])),
  );

test.each([
  [{ lower: "1.3 D", upper: "1.7 D" }, "1.3 D to 1.7 D"],
  [{ lower: "2 D" }, "at least 2 D"],
  [{ upper: "0.060 in" }, "at most 0.060 in"],
  [{}, "no limit"],
  [{ nominal: "0.096 in" }, "0.096 in, no limits"],
  [
    { nominal: "1.5 deg", lower: "1.5 deg - 0.3 deg", upper: "1.5 deg + 0.3 deg" },
    "1.5 deg ± 0.3 deg",
  ],
  [
    { nominal: "96.250 in", lower: "96.250 in - 0.030 in", upper: "96.250 in + 0.000 in" },
    "96.250 in + 0.000 in, − 0.030 in",
  ],
  [{ nominal: "1 in", lower: "0.9 in" }, "1 in, at least 0.9 in"],
])("%j is %s", (given, expected) => {
  expect(text(given)).toBe(expected);
});

test("a table says by what, and from where to where; with a tolerance around it where it has one", () => {
  const cable = tableRule();
  expect(boundsText(cable)).toBe("by temperature, 40 °F to 90 °F");
  const { lower, upper, ...rest } = cable;
  const nominal = lower && { ...lower };
  if (!nominal || !upper) throw new Error("the table has both limits");
  const typed = (sign: string) => ({ ...nominal, typed: `${nominal.typed} ${sign} 4 lbf` });
  expect(boundsText({ ...rest, nominal, lower: typed("-"), upper: typed("+") })).toBe(
    "by temperature, 40 °F to 90 °F, ± 4 lbf",
  );
});

test("what is judged stands before the limits", () => {
  expect(boundsText({ upper: bound("0.02 in"), judges: "range" })).toBe("range at most 0.02 in");
  expect(boundsText(tableRule(undefined, { judges: "difference" }))).toBe(
    "difference by temperature, 40 °F to 90 °F",
  );
});
