import type Fraction from "fraction.js";
import type { Answer, Part, ReadInput, Sum } from "../../compute/reckon/sum.ts";
import { convert, type Quantity } from "../../model/quantity.ts";
import type { Unit } from "../../model/unit.ts";
import { figureNumber, wordsText } from "../format/reckoned.ts";

/** An input as typed, and what was read from it. */
export interface UnderstoodInput {
  readonly name: string;
  readonly typed: string;
  readonly read: ReadInput;
}

// Counts and ratios beside the lengths of one answer.
const apart: ReadonlySet<string> = new Set(["rivets", "D", ""]);

/** Plain JSON. */
export type Json =
  | string
  | number
  | boolean
  | null
  | readonly Json[]
  | { readonly [name: string]: Json };

/**
 * An answer as one object: the sum's name, the inputs as understood, the result or null where
 * there are several, its unit, then the named parts at the top level, formula, source and
 * cautions. `units` has the unit of each part that is a number, `drills.diameter` for a column.
 */
export function answerJson(
  sum: Pick<Sum, "name">,
  inputs: readonly UnderstoodInput[],
  answer: Answer,
): { readonly [name: string]: Json } {
  const units = Object.fromEntries(answer.parts.flatMap(partUnits));
  const common = new Set(Object.values(units).filter((unit) => !apart.has(unit)));
  const only = common.size === 1 ? [...common][0] : undefined;
  return {
    sum: sum.name,
    inputs: Object.fromEntries(
      inputs.map(({ name, typed, read }) => [name, { typed, ...valueJson(read) }]),
    ),
    result: answer.result ? figureNumber(answer.result) : null,
    unit: answer.result ? answer.result.unit : (only ?? null),
    ...Object.fromEntries(answer.parts.map((part) => [part.name, partJson(part)])),
    units,
    formula: answer.formula,
    source: answer.source,
    cautions: answer.cautions.map(wordsText),
  };
}

function partJson({ value }: Part): Json {
  switch (value.kind) {
    case "figure":
      return figureNumber(value.figure);
    case "figures":
      return value.figures.map(figureNumber);
    case "text":
      return value.text;
    case "texts":
      return value.texts;
    case "rows":
      return value.rows.map((row) =>
        Object.fromEntries(row.map((part) => [part.name, partJson(part)])),
      );
    case "none":
      return null;
  }
}

// The columns of a small table go by the name of the table and their own.
function partUnits({ name, value }: Part): [string, string][] {
  switch (value.kind) {
    case "figure":
      return [[name, value.figure.unit]];
    case "figures":
      return value.figures.slice(0, 1).map(({ unit }) => [name, unit]);
    case "rows":
      return value.rows
        .flat()
        .flatMap(partUnits)
        .map(([column, unit]) => [`${name}.${column}`, unit]);
    default:
      return [];
  }
}

function valueJson(read: ReadInput): { readonly value: Json; readonly unit: string | null } {
  switch (read.kind) {
    case "quantity":
    case "any quantity":
    case "length in sizes":
      return { value: number(read.value.amount), unit: read.value.unit.symbol };
    case "quantities": {
      const unit = read.value[0]?.unit;
      return { value: read.value.map((each) => inUnit(each, unit)), unit: unit?.symbol ?? null };
    }
    case "stretches": {
      const unit = read.value[0]?.from.unit;
      const value = read.value.map(({ from, to }) => ({
        from: inUnit(from, unit),
        to: inUnit(to, unit),
      }));
      return { value, unit: unit?.symbol ?? null };
    }
    case "number":
      return { value: number(read.value), unit: null };
    case "choice":
    case "date":
      return { value: read.value, unit: null };
    case "unit":
      return { value: read.value.symbol, unit: null };
    case "calendar span":
      return { value: number(read.value.count), unit: read.value.of };
    case "density": {
      const { mass, per } = read.value;
      return { value: number(mass.amount), unit: `${mass.unit.symbol}/${per.symbol}` };
    }
    case "loads":
      return {
        value: read.value.map(({ name, weight, arm }) => ({
          name,
          weight: number(weight.amount),
          weightUnit: weight.unit.symbol,
          arm: number(arm.amount),
          armUnit: arm.unit.symbol,
        })),
        unit: null,
      };
  }
}

function number(value: Fraction): number {
  return figureNumber({ value });
}

function inUnit(quantity: Quantity, unit: Unit | undefined): number {
  return number(unit ? convert(quantity, unit).amount : quantity.amount);
}
