import { expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

// Source: AC 43.13-1B, par. 7-179, 7-181b and 7-182: no more than three threads showing on
// either side of the barrel.
test.each([
  ["3 threads", "within"],
  ["4 threads", "above"],
])("%s showing at a turnbuckle: %s", (threads, verdict) => {
  expect(judge(quantity(threads), setLimits("turnbuckle-threads", {})).kind).toBe(verdict);
});

// Source: NAVEDTRA 14315, application of sealants: not on metal colder than 70 °F.
test.each([
  ["69.9 °F", "below"],
  ["70 °F", "within"],
  ["21.1 °C", "below"],
  ["22 °C", "within"],
])("sealant on metal of %s: %s", (temperature, verdict) => {
  const limits = setLimits("sealant-metal-temperature", {});
  expect(judge(quantity(temperature), limits).kind).toBe(verdict);
});

// Source: AC 43.13-1B, par. 7-180c and d, 7-181b and 7-182: at least four turns at each end.
test.each([
  ["3 turns", "below"],
  ["4 turns", "within"],
])("%s of safety wire around the shank: %s", (turns, verdict) => {
  const typed = quantity(turns.replace("turns", "count"));
  expect(judge(typed, setLimits("turnbuckle-wire-turns", {})).kind).toBe(verdict);
});

// Source: AC 43.13-1B, par. 7-124 and 7-125: a pigtail of 4 to 6 full turns, 1/2 to 5/8 in long.
test.each([
  ["length", "0.49 in", "below"],
  ["length", "1/2 in", "within"],
  ["length", "5/8 in", "within"],
  ["length", "0.626 in", "above"],
  ["turns", "3 count", "below"],
  ["turns", "6 count", "within"],
  ["turns", "7 count", "above"],
])("pigtail, %s %s: %s", (of, typed, verdict) => {
  expect(judge(quantity(typed), setLimits("safety-wire-pigtail", { of })).kind).toBe(verdict);
});

// Source: AC 43.13-1B, table 7-8, turnbuckle safetying guide: cable, wrap, wire, diameter in inches.
test.each([
  ["1/16", "single", "copper or brass", "0.040 in"],
  ["3/32", "single", "copper or brass", "0.040 in"],
  ["1/8", "single", "stainless steel or Monel", "0.040 in"],
  ["1/8", "double", "copper or brass", "0.040 in"],
  ["1/8", "single", "copper or brass", "0.057 in"],
  ["5/32 and greater", "single", "stainless steel or Monel", "0.057 in"],
  ["5/32 and greater", "double", "copper or brass", "0.0512 in"],
  ["5/32 and greater", "double", "stainless steel or Monel", "0.040 in"],
])("%s cable, %s wrap of %s: %s", (cable, wrap, material, wire) => {
  const answer = ruleSetNamed("turnbuckle-wire").limits(
    new Map(Object.entries({ cable, wrap, material })),
  );
  expect(answer.ok && answer.nominal?.typed).toBe(wire);
});

test("a row that table 7-8 does not have is a fault with those it has", () => {
  const answer = ruleSetNamed("turnbuckle-wire").limits(
    new Map(Object.entries({ cable: "1/16", wrap: "double", material: "copper or brass" })),
  );
  expect(answer).toMatchObject({ ok: false, help: ["it has: single, 0.040 copper or brass"] });
});

// Source: USAF TO 1-1-700, par. 12.5.1.3 (cool hot metal to 90 °F or lower) and 12.8 (not stored
// above 80 °F).
test.each([
  ["sealant-hot-metal", "90 °F", "within"],
  ["sealant-hot-metal", "91 °F", "above"],
  ["sealant-storage", "80 °F", "within"],
  ["sealant-storage", "80.1 °F", "above"],
])("%s at %s: %s", (set, typed, verdict) => {
  expect(judge(quantity(typed), setLimits(set, {})).kind).toBe(verdict);
});
