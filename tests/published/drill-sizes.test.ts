import { describe, expect, test } from "vitest";
import { drillNamed, letterDrills, numberDrills } from "../../src/model/published/drill-sizes.ts";
import { reckoned } from "../support/reckoned.ts";
import { quantity } from "../support/typed-quantity.ts";

// Source: a tool maker's table of tap drill sizes (Tap_Drill_Sizes.pdf), as printed.
const tapDrillTable = [
  ["3", ".2130"],
  ["7", ".2010"],
  ["14", ".1820"],
  ["16", ".1770"],
  ["21", ".1590"],
  ["25", ".1495"],
  ["29", ".1360"],
  ["33", ".1130"],
  ["36", ".1065"],
  ["37", ".1040"],
  ["38", ".1015"],
  ["42", ".0935"],
  ["43", ".0890"],
  ["45", ".0820"],
  ["47", ".0785"],
  ["50", ".0700"],
  ["53", ".0595"],
  ["F", ".2570"],
  ["I", ".2720"],
  ["Q", ".3320"],
  ["U", ".3680"],
] as const;

// Source: service manual of a 1940s fighter, drill sizes for rivets, as printed.
const serviceManual = [
  ["52", "0.0635"],
  ["41", "0.0960"],
  ["30", "0.1285"],
  ["22", "0.157"],
  ["12", "0.189"],
] as const;

test.each([...tapDrillTable, ...serviceManual])("drill %s is %s in", (name, inches) => {
  const drill = drillNamed(name);
  expect(drill?.inches.equals(inches)).toBe(true);
  expect(drill?.status).toBe("read");
});

// The same tool maker's table, fractional drills, rounded there to four places.
test.each([
  ["3/64 in", ".0469"],
  ["25/64 in", ".3906"],
])("drill %s is printed as %s", (size, printed) => {
  const answer = reckoned("drill", `size=${size}`, "series=fraction");
  expect(answer.drills).toMatchObject([{ name: size, difference: 0 }]);
  expect(Number(answer.result).toFixed(4)).toBe(`0${printed}`);
});

describe("the series", () => {
  test("runs from No. 80 to No. 1 to A to Z without a step back", () => {
    const series = [...numberDrills.toReversed(), ...letterDrills];
    expect(series).toHaveLength(80 + 26);
    for (const [index, { name, inches }] of series.entries()) {
      const before = series[index - 1];
      if (before) expect(inches.gt(before.inches), `${name} after ${before.name}`).toBe(true);
    }
  });

  // Arithmetic on the sizes: n/64 in are exact, and two drills straddle 3/64 in.
  test("fits the fractions of an inch", () => {
    expect(drillNamed("E")?.inches.equals("1/4")).toBe(true);
    expect(drillNamed("56")?.inches.lt("3/64")).toBe(true);
    expect(drillNamed("55")?.inches.gt("3/64")).toBe(true);
  });

  test("is told as checked only where it was", () => {
    const read = [...numberDrills, ...letterDrills].filter(({ status }) => status === "read");
    expect(read.map(({ name }) => name).toSorted()).toEqual(
      [...tapDrillTable, ...serviceManual].map(([name]) => name).toSorted(),
    );
  });

  test.each([
    ["No. 40", "3/32 in"],
    ["No. 30", "1/8 in"],
    ["No. 21", "5/32 in"],
    ["No. 11", "3/16 in"],
  ])("%s clears a %s rivet", (drill, rivet) => {
    expect(quantity(drill).amount.gt(quantity(rivet).amount)).toBe(true);
  });
});
