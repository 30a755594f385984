import type Fraction from "fraction.js";
import type { CalendarDate } from "../../model/calendar.ts";
import type { CalendarSpan } from "../../model/calendar-span.ts";
import type { Density } from "../../model/density.ts";
import type { Load } from "../../model/load.ts";
import type { Quantity } from "../../model/quantity.ts";
import type { Stretch } from "../../model/stretch.ts";
import type { Dimension, Unit } from "../../model/unit.ts";
import type { Real } from "./real.ts";

/** Which amounts make sense for an input. */
export type Range = "above zero" | "zero or more" | "any";

/** What an input may be: how it is typed, and what becomes of it. */
export type InputKind =
  /** A number with its unit. */
  | { readonly kind: "quantity"; readonly dimension: Dimension; readonly range: Range }
  /** A number with a unit of any dimension. */
  | { readonly kind: "any quantity" }
  /** A length, or in terms of other inputs: `2D`, where D is the input `diameter`. */
  | { readonly kind: "length in sizes"; readonly sizes: Readonly<Record<string, string>> }
  /** Several numbers with one unit or one each: `1.00, 2.00, 1.00 in`. */
  | { readonly kind: "quantities"; readonly dimension: Dimension; readonly range: Range }
  /** Stretches of a line: `2.0-2.6 in, 3.5-3.9 in`. */
  | { readonly kind: "stretches" }
  /** A plain number. */
  | { readonly kind: "number"; readonly range: Range; readonly whole: boolean }
  /** One of a few words. */
  | { readonly kind: "choice"; readonly choices: readonly string[] }
  /** The name of a unit. */
  | { readonly kind: "unit" }
  | { readonly kind: "date" }
  | { readonly kind: "calendar span" }
  | { readonly kind: "density" }
  /** Lines of a weighing: `pilot 170 lb @ 16 in`. May be typed more than once. */
  | { readonly kind: "loads" };

/** One input of a sum. */
export type Input = InputKind & {
  /** A few words: what is meant, and what is taken when it is not given. */
  readonly about: string;
  readonly required?: true;
  /** Has to be given unless one of these is. */
  readonly requiredUnless?: readonly string[];
  /** A value that works, as typed behind the `=`. */
  readonly example: string;
};

/** What an input of each kind is read as. */
export interface InputValues {
  readonly quantity: Quantity;
  readonly "any quantity": Quantity;
  readonly "length in sizes": Quantity;
  readonly quantities: readonly Quantity[];
  readonly stretches: readonly Stretch[];
  readonly number: Fraction;
  readonly choice: string;
  readonly unit: Unit;
  readonly date: CalendarDate;
  readonly "calendar span": CalendarSpan;
  readonly density: Density;
  readonly loads: readonly Load[];
}
export type InputValue = InputValues[InputKind["kind"]];

/** A value together with the kind of its input. */
export type ReadInput = {
  [K in InputKind["kind"]]: { readonly kind: K; readonly value: InputValues[K] };
}[InputKind["kind"]];

type Inputs = Readonly<Record<string, Input>>;
type ValueOf<I extends Input> = I extends { kind: "choice"; choices: readonly (infer C)[] }
  ? C
  : InputValues[I["kind"]];

/** The values of a sum's inputs; those that are not required may be missing. */
export type Values<I extends Inputs> = {
  readonly [N in keyof I]: I[N] extends { required: true }
    ? ValueOf<I[N]>
    : ValueOf<I[N]> | undefined;
};

/** One number of an answer, in a unit as printed: `in`, `lb·in`, `rivets`; empty for a plain number. */
export interface Figure {
  readonly value: Real;
  readonly unit: string;
  /** Which way it is rounded to be read, where the nearest number may lie on the wrong side. */
  readonly round?: "up" | "down";
}

/** A sentence; its numbers stand apart where they have to be rounded to be read. */
export type Words = string | readonly (string | Figure)[];

/** What a part of an answer holds. */
export type PartValue =
  | { readonly kind: "figure"; readonly figure: Figure }
  | { readonly kind: "figures"; readonly figures: readonly Figure[] }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "texts"; readonly texts: readonly string[] }
  | { readonly kind: "rows"; readonly rows: readonly (readonly Part[])[] }
  /** Asked for, but there is none: the pitch of a single rivet. */
  | { readonly kind: "none"; readonly why: string };

/** A named part of an answer. */
export interface Part {
  /** The key in JSON: lower camel case. */
  readonly name: string;
  /** The words in text. */
  readonly title: string;
  readonly value: PartValue;
}

/** What a sum comes to. */
export interface Answer {
  /** The one number asked for; absent where there are several. */
  readonly result?: Figure;
  /** Everything else, in the order shown. */
  readonly parts: readonly Part[];
  readonly formula: string;
  readonly source: string;
  /** What the number does not say. The last one defers to drawing and manufacturer. */
  readonly cautions: readonly Words[];
}

/** Why there is no answer to what was typed. */
export interface InputProblem {
  /** The input to blame; absent when it is the lot of them. */
  readonly input?: string;
  /** What is wrong: lower case, no full stop. */
  readonly message: Words;
  readonly help: readonly Words[];
}

export type Outcome =
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

/** A sum of the shop: what it wants to know, and how it is done. */
export interface Sum {
  /** As typed behind `witness reckon`. */
  readonly name: string;
  /** One line, no full stop. */
  readonly about: string;
  readonly inputs: Inputs;
  /** Arguments that work, as they would be typed: one worked line. */
  readonly example: readonly string[];
  /** Values by input name, as `inputs` declares them. Pure; does not throw for what was typed. */
  readonly reckon: (values: Readonly<Record<string, InputValue | undefined>>) => Outcome;
}

/** A sum whose `reckon` sees each value with its own type. */
export interface TypedSum<I extends Inputs> extends Omit<Sum, "reckon"> {
  readonly inputs: I;
  readonly reckon: (values: Values<I>) => Outcome;
}

/**
 * Makes a sum of its parts. Whoever calls `reckon` of the result hands over one value for each
 * required input, of the kind that the input declares.
 */
export function sum<const I extends Inputs>(typed: TypedSum<I>): Sum {
  // The inputs are read by their declared kinds, so the values have these types.
  return { ...typed, reckon: (values) => typed.reckon(values as Values<I>) };
}

/** An outcome with an answer. */
export function answered(answer: Answer): Outcome {
  return { ok: true, answer };
}

/** An outcome without one. */
export function refused(...problems: readonly InputProblem[]): Outcome {
  return { ok: false, problems };
}

/** A part that is one number. */
export function figurePart(
  name: string,
  title: string,
  value: Real,
  unit: string,
  round?: Figure["round"],
): Part {
  return {
    name,
    title,
    value: { kind: "figure", figure: { value, unit, ...(round ? { round } : {}) } },
  };
}

/** A part that is several numbers in one unit. */
export function figuresPart(
  name: string,
  title: string,
  values: readonly Real[],
  unit: string,
): Part {
  const figures = values.map((value) => ({ value, unit }));
  return { name, title, value: { kind: "figures", figures } };
}

/** A part in words. */
export function textPart(name: string, title: string, text: string): Part {
  return { name, title, value: { kind: "text", text } };
}

/** A part that is a small table. */
export function rowsPart(name: string, title: string, rows: readonly (readonly Part[])[]): Part {
  return { name, title, value: { kind: "rows", rows } };
}
