// Quantities, rules and readings as a builder types them.

import type { Reading } from "../../src/model/measurement.ts";
import type { Quantity } from "../../src/model/quantity.ts";
import type { Bound, ToleranceRule } from "../../src/model/tolerance.ts";
import { parseExpression } from "../../src/read/expression-syntax.ts";
import { parseQuantity } from "../../src/read/quantity-syntax.ts";
import { someDay, span } from "./small-build.ts";

/** A quantity as typed. Throws on what is not one: the test is wrong. */
export function quantity(typed: string): Quantity {
  const parsed = parseQuantity(typed);
  if (!parsed.ok) throw new Error(`${typed}: expected ${parsed.expected}`);
  return parsed.quantity;
}

/** Sizes by name: `sizes({ D: "3/32 in" })`. */
export function sizes(typed: Readonly<Record<string, string>>): ReadonlyMap<string, Quantity> {
  return new Map(Object.entries(typed).map(([name, text]) => [name, quantity(text)]));
}

/** One side of a limit as typed, in terms of `D` and `t` where need be. */
export function bound(typed: string): Bound {
  const parsed = parseExpression(typed, ["D", "t"]);
  if (!parsed.ok) throw new Error(`${typed}: expected ${parsed.expected}`);
  return parsed.bound;
}

/** A rule of the manual for shop heads of 3/32 rivets, 1.3 D to 1.7 D. */
export function rule(
  overrides: Partial<Omit<ToleranceRule, "lower" | "upper" | "sizes">> & {
    readonly lower?: string;
    readonly upper?: string;
    readonly sizes?: Readonly<Record<string, string>>;
  } = {},
): ToleranceRule {
  const { lower, upper, sizes: named = { D: "3/32 in" }, ...rest } = overrides;
  const open = lower === undefined && upper === undefined;
  return {
    id: "heads-3-32",
    title: "Shop head diameter, 3/32 rivet",
    authority: "manual",
    citation: { document: "Builder's manual", edition: "2025", place: "sheet 5-2" },
    ...(open ? { lower: bound("1.3 D"), upper: bound("1.7 D") } : {}),
    ...(lower === undefined ? {} : { lower: bound(lower) }),
    ...(upper === undefined ? {} : { upper: bound(upper) }),
    sizes: sizes(named),
    decision: "simple",
    addsDrag: false,
    advice: [],
    span: span({ file: "content/rules.yaml", line: 2 }),
    ...rest,
  };
}

/** A reading of a shop head under the rule `heads-3-32`; `values` are as typed. */
export function reading(
  values: readonly string[],
  overrides: Partial<Omit<Reading, "values">> = {},
): Reading {
  return {
    id: "R-1",
    date: someDay,
    what: "shop head diameter",
    at: "rib 4 row A",
    rule: "heads-3-32",
    values: values.map((typed, index) => ({
      quantity: quantity(typed),
      span: span({ line: 20, column: 10 * index + 1 }),
    })),
    sizes: new Map(),
    private: false,
    span: span({ line: 20 }),
    ...overrides,
  };
}
