import { expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { setLimits } from "../support/set-limits.ts";
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
