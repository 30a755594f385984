import { describe, expect, test } from "vitest";
import {
  balanceNumber,
  balanceText,
  chordNumber,
  excessText,
  momentNumber,
  roomText,
  signedNumber,
} from "../../../src/present/format/balance.ts";
import { quantity } from "../../support/typed-quantity.ts";

test("weights, arms and moments have the places of their unit", () => {
  expect(balanceNumber(quantity("1331.5 lb"))).toBe("1331.50");
  expect(balanceText(quantity("1650.04 mm"))).toBe("1650.0 mm");
  expect(balanceText(quantity("1.65004 m"))).toBe("1.6500 m");
  expect(momentNumber(quantity("66698.25 lb").amount, "lb·in")).toBe("66698.3");
  expect(momentNumber(quantity("66698.25 lb").amount, "oz·in")).toBe("66698.25");
  expect(chordNumber(quantity("27.807 %").amount)).toBe("27.81");
});

test("changes have their sign, and what rounds to nothing has none", () => {
  expect(signedNumber(quantity("14.2 lb"))).toBe("+14.20");
  expect(signedNumber(quantity("-3 lb"))).toBe("-3.00");
  expect(signedNumber(quantity("0 lb"))).toBe("0.00");
  expect(signedNumber(quantity("0.001 lb"))).toBe("0.00");
});

describe("rounding is to the safe side", () => {
  test.each([
    ["0.369 in", "0.36 in"],
    ["12 in", "12.00 in"],
    ["0.009 in", "less than 0.01 in"],
    ["0.9 g", "less than 1 g"],
    ["0 in", "0.00 in"],
  ])("room of %s is %s", (typed, expected) => {
    expect(roomText(quantity(typed))).toBe(expected);
  });

  test.each([
    ["-0.361 in", "0.37 in"],
    ["-0.0001 in", "0.01 in"],
    ["110 lb", "110.00 lb"],
  ])("%s beyond a limit is %s", (typed, expected) => {
    expect(excessText(quantity(typed))).toBe(expected);
  });
});
