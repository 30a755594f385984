import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { nearText } from "../../src/compute/near-text.ts";
import { unitOf } from "../../src/model/unit.ts";

test.each([
  [new Fraction(3, 8), "0.375 in"],
  [new Fraction(1, 64), "0.015625 in"],
  [new Fraction(25, 68), "a little above 0.3676 in"],
  [new Fraction(1, 3), "a little above 0.3333 in"],
  [new Fraction("12.123456789"), "a little above 12.1234 in"],
])("%s", (amount, words) => {
  expect(nearText({ amount, unit: unitOf("in") })).toBe(words);
});

test("what it says is never above the amount", () => {
  for (let n = 1; n < 400; n += 1) {
    const amount = new Fraction(n, 367);
    const said = new Fraction(/[\d.]+/.exec(nearText({ amount, unit: unitOf("in") }))?.[0] ?? "9");
    expect(said.lte(amount) && amount.sub(said).lt("0.0001")).toBe(true);
  }
});
