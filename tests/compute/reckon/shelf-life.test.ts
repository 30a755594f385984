import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { expiryAfter } from "../../../src/compute/reckon/shelf-life.ts";
import { reckoned, refusal } from "../../support/reckoned.ts";

describe("by the calendar", () => {
  test.each([
    // made          life         passes  expiry
    ["2025-03-01", "9 months", 0, "2025-12-01"],
    ["2025-03-01", "9 months", 1, "2026-04-16"],
    ["2025-03-01", "9 months", 2, "2026-09-01"],
    ["2025-11-03", "9 months", 0, "2026-08-03"],
    ["2025-08-31", "6 months", 0, "2026-02-28"], // February has no 31st …
    ["2027-08-31", "6 months", 0, "2028-02-29"], // … and in 2028 a 29th
    ["2025-08-31", "6 months", 2, "2026-08-31"], // counted from the start, not from February
    ["2024-02-29", "1 year", 0, "2025-02-28"],
    ["2025-01-01", "180 days", 0, "2025-06-30"],
    ["2025-01-01", "45 days", 1, "2025-03-09"], // 67.5 days, rounded down
    ["2025-01-01", "6 weeks", 0, "2025-02-12"],
    ["2025-01-15", "1/2 month", 0, "2025-01-30"], // half of 31 days, rounded down
    ["2025-12-15", "1 month", 0, "2026-01-15"],
  ])("%s and %s, %s passes: %s", (made, life, passes, expiry) => {
    const typed = [`made=${made}`, `life=${life}`, `passes=${passes}`];
    expect(reckoned("shelf-life", ...typed).expiry).toBe(expiry);
  });

  test("no pass at all is the original expiry", () => {
    expect(reckoned("shelf-life", "made=2025-03-01", "life=9 months").expiries).toEqual([
      "2025-12-01",
    ]);
  });
});

describe("dates end with the year 9999", () => {
  test.each([
    [new Fraction(200_000), "months"],
    [new Fraction(95_999), "months"],
    [new Fraction(3_000_000), "days"],
    [new Fraction(10).pow(50), "days"],
  ] as const)("%s %s", (count, of) => {
    expect(expiryAfter("2000-01-01", { typed: "", count, of }, new Fraction(1))).toBeUndefined();
  });

  test("said in words", () => {
    expect(refusal("shelf-life", "made=2025-03-01", "life=9000 years")).toContain(
      "reaches beyond the year 9999",
    );
    expect(refusal("shelf-life", "made=2025-03-01", "life=9 months", "passes=21")).toContain(
      "21 passes",
    );
  });
});
