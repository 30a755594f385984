import type { Hours } from "../../compute/analysis.ts";
import type { Minutes, Moment } from "../../model/calendar.ts";
import { type Citation, citationText } from "../../model/citation.ts";
import type { Span } from "../../model/diagnostic.ts";
import type { Quantity } from "../../model/quantity.ts";

/** Where in the journal something was typed: lines and columns from 1. */
export interface PlaceRecord {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** A value as typed and as understood. */
export interface QuantityRecord {
  readonly typed: string;
  /** The exact amount in `unit`: a whole number, or two parted by `/`. */
  readonly exact: string;
  /** The nearest number that a computer's floating point holds. */
  readonly decimal: number;
  readonly unit: string;
  readonly dimension: string;
}

/** A point in time: the shop's clock, and whole minutes since 1970-01-01T00:00Z. */
export interface MomentRecord {
  readonly local: string;
  readonly epochMinutes: number;
}

/** Minutes of the build, and of study and shop. */
export interface HoursRecord {
  readonly build: Minutes;
  readonly apart: Minutes;
}

/** Minutes of one named thing. */
export interface NamedHoursRecord extends HoursRecord {
  readonly id: string;
}

/** A size such as `D`. */
export interface SizeRecord {
  readonly name: string;
  readonly quantity: QuantityRecord;
}

/** A citation by its parts and as one line. */
export interface CitationRecord extends Citation {
  readonly text: string;
}

/** A place, without the text of its line. */
export function placeRecord({ file, line, column }: Span): PlaceRecord {
  return { file, line, column };
}

/** A value as typed, exactly, and as a number. */
export function quantityRecord({ typed, amount, unit }: Quantity): QuantityRecord {
  return {
    typed,
    exact: amount.toFraction(),
    decimal: amount.valueOf(),
    unit: unit.symbol,
    dimension: unit.dimension,
  };
}

/** A point in time, as data. */
export function momentRecord({ local, epochMinutes }: Moment): MomentRecord {
  return { local, epochMinutes };
}

/** Minutes of the build and apart, as data. */
export function hoursRecord({ build, apart }: Hours): HoursRecord {
  return { build, apart };
}

/** Minutes of named things, in the order of the map. */
export function namedHours(hours: ReadonlyMap<string, Hours>): NamedHoursRecord[] {
  return [...hours].map(([id, each]) => ({ id, ...hoursRecord(each) }));
}

/** Sizes by name, in the order of the map. */
export function sizesRecord(sizes: ReadonlyMap<string, Quantity>): SizeRecord[] {
  return [...sizes].map(([name, quantity]) => ({ name, quantity: quantityRecord(quantity) }));
}

/** A citation by its parts and as one line. */
export function citationRecord(citation: Citation): CitationRecord {
  const { document, edition, place, status } = citation;
  return {
    document,
    ...given("edition", edition),
    ...given("place", place),
    ...given("status", status),
    text: citationText(citation),
  };
}

/** The value that a span marks, as typed, without its quotes; undefined when it marks none. */
export function typedText({ text, column, length }: Span): string | undefined {
  const typed = text.slice(column - 1, column - 1 + length);
  return typed.replace(/^(["'])(.*)\1$/, "$2") || undefined;
}

/** The property when there is a value; nothing, rather than null, when there is none. */
export function given<Name extends string, Value>(
  name: Name,
  value: Value | undefined,
): { readonly [key in Name]?: Value } {
  return value === undefined ? {} : ({ [name]: value } as { readonly [key in Name]?: Value });
}
