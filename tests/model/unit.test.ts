import { describe, expect, test } from "vitest";
import {
  baseUnitOf,
  differenceUnitOf,
  dimensions,
  unitNamed,
  unitNames,
  unitOf,
  units,
} from "../../src/model/unit.ts";

describe("unitNamed", () => {
  test.each([
    ["in", "in"],
    ["inch", "in"],
    ["inches", "in"],
    ['"', "in"],
    ["in.", "in"],
    ["IN", "in"],
    ["Inches", "in"],
    ["ft", "ft"],
    ["'", "ft"],
    ["mil", "mil"],
    ["lbf·in", "lbf·in"],
    ["lbf⋅in", "lbf·in"],
    ["lbf*in", "lbf·in"],
    ["lbf · in", "lbf·in"],
    ["in-lb", "lbf·in"],
    ["IN-LBS", "lbf·in"],
    ["in-lbf", "lbf·in"],
    ["in‑lb", "lbf·in"],
    ["lb-in", "lbf·in"],
    ["in·lbf", "lbf·in"],
    ["inch-pounds", "lbf·in"],
    ["inch  pounds", "lbf·in"],
    ["lbf·ft", "lbf·ft"],
    ["ft-lb", "lbf·ft"],
    ["N·m", "N·m"],
    ["Nm", "N·m"],
    ["lb", "lb"],
    ["lbs", "lb"],
    ["lbf", "lbf"],
    ["kg", "kg"],
    ["g", "g"],
    ["oz", "oz"],
    ["°F", "°F"],
    ["F", "°F"],
    ["°C", "°C"],
    ["C", "°C"],
    ["K", "K"],
    ["Δ°F", "Δ°F"],
    ["F°", "Δ°F"],
    ["deg", "°"],
    ["°", "°"],
    ["arcmin", "arcmin"],
    ["psi", "psi"],
    ["KPA", "kPa"],
    ["Pa", "Pa"],
    ["bar", "bar"],
    ["gal", "gal"],
    ["L", "L"],
    ["fl oz", "fl oz"],
    ["mL", "mL"],
    ["%", "%"],
    ["count", "count"],
    ["threads", "count"],
    ["s", "s"],
    ["min", "min"],
    ["hours", "h"],
    ["d", "d"],
  ])("%s is %s", (name, symbol) => {
    expect(unitNamed(name)?.symbol).toBe(symbol);
  });

  // Newton metre or nanometre, mega or milli, kilonewton or knot, metre or mega: not guessed.
  test.each(["nm", "NM", "mpa", "MPA", "kn", "M", "k", "D", "survey ft", "", " ", "constructor"])(
    "%j is no unit",
    (name) => {
      expect(unitNamed(name)).toBeUndefined();
    },
  );

  test("knows every unit by its symbol and by each of its names", () => {
    for (const unit of units) expect(unitNamed(unit.symbol)).toBe(unit);
    for (const name of unitNames) expect(unitNamed(name), name).toBeDefined();
  });
});

test("every unit has a factor above zero and a source", () => {
  for (const { symbol, factor, source } of units) {
    expect(factor.gt(0), symbol).toBe(true);
    expect(source, symbol).not.toBe("");
  }
});

test("only temperatures have an offset", () => {
  const shifted = units.filter(({ offset }) => !offset.equals(0));
  expect(shifted.map(({ symbol }) => symbol)).toEqual(["°C", "°F"]);
});

test("every dimension but the ratio has a unit with factor 1", () => {
  const without = dimensions.filter((dimension) => !baseUnitOf(dimension));
  expect(without).toEqual(["ratio"]);
  expect(baseUnitOf("temperature")?.symbol).toBe("K");
});

test("the difference unit of a temperature is its step, any other unit is its own", () => {
  expect(differenceUnitOf(unitOf("°F"))).toBe(unitOf("Δ°F"));
  expect(differenceUnitOf(unitOf("°C"))).toBe(unitOf("Δ°C"));
  expect(differenceUnitOf(unitOf("K"))).toBe(unitOf("ΔK"));
  expect(differenceUnitOf(unitOf("in"))).toBe(unitOf("in"));
});

test("unitOf throws for a name that no unit has", () => {
  expect(() => unitOf("furlong")).toThrow(RangeError);
});
