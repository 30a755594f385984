import type Fraction from "fraction.js";
import { exactText, type Quantity } from "../model/quantity.ts";
import { type Unit, unitNamed, unitNames } from "../model/unit.ts";
import { type Amount, amountAt } from "./amount-syntax.ts";
import { nearestName } from "./nearest-name.ts";
import { partSizeAt } from "./part-size-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

/** What is being read: `dash` also takes `-4` for a rivet, `tolerance` also takes `±0.015 in`. */
export type QuantityContext = "dash" | "tolerance";

export type ParsedQuantity = { readonly ok: true; readonly quantity: Quantity } | SyntaxFault;

/** One value of a list, and where it was typed in the text. */
export interface PlacedQuantity {
  readonly quantity: Quantity;
  readonly offset: number;
  readonly length: number;
}

export type ParsedQuantities =
  | { readonly ok: true; readonly quantities: readonly PlacedQuantity[] }
  | SyntaxFault;

/**
 * Reads one value with its unit: `0.1250 in`, `.125"`, `3/32 in`, `1 3/16 in`, `5 ft 3 in`,
 * `No. 30`, `letter F drill`, `AD4`, `31 lbf·in`, `-40 °F`, `12° 30'`. The text is kept as
 * typed, less blanks around it; the amount is exact.
 * @example parseQuantity("3/32 in") // { ok: true, quantity: { typed: "3/32 in", … } }
 */
export function parseQuantity(text: string, context?: QuantityContext): ParsedQuantity {
  const typed = text.trim();
  const start = text.indexOf(typed);
  if (!typed) return syntaxFault("a number with its unit", 0, text.length);

  const value = valueAt(text, start, start + typed.length, context);
  return value.ok
    ? { ok: true, quantity: { typed, amount: value.amount, unit: value.unit } }
    : value;
}

/**
 * Reads one value or several: `0.19 in`, `0.141 in, 0.140 in`, `0.141, 0.140 in` and
 * `[0.141, 0.140, 0.143] in`. Either each has its own unit, or one stands behind the last.
 * @returns The values in the order typed, each with its place.
 */
export function parseQuantities(text: string): ParsedQuantities {
  const bracketed = /^(\s*\[)([^[\]]*)\](.*)$/su.exec(text);
  const inside = bracketed?.[2] ?? text;
  const begin = bracketed?.[1]?.length ?? 0;
  const behind = bracketed?.[3] ?? "";
  if (!bracketed && /[[\]]/.test(text))
    return syntaxFault(
      "a list between one `[` and one `]`",
      text.search(/[[\]]/),
      1,
      "write `[0.141, 0.140] in`",
    );

  const items = listItems(inside, begin);
  const empty = items.find(({ typed }) => !typed);
  if (empty)
    return syntaxFault(
      "a number with its unit",
      Math.max(0, Math.min(empty.offset, text.length - 1)),
      1,
    );

  let shared: { readonly unit: Unit; readonly typed: string } | undefined;
  if (behind.trim()) {
    const offset = text.length - behind.trimStart().length;
    const unit = unitIn(text, offset, offset + behind.trim().length);
    if ("ok" in unit) return unit;
    shared = { unit, typed: behind.trim() };
  }

  const quantities: PlacedQuantity[] = [];
  for (const { typed, offset } of items.toReversed()) {
    const amount = amountAt(text.slice(0, offset + typed.length), offset);
    const bare = amount?.ok && amount.end === offset + typed.length ? amount : undefined;
    if (bare && shared) {
      const quantity = {
        typed: `${typed} ${shared.typed}`,
        amount: bare.amount,
        unit: shared.unit,
      };
      quantities.unshift({ quantity, offset, length: typed.length });
      continue;
    }
    const value = valueAt(text, offset, offset + typed.length);
    if (!value.ok) return bracketed && typed.includes(",") ? withBlankAdvised(value) : value;
    if (shared && (behind.trim() || quantities.some(({ length }, index) => isBare(index, length))))
      return syntaxFault(
        "either one unit behind the list or a unit on each value",
        offset,
        typed.length,
        "write `[0.141, 0.140] in` or `0.141 in, 0.140 in`",
      );
    quantities.unshift({
      quantity: { typed, amount: value.amount, unit: value.unit },
      offset,
      length: typed.length,
    });
    const unit = amount?.ok ? text.slice(amount.end, offset + typed.length).trim() : "";
    if (quantities.length === 1 && unit) shared = { unit: value.unit, typed: unit };
  }
  return { ok: true, quantities };

  // A value whose text is longer than its place took the unit of the list.
  function isBare(index: number, length: number): boolean {
    return (quantities[index]?.quantity.typed.length ?? 0) > length;
  }
}

function withBlankAdvised(fault: SyntaxFault): SyntaxFault {
  return { ...fault, help: [...fault.help, "between two values put a blank behind the comma"] };
}

// Splits at commas and semicolons. A comma between two digits separates only when the number
// before it has a decimal point already; otherwise it may be a decimal comma, which
// `amountAt` then refuses.
function listItems(inside: string, begin: number) {
  const items: { typed: string; offset: number }[] = [];
  let from = 0;
  const take = (to: number) => {
    const piece = inside.slice(from, to);
    const typed = piece.trim();
    items.push({ typed, offset: begin + from + (typed ? piece.indexOf(typed) : 0) });
    from = to + 1;
  };
  for (const { 0: mark, index } of inside.matchAll(/[,;]/g)) {
    const between = /\d$/.test(inside.slice(0, index)) && /^\d/.test(inside.slice(index + 1));
    if (mark === "," && between && !inside.slice(from, index).includes(".")) continue;
    take(index);
  }
  take(inside.length);
  return items;
}

type Value = { readonly ok: true; readonly amount: Fraction; readonly unit: Unit };

function valueAt(
  text: string,
  start: number,
  end: number,
  context?: QuantityContext,
): Value | SyntaxFault {
  const within = text.slice(0, end);
  const part = partSizeAt(within, start, context === "dash");
  if (part && (!part.ok || part.end === end)) return part;

  const from = start + (/^[±]\s*/u.exec(within.slice(start))?.[0].length ?? 0);
  if (from > start && context !== "tolerance")
    return syntaxFault(
      "one value, without `±`",
      start,
      end - start,
      "a reading is one value; a tolerance belongs to its rule",
    );
  const amount = amountAt(within, from);
  if (!amount) return notANumber(within, start);
  if (!amount.ok) return amount;
  if (from > start && amount.amount.s < 0n)
    return syntaxFault("a tolerance without a sign behind `±`", from, amount.end - from);
  return withUnit(within, from, amount);
}

function notANumber(text: string, start: number): SyntaxFault {
  const typed = text.slice(start);
  const hedge = /^(?:~|≈|about|approx\.?|ca\.?|<|>|≤|≥)\s*/iu.exec(typed);
  return syntaxFault(
    "a number with its unit",
    start,
    hedge ? hedge[0].trimEnd().length : typed.length,
    hedge
      ? "write the value as the instrument showed it"
      : /^AN3(?!\d)/u.test(typed)
        ? "an AN3 bolt is called 3/16 in and 0.190 in: write the one that is meant"
        : "write it as in `0.19 in` or `3/32 in`",
  );
}

function withUnit(text: string, start: number, { amount, end }: Amount): Value | SyntaxFault {
  const rest = text.slice(end);
  if (!rest.trim())
    return syntaxFault(
      `a unit behind \`${text.slice(start, end)}\``,
      start,
      end - start,
      "write the unit behind the number, as in `0.19 in`, `31 lbf·in` or `48 %`",
    );
  const range = /^\s*(?:-|–|—|to\b|\.\.+|±|\+\/-)\s*\.?\d/iu.exec(rest);
  if (range)
    return syntaxFault(
      "one value, not a range",
      start,
      text.length - start,
      "write one value; limits belong to the rule",
    );
  const offset = end + rest.length - rest.trimStart().length;
  const unit = unitNamed(rest);
  if (!unit) {
    const isNegative = /^\s*[-−]/u.test(text.slice(start));
    return compound(text, offset, amount, isNegative) ?? unknownUnit(text, offset, text.length);
  }
  if (unit.dimension === "temperature" && amount.mul(unit.factor).add(unit.offset).lt(0))
    return syntaxFault(
      "a temperature above absolute zero",
      start,
      text.length - start,
      `nothing is colder than ${exactText(unit.offset.neg().div(unit.factor))} ${unit.symbol}; a difference of temperature is written as in \`18 Δ°F\``,
    );
  return { ok: true, amount, unit };
}

// Pairs that a tape, a scale or a protractor shows: 5 ft 3 1/2 in, 5'-3", 2 lb 3 oz, 12° 30'.
const pairs: readonly (readonly [large: string, small: string, names: RegExp])[] = [
  ["ft", "in", /^(?:(?:ft|feet|foot)\s*|['’′](?:-(?=[\d.])|\s*))/iu],
  ["lb", "oz", /^(?:lbs?|pounds?)\s*/iu],
  ["°", "arcmin", /^(?:°|deg(?:rees?)?)\s*/iu],
];

function compound(
  text: string,
  offset: number,
  first: Fraction,
  isNegative: boolean,
): Value | undefined {
  for (const [large, small, names] of pairs) {
    const name = names.exec(text.slice(offset))?.[0];
    if (name === undefined) continue;
    const second = amountAt(text, offset + name.length);
    if (!second?.ok || second.amount.s < 0n) continue;
    const typed = text.slice(second.end).trim();
    const unit = small === "arcmin" && /^['’′]$/u.test(typed) ? unitNamed(small) : unitNamed(typed);
    const whole = unitNamed(large);
    if (!whole || unit !== unitNamed(small) || !unit || first.d !== 1n) continue;
    const part = second.amount.mul(unit.factor).div(whole.factor);
    if (part.gte(1)) continue;
    return { ok: true, amount: isNegative ? first.sub(part) : first.add(part), unit: whole };
  }
  return undefined;
}

function unitIn(text: string, offset: number, end: number): Unit | SyntaxFault {
  return unitNamed(text.slice(offset, end)) ?? unknownUnit(text, offset, end);
}

function unknownUnit(text: string, offset: number, end: number): SyntaxFault {
  const typed = text.slice(offset, end).trim();
  const nearest = nearestName(typed, unitNames);
  const unit = nearest === undefined ? undefined : unitNamed(nearest);
  return syntaxFault(
    "a known unit",
    offset,
    typed.length,
    unit
      ? `\`${typed}\` is not known; did you mean \`${unit.symbol}\`?`
      : `\`${typed}\` is not known; lengths are written in \`in\`, \`ft\` or \`mm\`, torque in \`lbf·in\`, \`lbf·ft\` or \`N·m\``,
  );
}
