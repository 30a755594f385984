import { boundValue } from "../compute/limits.ts";
import type { Input, Range, ReadInput, Words } from "../compute/reckon/sum.ts";
import { isCalendarDate } from "../model/calendar.ts";
import type { Quantity } from "../model/quantity.ts";
import type { Expression } from "../model/tolerance.ts";
import { type Dimension, unitNamed, unitNames } from "../model/unit.ts";
import { amountAt } from "../read/amount-syntax.ts";
import { parseCalendarSpan } from "../read/calendar-span-syntax.ts";
import { parseDensity } from "../read/density-syntax.ts";
import { parseExpression } from "../read/expression-syntax.ts";
import { parseLoads } from "../read/load-syntax.ts";
import { nearestName } from "../read/nearest-name.ts";
import { parseQuantities, parseQuantity } from "../read/quantity-syntax.ts";
import { parseStretches } from "../read/stretch-syntax.ts";
import type { SyntaxFault } from "../read/syntax-fault.ts";

/** What is wrong with one value, and where in it. */
export interface ValueFault {
  readonly ok: false;
  readonly message: Words;
  readonly help: readonly string[];
  /** In characters from the start of the value; the first is 0. */
  readonly offset: number;
  /** At least 1. */
  readonly length: number;
}

export type ReadValue =
  | { readonly ok: true; readonly read: ReadInput }
  | ValueFault
  /** In terms of an input that is missing or faulty, of which a fault has been said already. */
  | { readonly ok: "unknown" };

/**
 * Reads one value of a sum, of the kind that its input declares.
 * @param sizes Lengths of other inputs by input name, for values in terms of them.
 */
export function readValue(
  name: string,
  input: Input,
  text: string,
  sizes: ReadonlyMap<string, Quantity>,
): ReadValue {
  const fault = (
    message: Words,
    help: string[] = [],
    offset = 0,
    length = text.length,
  ): ValueFault => ({
    ok: false,
    message,
    help,
    offset,
    length: Math.max(1, length),
  });
  const syntax = (what: string, { expected, help, offset, length }: SyntaxFault) =>
    fault(`\`${name}\` is not ${what}: expected ${expected}`, [...help], offset, length);
  const read = (value: ReadInput): ReadValue => ({ ok: true, read: value });
  if (!text.trim()) return fault(`\`${name}\` is empty`);

  switch (input.kind) {
    case "any quantity": {
      const parsed = parseQuantity(text);
      if (!parsed.ok) return syntax("a value", parsed);
      return read({ kind: input.kind, value: parsed.quantity });
    }
    case "quantity": {
      const parsed = parseQuantity(text);
      if (!parsed.ok) return syntax(one(input.dimension), parsed);
      const { quantity } = parsed;
      const { dimension } = quantity.unit;
      if (dimension !== input.dimension)
        return fault(`\`${name}\` is ${one(dimension)}, expected ${one(input.dimension)}`);
      if (!within(quantity.amount.valueOf(), input.range))
        return fault(`\`${name}\` has to be ${input.range}, but is ${quantity.typed}`);
      return read({ kind: input.kind, value: quantity });
    }
    case "length in sizes": {
      const parsed = parseExpression(text, Object.keys(input.sizes));
      if (!parsed.ok) return syntax("a length", parsed);
      const { expression } = parsed.bound;
      const known = new Map<string, Quantity>();
      for (const [size, other] of Object.entries(input.sizes)) {
        const value = sizes.get(other);
        if (value) known.set(size, value);
        else if (speaksOf(expression, size)) return { ok: "unknown" };
      }
      const value = boundValue(expression, known);
      if (!value.ok) {
        const own = Object.entries(input.sizes).map(
          ([size, other]) => `\`${size}\`, the \`${other}\``,
        );
        return value.fault.kind === "wrong dimension"
          ? fault(
              `\`${name}\` puts ${one(value.fault.left)} and ${one(value.fault.right)} together`,
            )
          : fault(
              `\`${name}\` speaks of \`${"name" in value.fault ? value.fault.name : value.fault.by}\`, which is not known here`,
              [`write a length, or one in terms of ${own.join(" or ")}`],
            );
      }
      const { quantity } = value;
      if (quantity.unit.dimension !== "length")
        return fault(
          `\`${name}\` is ${one(quantity.unit.dimension)}, expected a length`,
          /\dd\b|\d\s+d\b/.test(text) ? ["`d` is a day: write the diameter as `D`"] : [],
        );
      if (quantity.amount.lte(0)) return fault(`\`${name}\` has to be above zero, but is ${text}`);
      return read({ kind: input.kind, value: { ...quantity, typed: text.trim() } });
    }
    case "quantities": {
      const parsed = parseQuantities(text);
      if (!parsed.ok) return syntax(`a list of ${input.dimension}s`, parsed);
      for (const { quantity, offset, length } of parsed.quantities) {
        const { dimension } = quantity.unit;
        if (dimension !== input.dimension)
          return fault(
            `\`${quantity.typed}\` is ${one(dimension)}, expected ${one(input.dimension)}`,
            [],
            offset,
            length,
          );
        if (!within(quantity.amount.valueOf(), input.range))
          return fault(`\`${quantity.typed}\` has to be ${input.range}`, [], offset, length);
      }
      return read({ kind: input.kind, value: parsed.quantities.map(({ quantity }) => quantity) });
    }
    case "stretches": {
      const parsed = parseStretches(text);
      if (!parsed.ok) return syntax("a list of stretches", parsed);
      return read({ kind: input.kind, value: parsed.stretches });
    }
    case "number": {
      const amount = amountAt(text, text.length - text.trimStart().length);
      if (amount && !amount.ok) return syntax("a plain number", amount);
      if (!amount || text.slice(amount.end).trim())
        return fault(`\`${name}\` is not a plain number`, ["write it without a unit"]);
      if (input.whole && amount.amount.d !== 1n)
        return fault(`\`${name}\` has to be a whole number, but is ${text.trim()}`);
      if (!within(amount.amount.valueOf(), input.range))
        return fault(`\`${name}\` has to be ${input.range}, but is ${text.trim()}`);
      return read({ kind: input.kind, value: amount.amount });
    }
    case "choice": {
      const wanted = text.trim().toLowerCase();
      const choice = input.choices.find((each) => each.toLowerCase() === wanted);
      if (choice !== undefined) return read({ kind: input.kind, value: choice });
      const nearest = nearestName(wanted, input.choices);
      return fault(`\`${text}\` is not a \`${name}\` that is known`, [
        ...(nearest === undefined ? [] : [`did you mean \`${nearest}\`?`]),
        `it is one of ${input.choices.map((each) => `\`${each}\``).join(", ")}`,
      ]);
    }
    case "unit": {
      const unit = unitNamed(text);
      if (unit) return read({ kind: input.kind, value: unit });
      const nearest = nearestName(text, unitNames);
      const help = nearest === undefined ? [] : [`did you mean \`${nearest}\`?`];
      return fault(`\`${text}\` is not a unit that is known`, help);
    }
    case "date": {
      const date = text.trim();
      if (isCalendarDate(date)) return read({ kind: input.kind, value: date });
      return fault(`\`${text}\` is not a day of the calendar`, ["write year, month and day"]);
    }
    case "calendar span": {
      const parsed = parseCalendarSpan(text);
      if (!parsed.ok) return syntax("a stretch of the calendar", parsed);
      return read({ kind: input.kind, value: parsed.span });
    }
    case "density": {
      const parsed = parseDensity(text);
      if (!parsed.ok) return syntax("a density", parsed);
      return read({ kind: input.kind, value: parsed.density });
    }
    case "loads": {
      const parsed = parseLoads(text);
      if (!parsed.ok) return syntax("a weight at an arm", parsed);
      return read({ kind: input.kind, value: parsed.loads });
    }
  }
}

function one(dimension: Dimension): string {
  return /^[aeiou]/.test(dimension) ? `an ${dimension}` : `a ${dimension}`;
}

function within(amount: number, range: Range): boolean {
  if (range === "any") return true;
  return range === "above zero" ? amount > 0 : amount >= 0;
}

function speaksOf(expression: Expression, size: string): boolean {
  switch (expression.kind) {
    case "quantity":
      return false;
    case "size":
      return expression.name === size;
    case "multiple":
      return speaksOf(expression.of, size);
    case "table":
      return expression.by === size;
    default:
      return speaksOf(expression.left, size) || speaksOf(expression.right, size);
  }
}
