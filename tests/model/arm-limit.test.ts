import { describe, expect, test } from "vitest";
import { type ArmLimit, armAt, armLimitText, weightsOf } from "../../src/model/arm-limit.ts";
import { quantity } from "../support/typed-quantity.ts";

const corners = (...typed: readonly (readonly [weight: string, arm: string])[]): ArmLimit => ({
  kind: "corners",
  corners: typed.map(([weight, arm]) => ({ weight: quantity(weight), arm: quantity(arm) })),
});
const constant: ArmLimit = { kind: "constant", arm: quantity("63 in") };
const line = corners(["900 lb", "60 in"], ["1200 lb", "60 in"], ["1500 lb", "63 in"]);

describe("where a limit lies", () => {
  test("the same at every weight", () => {
    expect(armAt(constant, quantity("1 lb"), "aft")?.typed).toBe("63 in");
    expect(weightsOf(constant)).toBeUndefined();
  });

  test.each([
    ["900 lb", "60 in"],
    ["1100 lb", "60 in"],
    ["1200 lb", "60 in"],
    ["1300 lb", "61 in"],
    ["1350 lb", "61.5 in"],
    ["1500 lb", "63 in"],
  ])("on the line between the corners: at %s, %s", (weight, arm) => {
    expect(armAt(line, quantity(weight), "forward")?.typed).toBe(arm);
  });

  test("exactly, where no decimal ends", () => {
    expect(armAt(line, quantity("1301 lb"), "forward")?.amount.toFraction()).toBe("6101/100");
    expect(armAt(line, quantity("600 kg"), "forward")?.amount.toFraction()).toMatch(/^\d+\/\d+$/);
  });

  test("nowhere below the lowest corner and above the highest", () => {
    expect(armAt(line, quantity("899.9 lb"), "forward")).toBeUndefined();
    expect(armAt(line, quantity("1500.1 lb"), "forward")).toBeUndefined();
    expect(weightsOf(line)).toMatchObject({
      lowest: { typed: "900 lb" },
      highest: { typed: "1500 lb" },
    });
  });

  test("at a step it is the wider of the two, whichever side it closes", () => {
    const step = corners(
      ["900 lb", "60 in"],
      ["1200 lb", "60 in"],
      ["1200 lb", "62 in"],
      ["1500 lb", "62 in"],
    );
    expect(armAt(step, quantity("1200 lb"), "forward")?.typed).toBe("60 in");
    expect(armAt(step, quantity("1200 lb"), "aft")?.typed).toBe("62 in");
    expect(armAt(step, quantity("1200.1 lb"), "forward")?.typed).toBe("62 in");
  });

  test("in the unit of its first corner, whatever the others are typed in", () => {
    const mixed = corners(["900 lb", "60 in"], ["1500 lb", "1600.2 mm"]);
    expect(armAt(mixed, quantity("1200 lb"), "forward")?.typed).toBe("61.5 in");
  });

  test("a limit without a single corner is none", () => {
    expect(armAt(corners(), quantity("1000 lb"), "aft")).toBeUndefined();
    expect(weightsOf(corners())).toBeUndefined();
  });
});

test("its text is as typed", () => {
  expect(armLimitText(constant)).toBe("63 in");
  expect(armLimitText(line)).toBe("60 in at 900 lb, 60 in at 1200 lb, 63 in at 1500 lb");
});
