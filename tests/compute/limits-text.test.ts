import { expect, test } from "vitest";
import { authorityText, limitsText, precedenceText } from "../../src/compute/limits-text.ts";
import { tableRule } from "../support/limit-tables.ts";
import { quantity, rule, sizes } from "../support/small-measurements.ts";

test("an end is exact, and as typed beside it where that differs", () => {
  const lower = quantity("0.121875 in");
  const upper = quantity("0.25 in");
  const mixed = rule({ lower: "1.3 D", upper: "0.25 in" });
  expect(limitsText({ lower, upper }, mixed)).toBe("0.121875 in (1.3 D) to 0.25 in");
  expect(limitsText({ lower }, mixed)).toBe("at least 0.121875 in (1.3 D)");
  expect(limitsText({ upper }, mixed)).toBe("at most 0.25 in");
});

test("limits of a table say what it was entered with", () => {
  const [lower, upper] = [quantity("57.2 lbf"), quantity("65.2 lbf")];
  const cable = tableRule();
  const at = sizes({ temperature: "53 °F" });
  expect(limitsText({ lower, upper }, cable, at)).toBe("57.2 lbf to 65.2 lbf at 53 °F");
  expect(limitsText({ lower }, cable, at)).toBe("at least 57.2 lbf at 53 °F");
  expect(limitsText({ upper }, cable)).toBe("at most 65.2 lbf");
  expect(limitsText({}, cable, at)).toBe("no limits at 53 °F");
});

test.each([
  ["drawing", "published", "a limit of the drawing comes before a published one"],
  ["manual", "common practice", "a limit of the manual comes before one of common practice"],
  ["drawing", "manual", "a limit of the drawing comes before a limit of the manual"],
  ["manual", "manual", "it is given for this step, the other in general"],
] as const)("why a %s rule wins over a %s one", (authority, other, why) => {
  const over = rule({ id: "general", authority: other });
  expect(precedenceText(rule({ authority }), over)).toBe(`it wins over \`general\`: ${why}`);
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
