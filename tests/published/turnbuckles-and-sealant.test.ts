import { expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
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

// Source: NAVEDTRA 14315: the dash number is the application time in hours after mixing.
test.each([
  ["2", "2 h", "within"],
  ["2", "121 min", "above"],
  ["1/2", "30 min", "within"],
  ["1/2", "0.51 h", "above"],
])("sealant of dash %s put on %s after mixing: %s", (dash, time, verdict) => {
  const limits = setLimits("sealant-application-time", { dash });
  expect(judge(quantity(time), limits).kind).toBe(verdict);
});

// Source: USAF TO 1-1-700, par. 12.5.1.2 (wets poorly at 60 °F (16 °C) and below; the copy
// misprints 600 °F (160 °C)), 12.5.1.3 (cool to 90 °F or lower) and 12.8 (not above 80 °F).
// Army TM 1-1500-204-23-6, par. 6-1d: not above 110 °F.
test.each([
  ["sealant-cold-metal-to-1-1-700", "60 °F", "below"],
  ["sealant-cold-metal-to-1-1-700", "15.9 °C", "below"],
  ["sealant-cold-metal-to-1-1-700", "16 °C", "within"],
  ["sealant-hot-metal", "90 °F", "within"],
  ["sealant-hot-metal", "100 °F", "above"],
  ["sealant-storage", "80 °F", "within"],
  ["sealant-storage", "81 °F", "above"],
  ["sealant-warming-to-1-1-700", "119 °F", "below"],
  ["sealant-warming-to-1-1-700", "120 °F", "within"],
  ["sealant-warming-to-1-1-700", "140 °F", "within"],
  ["sealant-warming-to-1-1-700", "141 °F", "above"],
  ["cement-warming-army-tm", "110 °F", "within"],
  ["cement-warming-army-tm", "110.1 °F", "above"],
])("%s: %s is %s", (set, temperature, verdict) => {
  expect(judge(quantity(temperature), setLimits(set, {})).kind).toBe(verdict);
});

// Source: an airliner's maintenance manual, 28-11-0, page 812: ideal are 77 °F and 50 ± 5 %;
// mixed and frozen sealant is rejected after 21 days at -40 °F, 7 days at -20 °F.
test.each([
  ["44 %", "below"],
  ["45 %", "within"],
  ["55 %", "within"],
  ["56 %", "above"],
])("humidity of %s for curing sealant: %s", (humidity, verdict) => {
  const limits = setLimits("sealant-air-airliner", { of: "humidity" });
  expect(judge(quantity(humidity), limits).kind).toBe(verdict);
});

test("the ideal temperature is 77 °F, without a limit", () => {
  const answer = askSet("sealant-air-airliner", { of: "temperature" });
  expect(answer.ok && answer.nominal?.typed).toBe("77 °F");
  expect(setLimits("sealant-air-airliner", { of: "temperature" })).toEqual({});
});

test.each([
  ["-40 °F", "21 d", "within"],
  ["-40 °F", "22 d", "above"],
  ["-20 °F", "7 d", "within"],
  ["-20 °F", "8 d", "above"],
])("sealant frozen at %s for %s: %s", (storage, time, verdict) => {
  const limits = setLimits("sealant-mixed-frozen-airliner", { storage });
  expect(judge(quantity(time), limits).kind).toBe(verdict);
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
