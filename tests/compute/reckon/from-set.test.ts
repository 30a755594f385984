import { expect, test } from "vitest";
import { fromSet, sourceText } from "../../../src/compute/reckon/from-set.ts";
import { quantity } from "../../support/typed-quantity.ts";

test("sizes are filled in", () => {
  const set = fromSet("pitch-3d-navy", { D: quantity("1/8 in") });
  expect(set?.lower?.amount.valueOf()).toBe(0.375);
  expect(set?.lower?.unit.symbol).toBe("in");
});

test("a case that the set has no row for", () => {
  expect(fromSet("driven-head-mil", { of: "height", D: quantity("3/16 in") })).toBeUndefined();
});

test("a set that is not shipped is a fault of the program", () => {
  expect(() => fromSet("pitch-9d", {})).toThrow(RangeError);
});

test("a source says how it was seen", () => {
  const citation = { document: "TM 1", place: "table 2" };
  expect(sourceText(citation)).toBe("TM 1, table 2");
  expect(sourceText({ ...citation, status: "secondary" })).toBe(
    "TM 1, table 2, as quoted by others",
  );
  expect(sourceText({ ...citation, status: "memory" })).toBe("TM 1, table 2, not read in a source");
  expect(sourceText({ document: "TM 1", place: "as quoted by others", status: "secondary" })).toBe(
    "TM 1, as quoted by others",
  );
});
