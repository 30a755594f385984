import Fraction from "fraction.js";
import type { Citation } from "./citation.ts";
import { compareQuantities, type Quantity, quantityOf } from "./quantity.ts";
import type { Authority, Bound } from "./tolerance.ts";
import { unitOf } from "./unit.ts";

/** Something the builder says when taking a limit from a set. */
export type RuleSetParameter =
  /** One of a few words. */
  | {
      readonly kind: "choice";
      readonly name: string;
      readonly values: readonly string[];
      readonly help: string;
    }
  /** A length above zero, which the limits call by the parameter's name. */
  | { readonly kind: "size"; readonly name: string; readonly help: string };

/** What a builder gave for a parameter: text for a choice, a quantity for a size. */
export type RuleSetArgument = string | Quantity;

/** Limits taken from a publication. */
export interface RuleSetLimits {
  readonly ok: true;
  /** Inclusive, as in a `ToleranceRule`. */
  readonly lower?: Bound;
  readonly upper?: Bound;
  /** What the publication prints as the value to aim at, without limits. */
  readonly nominal?: Bound;
  /** The sizes given, by parameter name. */
  readonly sizes: ReadonlyMap<string, Quantity>;
  /** What else the publication says about this row. */
  readonly notes: readonly string[];
}

/** Why a set gives no limits for what was asked. */
export interface RuleSetFault {
  readonly ok: false;
  /** The parameter that is missing, unknown or out of the table. */
  readonly parameter: string;
  /** Lower case, no full stop, names in backticks. */
  readonly message: string;
  readonly help: readonly string[];
}

/** Limits of one publication, to be chosen by name. */
export interface RuleSet {
  /** Kebab case, as typed after `set:`. */
  readonly name: string;
  readonly title: string;
  readonly authority: Authority;
  /** With the status of the copy: `read`, `secondary` or `memory`. */
  readonly citation: Citation;
  readonly parameters: readonly RuleSetParameter[];
  /** Cautions of the source, and what can make such a reading look wrong. */
  readonly advice: readonly string[];
  /** Whether friction drag is added to the limits. */
  readonly addsDrag: boolean;
  /**
   * The limits for what the builder gave. Nothing is interpolated between printed rows.
   * @param given By parameter name. Sizes compare by value: `1/8 in`, `AD4` and `3.175 mm` are
   *   the same row.
   */
  readonly limits: (given: ReadonlyMap<string, RuleSetArgument>) => RuleSetLimits | RuleSetFault;
}

/** What a set's own table makes of arguments that are known to be complete. */
export type RowLimits = Pick<RuleSetLimits, "lower" | "upper" | "nominal"> & {
  readonly notes?: readonly string[];
};

/** Arguments that are known to be complete and of the right kind. */
export interface RuleSetArguments {
  readonly choice: (name: string) => string;
  readonly size: (name: string) => Quantity;
}

type Definition = Omit<RuleSet, "limits" | "addsDrag" | "advice"> & {
  readonly advice?: readonly string[];
  readonly addsDrag?: boolean;
  readonly row: (given: RuleSetArguments) => RowLimits | RuleSetFault;
};

const generalAdvice =
  "general information: a limit on the drawing or in the kit's manual wins over this one";

const unseenAdvice: Readonly<Record<string, string>> = {
  secondary:
    "taken from a quotation of the source; compare with the source itself before relying on it",
  memory: "not taken from a source that could be named; compare with one before relying on it",
};

/**
 * Makes a rule set of a publication's table. Tests of what the builder gave are the same for
 * all sets and happen here; `row` only sees arguments that are complete.
 */
export function ruleSet({ row, advice = [], addsDrag = false, ...set }: Definition): RuleSet {
  const unseen = unseenAdvice[set.citation.status ?? "read"];
  return {
    ...set,
    addsDrag,
    advice: [...advice, ...(unseen ? [unseen] : []), generalAdvice],
    limits: (given) => {
      const fault = faultIn(set, given);
      if (fault) return fault;
      const limits = row({
        choice: (name) => textOf(given, name),
        size: (name) => sizeOf(given, name),
      });
      if ("ok" in limits) return limits;
      const sizes = new Map<string, Quantity>();
      for (const { kind, name } of set.parameters)
        if (kind === "size") sizes.set(name, sizeOf(given, name));
      return { ok: true, sizes, notes: [], ...limits };
    },
  };
}

function faultIn(
  { name: set, parameters }: Pick<RuleSet, "name" | "parameters">,
  given: ReadonlyMap<string, RuleSetArgument>,
): RuleSetFault | undefined {
  const names = parameters.map(({ name }) => `\`${name}\``).join(", ");
  for (const name of given.keys())
    if (!parameters.some((parameter) => parameter.name === name))
      return {
        ok: false,
        parameter: name,
        message: `\`${name}\` is not a parameter of \`${set}\``,
        help: [names ? `it takes ${names}` : "it takes no parameters"],
      };
  for (const parameter of parameters) {
    const value = given.get(parameter.name);
    const help = [helpFor(parameter)];
    if (value === undefined)
      return {
        ok: false,
        parameter: parameter.name,
        message: `\`${set}\` needs \`${parameter.name}\``,
        help,
      };
    if (parameter.kind === "choice") {
      if (typeof value === "string" && parameter.values.includes(value)) continue;
      const typed = typeof value === "string" ? value : value.typed;
      return {
        ok: false,
        parameter: parameter.name,
        message: `\`${typed}\` is not a \`${parameter.name}\` of \`${set}\``,
        help,
      };
    }
    if (typeof value === "string" || value.unit.dimension !== "length" || value.amount.lte(0))
      return {
        ok: false,
        parameter: parameter.name,
        message: `\`${typeof value === "string" ? value : value.typed}\` is not a length above zero`,
        help,
      };
  }
  return undefined;
}

function helpFor(parameter: RuleSetParameter): string {
  const { name, help } = parameter;
  return parameter.kind === "choice"
    ? `\`${name}\` is ${help}: ${parameter.values.map((value) => `\`${value}\``).join(", ")}`
    : `\`${name}\` is ${help}, such as \`1/8 in\``;
}

function textOf(given: ReadonlyMap<string, RuleSetArgument>, name: string): string {
  const value = given.get(name);
  if (typeof value === "string") return value;
  throw new RangeError(`${name} is not a choice of this rule set`);
}

function sizeOf(given: ReadonlyMap<string, RuleSetArgument>, name: string): Quantity {
  const value = given.get(name);
  if (value !== undefined && typeof value !== "string") return value;
  throw new RangeError(`${name} is not a size of this rule set`);
}

/**
 * A limit that a publication prints as a number.
 * @param amount As printed: `0.222`, `50`.
 * @example fixedBound("50", "lbf·in").typed // "50 lbf·in"
 */
export function fixedBound(amount: string, unit: string): Bound {
  const quantity = inUnit(amount, unit);
  return { typed: quantity.typed, expression: { kind: "quantity", quantity } };
}

/**
 * A limit that a publication prints as a multiple of a size.
 * @example multipleBound("2.5", "D").typed // "2.5 D"
 */
export function multipleBound(factor: string, size: string): Bound {
  return {
    typed: `${factor} ${size}`,
    expression: {
      kind: "multiple",
      factor: new Fraction(factor),
      of: { kind: "size", name: size },
    },
  };
}

/** A printed number with its unit, its text as printed. */
export function inUnit(amount: string, unit: string): Quantity {
  return { typed: `${amount} ${unit}`, amount: new Fraction(amount), unit: unitOf(unit) };
}

/**
 * The row of a table whose key is a length in inches, or the fault of a size between rows.
 * @param rows By printed size, as a fraction: `3/32`.
 */
export function rowOfSize<Row>(
  rows: Readonly<Record<string, Row>>,
  parameter: string,
  size: Quantity,
): { readonly ok: true; readonly row: Row; readonly printed: string } | RuleSetFault {
  const inch = unitOf("in");
  for (const [printed, row] of Object.entries(rows))
    if (compareQuantities(size, quantityOf(new Fraction(printed), inch)) === 0)
      return { ok: true, row, printed };
  const sizes = Object.keys(rows).map((printed) => `\`${printed} in\``);
  return {
    ok: false,
    parameter,
    message: `the table has no row for \`${parameter}\` of \`${size.typed}\``,
    help: [`the rows printed are ${sizes.join(", ")}`],
  };
}
