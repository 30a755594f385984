import { describe, expect, test } from "vitest";
import { asTyped } from "../../src/model/quantity.ts";
import { parseLoads } from "../../src/read/load-syntax.ts";

function loads(text: string): string[][] {
  const parsed = parseLoads(text);
  if (!parsed.ok) throw new Error(`expected ${parsed.expected}`);
  return parsed.loads.map(({ name, weight, arm }) => [name, asTyped(weight), asTyped(arm)]);
}

describe("reads", () => {
  test.each([
    ["pilot 170 lb @ 16 in", "pilot", "170 lb", "16 in"],
    ["170 lb @ 16 in", "", "170 lb", "16 in"],
    ["pilot 170 lb at 16 in", "pilot", "170 lb", "16 in"],
    ["left main 650 lb less 5 lb @ 70 in", "left main", "645 lb", "70 in"],
    ["nose 225 lb minus 2.5 lb @ -30 in", "nose", "222.5 lb", "-30 in"],
    ["seats -2 x 12 lb @ 68.5 in", "seats", "-24 lb", "68.5 in"],
    ["seats 2×12 lb @ 68.5 in", "seats", "24 lb", "68.5 in"],
    ["fuel 30 gal x 5.9 lb/gal @ 95 in", "fuel", "177 lb", "95 in"],
    ["oil 8 qt x 7.5 lb/gal @ -38 in", "oil", "15 lb", "-38 in"],
    ["rib4 170 lb @ 16 in", "rib4", "170 lb", "16 in"],
    ["wheel 5 lb less 5 lb @ 16 in", "wheel", "0 lb", "16 in"],
    ["shim ½ lb @ 16 in", "shim", "½ lb", "16 in"],
    ["left 650 lb - 5 lb @ 70 in", "left", "645 lb", "70 in"],
    ["- 5 lb @ 70 in", "", "- 5 lb", "70 in"],
    ["flexible box 3 lb@1 in", "flexible box", "3 lb", "1 in"],
    ["radio 2 lb 3 oz @ 1 ft 2 in", "radio", "2 lb 3 oz", "1 ft 2 in"],
    ["battery at the tail 20 lb at 180 in", "battery at the tail", "20 lb", "180 in"],
  ])("%s", (text, name, weight, arm) => {
    expect(loads(text)).toEqual([[name, weight, arm]]);
  });

  test("several, with commas or semicolons", () => {
    expect(loads("a 1 lb @ 2 in, b 3 kg @ 4 mm; 5 lb @ 6 in")).toEqual([
      ["a", "1 lb", "2 in"],
      ["b", "3 kg", "4 mm"],
      ["", "5 lb", "6 in"],
    ]);
  });
});

describe("says what is wrong and where", () => {
  test.each([
    ["pilot 170 lb", "`@` and an arm behind the weight", "pilot 170 lb"],
    ["pilot 170 @ 16 in", "a unit behind `170`", "170"],
    ["pilot 170 lb @ 16", "a unit behind `16`", "16"],
    ["pilot 170 lb @ 16 lb", "an arm: a length from the datum", "16 lb"],
    ["pilot 170 in @ 16 in", "a weight, in `lb` or `kg`", "170 in"],
    ["pilot @ 16 in", "a weight before the arm", "pilot"],
    ["empty 1,169 lb @ 10 in", "a decimal point, not a comma", "1,169"],
    ["a 1 lb @ 2 in, b 3 @ 4 in", "a unit behind `3`", "3"],
    ["fuel 30 gal x 5.9 lb @ 95 in", "a known unit", "gal x 5.9 lb"],
    ["fuel 30 gal @ 95 in", "a weight, in `lb` or `kg`", "30 gal"],
    ["left 650 lb 5 lb @ 70 in", "a known unit", "lb 5 lb"],
    ["left 650 lb less 5 in @ 70 in", "a known unit", "lb less 5 in"],
    ["rib 4 170 lb @ 16 in", "a number without thousands separators", "4 170"],
  ])("%s", (text, expected, meant) => {
    const parsed = parseLoads(text);
    if (parsed.ok) throw new Error("expected a fault");
    expect(parsed.expected).toBe(expected);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(meant);
  });
});

test("tare is not heavier than the reading, and no weight is below zero on a scale", () => {
  const heavier = parseLoads("left 5 lb less 7 lb @ 70 in");
  expect(heavier.ok ? "" : heavier.expected).toBe(
    "tare that is not heavier than the reading it is taken off",
  );
  expect(parseLoads("left 650 lb less -5 lb @ 70 in").ok).toBe(false);
  expect(parseLoads("left -650 lb less 5 lb @ 70 in").ok).toBe(false);
});
