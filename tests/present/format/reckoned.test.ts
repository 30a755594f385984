import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import {
  figureNumber,
  figureText,
  roundedText,
  wordsText,
} from "../../../src/present/format/reckoned.ts";

const exact = (value: string, unit: string) => ({ value: new Fraction(value), unit });

describe("figures in text", () => {
  test.each([
    ["11/28", "in", "0.3929 in (exactly 11/28 in)"],
    ["5/16", "in", "0.3125 in (exactly 5/16 in)"],
    ["19/16", "in", "1.1875 in (exactly 1 3/16 in)"],
    ["0.1285", "in", "0.1285 in"],
    ["0.2515", "in", "0.2515 in"],
    ["0.0625", "in", "0.0625 in (exactly 1/16 in)"],
    ["0.00425", "in", "0.0043 in (exactly 0.00425 in)"],
    ["0.00001", "in", "0.00001 in"],
    ["37", "rivets", "37 rivets"],
    ["1", "rivets", "1 rivet"],
    ["200/3", "lbf·in", "66.667 lbf·in (exactly 66 2/3 lbf·in)"],
    ["105/4", "lbf·in", "26.25 lbf·in"],
    ["22/7", "D", "3.14 D"],
    ["2/3", "", "0.66667 (exactly 2/3)"],
    ["-12/59", "in", "-0.2034 in (exactly -12/59 in)"],
    ["12345/10007", "in", "1.2336 in"],
    ["0", "in", "0 in"],
  ])("%s %s", (value, unit, text) => {
    expect(figureText(exact(value, unit))).toBe(text);
  });

  test("irrational ones are rounded and claim nothing", () => {
    expect(figureText({ value: Math.PI, unit: "in" })).toBe("3.1416 in");
    expect(figureText({ value: 19.188136, unit: "°" })).toBe("19.19°");
    expect(figureText({ value: 27.8066, unit: "%" })).toBe("27.81 %");
    expect(roundedText({ value: 1.5e20, unit: "in" })).toBe("1.5000e+20");
  });
});

test("a figure on the safe side of a limit is rounded that way, and noise is none", () => {
  const shown = (value: number, round: "up" | "down") => roundedText({ value, unit: "in", round });
  expect([shown(0.12582, "up"), shown(0.12588, "down")]).toEqual(["0.1259", "0.1258"]);
  expect([shown(0.1 + 0.2, "up"), shown(0.3 - 1e-17, "down")]).toEqual(["0.3000", "0.3000"]);
  expect(roundedText({ value: new Fraction("0.12581"), unit: "in", round: "up" })).toBe("0.1259");
});

test("numbers for programs are right to twelve digits", () => {
  expect(figureNumber({ value: new Fraction(11, 28) })).toBe(0.392857142857);
  expect(figureNumber({ value: 0.1 + 0.2 })).toBe(0.3);
  expect(figureNumber({ value: new Fraction(10).pow(400)?.inverse() ?? 0 })).toBe(0);
});

test("sentences round their figures", () => {
  expect(wordsText("as it is")).toBe("as it is");
  expect(wordsText(["a ", exact("11/30", "in"), " apart"])).toBe("a 0.3667 in apart");
});
