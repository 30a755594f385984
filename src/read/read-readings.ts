import type { CalendarDate } from "../model/calendar.ts";
import type { MeasuredValue, Reading } from "../model/measurement.ts";
import type { Quantity } from "../model/quantity.ts";
import type { TypedDay } from "./day-schema.ts";
import type { Faults } from "./faults.ts";
import type { DayContext } from "./read-day.ts";
import { readSizes } from "./read-sizes.ts";
import { given } from "./shape.ts";

type TypedReading = NonNullable<TypedDay["readings"]>[number];

/** The day that readings belong to. */
interface ReadingDay {
  readonly date: CalendarDate;
  /** Of the day's conditions; stands for readings that have none of their own. */
  readonly temperature: Quantity | undefined;
}

/** Turns the typed readings of a day into the model's, with ids for those that have none. */
export function readReadings(
  typed: readonly TypedReading[],
  { date, temperature }: ReadingDay,
  { registers }: DayContext,
  faults: Faults,
): Reading[] {
  return typed.map((reading, index) => {
    const step = reading.step && registers.steps.get(reading.step.text);
    return {
      id: reading.id?.text ?? `${date}.r${index + 1}`,
      date,
      ...given({
        step: reading.step?.text,
        assembly: reading.assembly?.text ?? step?.assembly,
        at: reading.at?.text,
        rule: reading.rule?.text,
        instrument: reading.with?.text,
        instrumentSpan: reading.with?.span,
        of: reading.of?.map(({ text, span }) => ({ reading: text, span })),
        temperature: temperatureOf(reading, temperature),
        drag: reading.drag?.quantity,
        supersedes: reading.supersedes?.text,
        supersedesSpan: reading.supersedes?.span,
        deviation: reading.deviation?.text,
        deviationSpan: reading.deviation?.span,
      }),
      what: reading.what.text,
      values: readValues(reading, faults),
      sizes: readSizes(reading.sizes, faults),
      private: reading.private ?? false,
      span: reading.what.span,
    };
  });
}

function temperatureOf(
  reading: TypedReading,
  ofTheDay: Quantity | undefined,
): Reading["temperature"] {
  if (reading.temperature) return { quantity: reading.temperature.quantity, from: "reading" };
  return ofTheDay && { quantity: ofTheDay, from: "day" };
}

function readValues(reading: TypedReading, faults: Faults): MeasuredValue[] {
  const { value, values, of } = reading;
  if (value && values) {
    faults.add("unknown-key", value.span, {
      message: "a reading has `value` or `values`, not both",
      help: ["move the single value into the list of `values`"],
    });
  }
  const has = (key: string) => reading.node.entries.get(key);
  if (of) {
    for (const key of ["value", "values", "with", "drag"]) {
      const entry = has(key);
      if (!entry) continue;
      faults.add("unknown-key", entry.key.span, {
        message: `a reading made of others has no \`${key}\`: that is theirs`,
        help: [`leave \`${key}\` out, or leave \`of\` out`],
      });
    }
    return [];
  }
  const typed = values ?? (value ? [value] : []);
  // A value that was typed and could not be read has its own fault already.
  if (!has("value") && !has("values") && !has("of")) {
    faults.add("missing-key", reading.what.span, {
      message: "a reading needs `value` or `values`",
      help: ["write `value: 0.19 in`, or `values: [0.141, 0.140] in`"],
    });
  }
  return typed.map(({ quantity, span }) => ({ quantity, span }));
}
