// The small syntaxes that only the sums of the shop have: densities, stretches of the calendar
// and of a line, lists.

import { describe, expect, test } from "vitest";
import { asTyped } from "../../src/model/quantity.ts";
import { parseCalendarSpan } from "../../src/read/calendar-span-syntax.ts";
import { parseDensity } from "../../src/read/density-syntax.ts";
import { listItems } from "../../src/read/list-items.ts";
import { parseStretches } from "../../src/read/stretch-syntax.ts";

describe("densities", () => {
  test.each([
    ["6 lb/gal", "6 lb", "gal"],
    ["5.9 lb per gal", "5.9 lb", "gal"],
    ["0.72 kg / L", "0.72 kg", "L"],
    ["7.2 lb/imp gal", "7.2 lb", "imp gal"],
  ])("%s", (text, mass, per) => {
    const parsed = parseDensity(text);
    expect(parsed.ok && [asTyped(parsed.density.mass), parsed.density.per.symbol]).toEqual([
      mass,
      per,
    ]);
  });

  test.each([
    ["6 lb", "a mass for each unit of volume", "6 lb"],
    ["six lb/gal", "a number with its unit", "six lb"],
    ["6 in/gal", "a mass before the stroke", "6 in"],
    ["0 lb/gal", "a mass above zero", "0 lb"],
    ["6 lb/in", "a unit of volume", "in"],
  ])("not %s", (text, expected, meant) => {
    const parsed = parseDensity(text);
    if (parsed.ok) throw new Error("expected a fault");
    expect(parsed.expected).toBe(expected);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(meant);
  });
});

describe("stretches of the calendar", () => {
  test.each([
    ["9 months", 9, "months"],
    ["1 month", 1, "months"],
    ["1 year", 12, "months"],
    ["1 1/2 years", 18, "months"],
    ["180 days", 180, "days"],
    ["6 weeks", 42, "days"],
    [" 4.5 mo ", 4.5, "months"],
  ])("%s", (text, count, of) => {
    const parsed = parseCalendarSpan(text);
    expect(parsed.ok && [parsed.span.count.valueOf(), parsed.span.of]).toEqual([count, of]);
  });

  test.each([
    ["months", "a number of days, weeks, months or years", "months"],
    ["9", "`days`, `weeks`, `months` or `years`", "9"],
    ["9 moons", "`days`, `weeks`, `months` or `years`", "moons"],
    ["0 days", "a number above zero", "0"],
    ["-9 months", "a number above zero", "-9"],
    ["1,5 years", "a decimal point, not a comma", "1,5"],
  ])("not %s", (text, expected, meant) => {
    const parsed = parseCalendarSpan(text);
    if (parsed.ok) throw new Error("expected a fault");
    expect(parsed.expected).toBe(expected);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(meant);
  });
});

describe("stretches of a line", () => {
  test.each([
    ["2.0-2.6 in", ["2 in to 2.6 in"]],
    ["2 - 2 5/8 in", ["2 in to 2.625 in"]],
    ["2 in to 2 5/8 in", ["2 in to 2.625 in"]],
    ["1-3/16 - 2 in", ["1.1875 in to 2 in"]],
    ["2–3 mm", ["2 mm to 3 mm"]],
    ["2 .. 3 mm", ["2 mm to 3 mm"]],
    ["0-1 in", ["0 in to 1 in"]],
    ["2.0-2.6, 3.5-3.9 in", ["2 in to 2.6 in", "3.5 in to 3.9 in"]],
    ["20-26 mm; 3-4 in", ["20 mm to 26 mm", "3 in to 4 in"]],
  ])("%s", (text, stretches) => {
    const parsed = parseStretches(text);
    if (!parsed.ok) throw new Error(`expected ${parsed.expected}`);
    const shown = parsed.stretches.map(
      ({ from, to }) =>
        `${from.amount.valueOf()} ${from.unit.symbol} to ${to.amount.valueOf()} ${to.unit.symbol}`,
    );
    expect(shown).toEqual(stretches);
  });

  test.each([
    ["2.0 in", "2.0 in"],
    ["2.6-2.0 in", "2.6-2.0 in"],
    ["2-2 in", "2-2 in"],
    ["-2-1 in", "-2-1 in"],
    ["2-3 lb", "2-3 lb"],
    ["2-3", "2-3"],
    ["2-3 in, 4 in", "4 in"],
  ])("not %s", (text, meant) => {
    const parsed = parseStretches(text);
    if (parsed.ok) throw new Error("expected a fault");
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(meant);
  });
});

describe("lists", () => {
  test("pieces and their places", () => {
    expect(listItems(" a b ,c;  d")).toEqual([
      { text: "a b", offset: 1 },
      { text: "c", offset: 6 },
      { text: "d", offset: 10 },
    ]);
  });

  test("a comma between digits does not separate", () => {
    expect(listItems("1,5 in, 2 in").map(({ text }) => text)).toEqual(["1,5 in", "2 in"]);
  });

  test("empty pieces stay", () => {
    expect(listItems("a,,").map(({ text }) => text)).toEqual(["a", "", ""]);
  });
});
