import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { HoursLedger } from "../../src/compute/analysis.ts";
import { forecast, type Pace, paceOf } from "../../src/compute/forecast.ts";

const ledger = (months: Readonly<Record<string, number>>) =>
  ({
    byMonth: new Map(
      Object.entries(months).map(([month, build]) => [month, { build, apart: 999 }]),
    ),
  }) as unknown as HoursLedger;

const pace = (...minutes: readonly number[]): Pace => ({
  months: minutes.map((each, index) => ({
    month: `2026-${String(index + 1).padStart(2, "0")}`,
    minutes: each,
  })),
  minutes: minutes.reduce((sum, each) => sum + each, 0),
});

const asOf = "2026-11-10";

describe("pace", () => {
  test("counts whole months, those without an entry too", () => {
    const { months, minutes } = paceOf(
      ledger({ "2026-06": 50, "2026-07": 300, "2026-09": 120, "2026-11": 45 }),
      asOf,
    );
    expect(months).toEqual([
      { month: "2026-07", minutes: 300 },
      { month: "2026-08", minutes: 0 },
      { month: "2026-09", minutes: 120 },
      { month: "2026-10", minutes: 0 },
    ]);
    expect(minutes).toBe(420);
  });

  test("a month is whole on its last day", () => {
    const hours = ledger({ "2026-01": 1, "2026-02": 2 });
    expect(paceOf(hours, "2026-02-27").months).toEqual([]);
    expect(paceOf(hours, "2026-02-28").months).toEqual([{ month: "2026-02", minutes: 2 }]);
  });

  test("goes back twelve months and over the turn of the year", () => {
    const { months } = paceOf(ledger({ "2024-05": 60 }), "2026-03-31");
    expect(months.map(({ month }) => month)).toEqual([
      ...["2025-04", "2025-05", "2025-06", "2025-07", "2025-08", "2025-09", "2025-10", "2025-11"],
      ...["2025-12", "2026-01", "2026-02", "2026-03"],
    ]);
  });

  test("nothing at all has no months", () => {
    expect(paceOf(ledger({}), asOf)).toEqual({ months: [], minutes: 0 });
  });
});

describe("forecast", () => {
  test("equal months leave no spread", () => {
    expect(forecast(pace(60, 60, 60, 60, 60, 60), 100, 280, asOf)).toEqual({
      kind: "forecast",
      expected: 280,
      remaining: 180,
      tenth: { months: 3, month: "2027-02" },
      half: { months: 3, month: "2027-02" },
      ninetieth: { months: 3, month: "2027-02" },
    });
  });

  // One month in two: after k months 1 - 1/2^k of all ways are done, 15/16 after four.
  test("an hour left, with every other month idle", () => {
    expect(forecast(pace(0, 60, 0, 60, 0, 60), 0, 60, asOf)).toMatchObject({
      tenth: { months: 1 },
      half: { months: 1 },
      ninetieth: { months: 4 },
    });
  });

  // Two out of k tosses: 1/4, 1/2, 11/16, 13/16, 57/64, 15/16.
  test("two hours left, with every other month idle", () => {
    expect(forecast(pace(0, 60, 0, 60, 0, 60), 0, 120, asOf)).toMatchObject({
      tenth: { months: 2 },
      half: { months: 3 },
      ninetieth: { months: 7 },
    });
  });

  test("is refused with its reason", () => {
    const year = pace(60, 60, 60, 60, 60, 60);
    const why = (...args: Parameters<typeof forecast>) => {
      const answer = forecast(...args);
      return answer.kind === "refused" ? answer.why : answer;
    };
    expect(why(year, 10, undefined, asOf)).toBe("nothing expected");
    expect(why(year, 600, 600, asOf)).toBe("already there");
    expect(why(pace(60, 60, 60, 60, 60), 10, 600, asOf)).toBe("too few months");
    expect(why(pace(0, 0, 0, 0, 0, 0), 10, 600, asOf)).toBe("nothing booked");
    expect(why(pace(0, 0, 0, 0, 0, 1), 0, 600_000, asOf)).toBe("too far");
  });

  test("much that remains is counted coarsely, and quickly", () => {
    const odd = Array.from({ length: 12 }, (_, index) => 18_001 + 2 * index);
    const answer = forecast(pace(...odd), 0, 200 * 18_012, asOf);
    expect(answer).toMatchObject({ half: { months: 200 } });
  });

  test("three dates in their order, for any pace, and no month ahead of its fastest", () => {
    const anyPace = fc.array(fc.integer({ min: 0, max: 6000 }), { minLength: 6, maxLength: 12 });
    fc.assert(
      fc.property(anyPace, fc.integer({ min: 1, max: 60_000 }), (minutes, remaining) => {
        const answer = forecast(pace(...minutes), 0, remaining, asOf);
        if (answer.kind === "refused") return;
        const { tenth, half, ninetieth } = answer;
        expect(tenth.months).toBeLessThanOrEqual(half.months);
        expect(half.months).toBeLessThanOrEqual(ninetieth.months);
        expect(tenth.months).toBeGreaterThanOrEqual(Math.ceil(remaining / Math.max(...minutes)));
      }),
      { numRuns: 40 },
    );
  });
});
