import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { DimensionError } from "../../src/model/quantity.ts";
import { quantity } from "../support/typed-quantity.ts";

const limits = { lower: quantity("20 lbf·in"), upper: quantity("25 lbf·in") };

describe("judge", () => {
  test.each([
    ["20 lbf·in", "within"],
    ["25 lbf·in", "within"],
    ["2.8 N·m", "within"],
    ["19.999999999 lbf·in", "below"],
    ["25.000000001 lbf·in", "above"],
  ])("%s against 20 to 25 lbf·in is %s", (value, kind) => {
    expect(judge(quantity(value), limits).kind).toBe(kind);
  });

  test.each([
    ["26 lbf·in", "above", "25 lbf·in", "1"],
    ["18 lbf·in", "below", "20 lbf·in", "2"],
    ["3 lbf·ft", "above", "25 lbf·in", "11"],
  ])("%s is %s %s by exactly %s", (value, kind, limit, by) => {
    const verdict = judge(quantity(value), limits);
    expect(verdict).toMatchObject({ kind, limit: { typed: limit } });
    expect(verdict.kind !== "within" && verdict.by.equals(by)).toBe(true);
  });

  test("how far is told in the limit's unit, and not moved by a temperature's offset", () => {
    const cold = judge(quantity("20 °C"), { lower: quantity("70 °F") });
    expect(cold.kind === "below" && cold.by.equals(2)).toBe(true);
  });

  test("an absent end is never broken", () => {
    expect(judge(quantity("1000 in"), { lower: quantity("1 in") }).kind).toBe("within");
    expect(judge(quantity("-1000 in"), { upper: quantity("1 in") }).kind).toBe("within");
    expect(judge(quantity("1 in"), {}).kind).toBe("within");
  });

  test("different things are a fault of the program", () => {
    expect(() => judge(quantity("1 in"), limits)).toThrow(DimensionError);
  });
});
