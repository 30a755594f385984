import Fraction from "fraction.js";
import type { Bound, Expression } from "../model/tolerance.ts";
import { type Unit, unitNamed } from "../model/unit.ts";
import { amountAt } from "./amount-syntax.ts";
import { partSizeAt } from "./part-size-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

export type ParsedExpression = { readonly ok: true; readonly bound: Bound } | SyntaxFault;

type Parsed = { readonly ok: true; readonly expression: Expression } | SyntaxFault;

const deepest = 20;
const longest = 200;
const longestUnitName = 24;
const name = /[A-Za-z][A-Za-z0-9_]*/uy;

/**
 * Reads one side of a limit: `0.19 in`, `2 D`, `1.5D`, `2 D + 0.05 in`, `2 (D + t)`, `W / 4`.
 * A number in front multiplies; `+` and `-` run from left to right.
 * @param sizes Names of declared sizes. They win over units of the same name: with `L` among
 *   them `2 L` is twice the size, otherwise two litres.
 * @example parseExpression("2 D + 0.05 in", ["D"])
 */
export function parseExpression(text: string, sizes: Iterable<string> = []): ParsedExpression {
  if (text.length > longest)
    return syntaxFault(`a limit of at most ${longest} characters`, 0, text.length);
  const reader = new ExpressionReader(text.trimEnd(), new Set(sizes));
  const parsed = reader.sum(0);
  if (!parsed.ok) return parsed;
  const rest = reader.unread();
  if (rest) return rest;
  return { ok: true, bound: { typed: text.trim(), expression: parsed.expression } };
}

class ExpressionReader {
  readonly #text: string;
  readonly #sizes: ReadonlySet<string>;
  #at = 0;

  constructor(text: string, sizes: ReadonlySet<string>) {
    this.#text = text;
    this.#sizes = sizes;
  }

  /** What is left over behind a whole expression. */
  unread(): SyntaxFault | undefined {
    this.#skipBlanks();
    if (this.#at >= this.#text.length) return undefined;
    return syntaxFault(
      "`+`, `-` or the end",
      this.#at,
      this.#text.length - this.#at,
      "a limit is written as in `0.19 in`, `2 D` or `2 D + 0.05 in`",
    );
  }

  sum(depth: number): Parsed {
    if (depth > deepest)
      return syntaxFault(`at most ${deepest} parentheses inside each other`, this.#at, 1);
    let left = this.#term(depth);
    while (left.ok) {
      const operator = this.#take(/[-−+]/uy);
      if (!operator) return left;
      const right = this.#term(depth);
      if (!right.ok) return right;
      const kind = operator === "+" ? "sum" : "difference";
      left = {
        ok: true,
        expression: { kind, left: left.expression, right: right.expression },
      };
    }
    return left;
  }

  #term(depth: number): Parsed {
    let term = this.#factor(depth);
    while (term.ok && this.#take(/[/÷]/uy)) {
      this.#skipBlanks();
      const start = this.#at;
      // A further stroke divides again: W / 4 / 2 is an eighth of W, not W / (4/2).
      const stroke = this.#text.indexOf("/", start);
      const divisor = amountAt(stroke < 0 ? this.#text : this.#text.slice(0, stroke), start);
      if (!divisor) return this.#expected("a number to divide by");
      if (!divisor.ok) return divisor;
      this.#at = divisor.end;
      if (divisor.amount.equals(0) || this.#unit() || this.#startsOperand())
        return syntaxFault(
          "a plain number other than zero to divide by",
          start,
          this.#at - start,
          "write a part of a size as in `1/4 W` or `W / 4`",
        );
      term = multiple(divisor.amount.inverse(), term.expression);
    }
    return term;
  }

  #factor(depth: number): Parsed {
    this.#skipBlanks();
    const start = this.#at;
    if (this.#take(/\(/uy)) {
      const inner = this.sum(depth + 1);
      if (!inner.ok) return inner;
      return this.#take(/\)/uy) ? inner : this.#expected("`)`");
    }
    const part = partSizeAt(this.#text, start);
    if (part) {
      if (!part.ok) return part;
      this.#at = part.end;
      return this.#quantity(start, part.amount, part.unit);
    }
    const amount = amountAt(this.#text, start);
    if (amount) {
      if (!amount.ok) return amount;
      this.#at = amount.end;
      return this.#behindNumber(start, amount.amount, depth);
    }
    if (this.#take(/[-−]/uy)) {
      const negated = depth > deepest ? this.#expected("fewer signs") : this.#factor(depth + 1);
      return negated.ok ? multiple(new Fraction(-1), negated.expression) : negated;
    }
    const size = this.#take(name);
    if (size) return { ok: true, expression: { kind: "size", name: size } };
    return this.#expected("a value with its unit, or the name of a size");
  }

  // A unit makes a quantity of the number; anything else that can be multiplied, a factor.
  #behindNumber(start: number, amount: Fraction, depth: number): Parsed {
    const end = this.#at;
    const unit = this.#unit();
    if (unit) return this.#quantity(start, amount, unit);
    this.#at = end;
    const times = this.#take(/[*×·]/uy);
    if (times || this.#startsOperand()) {
      const of = this.#factor(depth);
      return of.ok ? multiple(amount, of.expression) : of;
    }
    return syntaxFault(
      `a unit or the name of a size behind \`${this.#text.slice(start, end)}\``,
      start,
      end - start,
      "write it as in `0.19 in` or `2 D`",
    );
  }

  #quantity(start: number, amount: Fraction, unit: Unit): Parsed {
    const typed = this.#text.slice(start, this.#at).trim();
    return { ok: true, expression: { kind: "quantity", quantity: { typed, amount, unit } } };
  }

  // The longest name of a unit that starts here, unless a declared size does.
  #unit(): Unit | undefined {
    this.#skipBlanks();
    name.lastIndex = this.#at;
    const size = name.exec(this.#text)?.[0];
    if (size !== undefined && this.#sizes.has(size)) return undefined;
    const most = Math.min(longestUnitName, this.#text.length - this.#at);
    for (let length = most; length > 0; length--) {
      const typed = this.#text.slice(this.#at, this.#at + length);
      const next = this.#text.charAt(this.#at + length);
      if (typed !== typed.trimEnd() || (/[\p{L}\d]$/u.test(typed) && /[\p{L}\d_]/u.test(next)))
        continue;
      const unit = unitNamed(typed);
      if (!unit) continue;
      this.#at += length;
      return unit;
    }
    return undefined;
  }

  #startsOperand(): boolean {
    this.#skipBlanks();
    return /[A-Za-z(]/.test(this.#text.charAt(this.#at));
  }

  #take(pattern: RegExp): string | undefined {
    this.#skipBlanks();
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found !== undefined) this.#at += found.length;
    return found;
  }

  #skipBlanks(): void {
    while (/\s/u.test(this.#text.charAt(this.#at))) this.#at += 1;
  }

  #expected(what: string): SyntaxFault {
    this.#skipBlanks();
    const found = /^\S+/u.exec(this.#text.slice(this.#at))?.[0] ?? "";
    return syntaxFault(
      what,
      Math.min(this.#at, Math.max(0, this.#text.length - 1)),
      found.length,
      "a limit is written as in `0.19 in`, `2 D` or `2 D + 0.05 in`",
    );
  }
}

function multiple(factor: Fraction, of: Expression): Parsed {
  return { ok: true, expression: { kind: "multiple", factor, of } };
}
