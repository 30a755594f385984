import { describe, expect, test } from "vitest";
import { readingsLedger } from "../../../../src/compute/ledgers/readings.ts";
import type { ToleranceRule } from "../../../../src/model/tolerance.ts";
import { runChart } from "../../../../src/present/pages/views/run-chart.ts";
import { tableRule } from "../../../support/limit-tables.ts";
import { day, register, smallBuild, span } from "../../../support/small-build.ts";
import { quantity, reading, rule } from "../../../support/small-measurements.ts";

const heads = rule({ lower: "0.12 in", upper: "0.16 in", sizes: {} });

function chartOf(
  values: Readonly<Record<string, readonly string[]>>,
  by: ToleranceRule = heads,
  temperatures: Readonly<Record<string, string>> = {},
) {
  const days = Object.entries(values).map(([date, typed], index) => {
    const at = temperatures[date];
    const temperature =
      at === undefined ? {} : { temperature: { quantity: quantity(at), from: "day" as const } };
    const one = reading(typed, { id: `R-${index}`, date, rule: by.id, ...temperature });
    return day({ date, readings: [one] });
  });
  return runChart(by.title, readingsLedger(smallBuild({ rules: register(by), days })));
}

const number = (percent: string | undefined) => Number(percent?.replace("%", ""));

test("fewer than two days are not drawn", () => {
  expect(chartOf({})).toBeUndefined();
  expect(chartOf({ "2026-03-14": ["0.13 in", "0.14 in"] })).toBeUndefined();
});

describe("a chart", () => {
  const chart = chartOf({
    "2026-03-01": ["0.12 in", "0.15 in"],
    "2026-03-31": ["0.17 in"],
    "2026-05-30": ["0.14 in"],
  });

  test("goes over the days, and up with the values", () => {
    expect(chart?.marks.map(({ x }) => x)).toEqual(["2%", "2%", "34%", "98%"]);
    const [low, high, out, last] = chart?.marks.map(({ y }) => number(y)) ?? [];
    expect(out).toBeLessThan(high ?? 0);
    expect(high).toBeLessThan(last ?? 0);
    expect(last).toBeLessThan(low ?? 0);
    for (const { y } of chart?.marks ?? []) {
      expect(number(y)).toBeGreaterThan(0);
      expect(number(y)).toBeLessThan(100);
    }
  });

  test("has the limits that all readings share across it, at their places", () => {
    const [upper, lower] = chart?.limits ?? [];
    expect([upper?.text, lower?.text]).toEqual(["0.16 in", "0.12 in"]);
    expect(lower?.y).toBe(chart?.marks[0]?.y); // 0.12 in is on the limit
    expect(chart?.band?.y).toBe(upper?.y);
    expect(number(chart?.band?.y) + number(chart?.band?.height)).toBeCloseTo(number(lower?.y), 0);
    expect(chart?.spans).toEqual([]);
  });

  test("marks what lies outside, and says all of it in words", () => {
    expect(chart?.marks.map(({ out }) => out)).toEqual([false, false, true, false]);
    expect(chart?.summary).toBe(
      "Shop head diameter, 3/32 rivet: 4 values from 1 March 2026 to 30 May 2026, from 0.12 in to 0.17 in; 1 outside the limits.",
    );
  });

  test("has a tick for every month, and labels that do not meet", () => {
    const long = chartOf({ "2025-01-10": ["0.13 in"], "2026-12-20": ["0.14 in"] });
    expect(long?.months).toHaveLength(24);
    const labelled = (long?.months ?? []).filter(({ label }) => label !== undefined);
    expect(labelled[0]?.label).toBe("2025-01");
    for (const [index, { x }] of labelled.entries()) {
      const next = labelled[index + 1];
      if (next) expect(number(next.x) - number(x)).toBeGreaterThanOrEqual(23);
      expect(number(x)).toBeLessThanOrEqual(80);
    }
  });
});

test("one limit leaves the other side open to the edge", () => {
  const values = { "2026-03-01": ["0.13 in"], "2026-04-01": ["0.14 in"] };
  const least = chartOf(values, rule({ lower: "0.12 in", sizes: {} }));
  expect(least?.band?.y).toBe("0%");
  expect(least?.limits.map(({ above }) => above)).toEqual([false]);
  const most = chartOf(values, rule({ upper: "0.16 in", sizes: {} }));
  expect(number(most?.band?.y) + number(most?.band?.height)).toBeCloseTo(100, 0);
});

test("limits that change from reading to reading are drawn at each", () => {
  const chart = chartOf(
    { "2026-01-03": ["55 lbf"], "2026-07-25": ["68 lbf"], "2026-08-01": ["70 lbf"] },
    tableRule(),
    { "2026-01-03": "45 °F", "2026-07-25": "80 °F", "2026-08-01": "99 °F" },
  );
  expect(chart).not.toHaveProperty("band");
  expect(chart?.limits).toEqual([]);
  // The third is outside the table: it has a place and no limits.
  expect(chart?.spans).toHaveLength(2);
  expect(chart?.marks).toHaveLength(3);
  expect(chart?.spans[0]?.x).toBe(chart?.marks[0]?.x);
});

test("what a later reading replaces is marked as that, and not counted as outside", () => {
  const first = reading(["0.10 in"], { id: "R-1", date: "2026-03-01" });
  const again = reading(["0.14 in"], { id: "R-2", date: "2026-04-01", supersedes: "R-1" });
  const build = smallBuild({
    rules: register(heads),
    days: [
      day({ date: "2026-03-01", readings: [first] }),
      day({ date: "2026-04-01", readings: [again] }),
    ],
  });
  const chart = runChart("Heads", readingsLedger(build));
  expect(chart?.marks.map(({ replaced }) => replaced)).toEqual([true, false]);
  expect(chart?.summary).toContain("none outside the limits");
});

test("readings that are all alike still have room around them", () => {
  const none = rule({ lower: "0.14 in", upper: "0.14 in", sizes: {} });
  const chart = chartOf({ "2026-03-01": ["0.14 in"], "2026-04-01": ["0.14 in"] }, none);
  expect(chart?.marks.map(({ y }) => y)).toEqual(["50%", "50%"]);
});

describe("values that were amended since", () => {
  const days = ["2026-03-01", "2026-03-31"].map((date, index) =>
    day({ date, readings: [reading(["0.13 in"], { id: `R-${index}`, date, rule: heads.id })] }),
  );
  const judged = readingsLedger(smallBuild({ rules: register(heads), days }));
  const amendedTo = (...values: string[]) => {
    const amendment = {
      date: "2026-04-01",
      day: "2026-03-01",
      field: "readings[1].value",
      was: values.join(),
      now: "0.13 in",
      why: "misread",
      reading: { id: "R-0", values: values.map(quantity) },
      span: span(),
    };
    return runChart("Heads", judged, new Map([["R-0", [amendment]]]));
  };

  test("stand at the day of their reading, and the scale makes room for one that is near", () => {
    const chart = amendedTo("0.175 in");
    expect(chart?.struck).toHaveLength(1);
    expect(chart?.struck[0]).toMatchObject({ x: chart?.marks[0]?.x, beyond: false });
    expect(number(chart?.struck[0]?.y)).toBeLessThan(number(chart?.limits[0]?.y));
    expect(chart?.summary).toContain("2 values");
    expect(chart?.summary).toContain("1 amended since, drawn as a cross");
  });

  test("far off are drawn at the edge, and leave the scale alone", () => {
    const [plain, chart] = [amendedTo(), amendedTo("13 in", "-13 in")];
    expect(chart?.struck).toMatchObject([
      { y: "2%", beyond: true },
      { y: "98%", beyond: true },
    ]);
    expect(chart?.marks).toEqual(plain?.marks);
  });

  test("of another kind, or the same as what stands now, are not drawn", () => {
    expect(amendedTo("12 lbf·in", "3.302 mm")?.struck).toEqual([]);
  });
});
