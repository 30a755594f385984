import { expect, test } from "vitest";
import { authorityText, limitsText } from "../../src/compute/limits-text.ts";
import { quantity, rule } from "../support/small-measurements.ts";

test("an end is exact, and as typed beside it where that differs", () => {
  const lower = quantity("0.121875 in");
  const upper = quantity("0.25 in");
  const mixed = rule({ lower: "1.3 D", upper: "0.25 in" });
  expect(limitsText({ lower, upper }, mixed)).toBe("0.121875 in (1.3 D) to 0.25 in");
  expect(limitsText({ lower }, mixed)).toBe("at least 0.121875 in (1.3 D)");
  expect(limitsText({ upper }, mixed)).toBe("at most 0.25 in");
});

test.each([
  ["drawing", "limit of the drawing: HS-03 (rev C)"],
  ["manual", "limit of the manual: HS-03 (rev C)"],
  ["published", "published limit, not the drawing's: HS-03 (rev C)"],
  ["common practice", "limit of common practice, not the drawing's: HS-03 (rev C)"],
] as const)("%s", (authority, text) => {
  const citation = { document: "HS-03", edition: "rev C" };
  expect(authorityText(rule({ authority, citation }))).toBe(text);
});

test.each([
  ["read", "limit of the manual: M"],
  ["secondary", "limit of the manual: M, copied second-hand and not from the publication itself"],
  ["memory", "limit of the manual: M, from memory and not checked against the publication"],
] as const)("a value that was %s", (status, text) => {
  expect(authorityText(rule({ citation: { document: "M", status } }))).toBe(text);
});
