import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { limitsOf } from "../../src/compute/limits.ts";
import type { ToleranceRule } from "../../src/model/tolerance.ts";
import { parseExpression } from "../../src/read/expression-syntax.ts";
import { tableRule } from "../support/limit-tables.ts";
import { quantity } from "../support/typed-quantity.ts";

type Part = Pick<ToleranceRule, "lower" | "upper" | "sizes" | "addsDrag">;

function rule(lower?: string, upper?: string, sizes: Record<string, string> = {}): Part {
  const bound = (text: string) => {
    const parsed = parseExpression(text, Object.keys(sizes));
    if (!parsed.ok) throw new Error(parsed.expected);
    return parsed.bound;
  };
  return {
    ...(lower === undefined ? {} : { lower: bound(lower) }),
    ...(upper === undefined ? {} : { upper: bound(upper) }),
    sizes: sizesOf(sizes),
    addsDrag: false,
  };
}

const sizesOf = (typed: Record<string, string>) =>
  new Map(Object.entries(typed).map(([name, text]) => [name, quantity(text)]));
const none = new Map();

test("sizes are filled in exactly", () => {
  const result = limitsOf(rule("1.3 D", "1.7 D", { D: "3/32 in" }), none);
  expect(result).toMatchObject({
    ok: true,
    limits: { lower: { typed: "0.121875 in" }, upper: { typed: "0.159375 in" } },
  });
});

test("a reading's own size wins over the rule's", () => {
  const result = limitsOf(rule("2 D", undefined, { D: "3/32 in" }), sizesOf({ D: "1/8 in" }));
  expect(result).toEqual({
    ok: true,
    limits: { lower: expect.objectContaining({ typed: "0.25 in" }) },
  });
});

test("a limit that is a plain quantity keeps its text", () => {
  const result = limitsOf(rule(undefined, "0.2500 in"), none);
  expect(result.ok && result.limits).toEqual({ upper: quantity("0.2500 in") });
});

test("without ends there are no limits", () => {
  expect(limitsOf(rule(), none)).toEqual({ ok: true, limits: {} });
});

describe("friction drag", () => {
  const torque = rule("50 lbf·in", "70 lbf·in");

  test("is added to both ends of a rule that adds it", () => {
    expect(limitsOf({ ...torque, addsDrag: true }, none, quantity("12 lbf·in"))).toMatchObject({
      limits: { lower: { typed: "62 lbf·in" }, upper: { typed: "82 lbf·in" } },
    });
  });

  test("is left alone by any other rule", () => {
    expect(limitsOf(torque, none, quantity("12 lbf·in"))).toMatchObject({
      limits: { lower: { typed: "50 lbf·in" }, upper: { typed: "70 lbf·in" } },
    });
  });

  test("has to be a torque", () => {
    expect(limitsOf({ ...torque, addsDrag: true }, none, quantity("12 in"))).toEqual({
      ok: false,
      fault: { kind: "wrong dimension", left: "torque", right: "length" },
    });
  });
});

describe("a table", () => {
  const cable = tableRule();
  const at = (temperature: string) => limitsOf(cable, sizesOf({ temperature }));

  test("is entered with a size, and runs in a straight line between its rows", () => {
    expect(at("53 °F")).toMatchObject({
      ok: true,
      limits: { lower: { typed: "57.2 lbf" }, upper: { typed: "65.2 lbf" } },
    });
  });

  test("has no limits outside its rows", () => {
    expect(at("91 °F")).toMatchObject({
      ok: false,
      fault: {
        kind: "outside the table",
        by: "temperature",
        at: { typed: "91 °F" },
        from: { typed: "40 °F" },
        to: { typed: "90 °F" },
      },
    });
  });

  test("wants to know what to enter it with, and that it is of the right kind", () => {
    const fault = { kind: "unknown size", name: "temperature" };
    expect(limitsOf(cable, none)).toEqual({ ok: false, fault });
    expect(at("40 in")).toEqual({
      ok: false,
      fault: { kind: "wrong dimension", left: "temperature", right: "length" },
    });
  });

  test("of nominal values may have a tolerance around it", () => {
    const { upper } = cable;
    if (!upper) throw new Error("the table has upper limits");
    const expression = {
      kind: "sum",
      left: upper.expression,
      right: { kind: "quantity", quantity: quantity("4 lbf") },
    } as const;
    const widened = { ...cable, upper: { typed: "table by temperature + 4 lbf", expression } };
    expect(limitsOf(widened, sizesOf({ temperature: "60 °F" }))).toMatchObject({
      limits: { lower: { typed: "60 lbf" }, upper: { typed: "72 lbf" } },
    });
  });
});

describe("what a builder wrote is told, not thrown", () => {
  test.each([
    ["2 D", undefined, { kind: "unknown size", name: "D" }],
    [undefined, "0.1 in + 2 D", { kind: "unknown size", name: "D" }],
    ["2 D - 0.1 in", undefined, { kind: "unknown size", name: "D" }],
    ["0.1 in + 3 lb", undefined, { kind: "wrong dimension", left: "length", right: "mass" }],
    ["2 (70 °F)", undefined, { kind: "wrong dimension", left: "temperature", right: "ratio" }],
    ["0.1 in", "3 lb", { kind: "wrong dimension", left: "length", right: "mass" }],
  ])("%s to %s", (lower, upper, fault) => {
    expect(limitsOf(rule(lower, upper), none)).toEqual({ ok: false, fault });
  });

  test("ends that are crossed", () => {
    expect(limitsOf(rule("1 in", "25 mm"), none)).toMatchObject({
      ok: false,
      fault: { kind: "crossed ends", lower: { typed: "1 in" }, upper: { typed: "25 mm" } },
    });
  });

  test("a fault of this program is still thrown", () => {
    // A quantity without a unit: no reader makes one.
    const of = { kind: "quantity", quantity: { typed: "?" } } as never;
    const expression = { kind: "multiple", factor: new Fraction(2), of } as const;
    expect(() => limitsOf({ ...rule(), lower: { typed: "?", expression } }, none)).toThrow(
      TypeError,
    );
  });
});
