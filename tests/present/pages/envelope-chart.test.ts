import { describe, expect, test } from "vitest";
import {
  type EnvelopeChart,
  envelopeChart,
} from "../../../src/present/pages/views/envelope-chart.ts";
import { eventfulBalance, weighed } from "../../support/weighed.ts";

function chartOf(yaml: string): EnvelopeChart {
  const chart = envelopeChart(weighed(yaml).ledger);
  if (!chart) throw new Error("there is no chart");
  return chart;
}

const weighing =
  "weighings:\n  - { id: W-1, on: 2026-03-14, title: First, points: [{ at: all, reads: 1000 lb, arm: 30 in }] }\n";
const limits = (text: string) => `limits: { source: { document: Sheet }, ${text} }\n`;
const corners = (line: string) =>
  line.split(" ").map((corner) => corner.split(",").map(Number) as [number, number]);

/** Where arms and weights stand on the chart, from its own scales. */
function scales({ arms, weights }: EnvelopeChart) {
  const through = (marks: readonly { readonly at: number; readonly value: number }[]) => {
    const [first, last] = [marks[0], marks.at(-1)];
    if (!first || !last) throw new Error("there is no scale");
    const step = (last.value - first.value) / (last.at - first.at);
    return (at: number) => first.value + (at - first.at) * step;
  };
  return {
    arm: through(arms.map(({ x, label }) => ({ at: x, value: Number(label) }))),
    weight: through(weights.map(({ y, label }) => ({ at: y, value: Number(label) }))),
  };
}

test("marks stand where the table has them, by the chart's own scales", () => {
  const chart = chartOf(eventfulBalance);
  const { arm, weight } = scales(chart);
  const places = chart.marks.map(({ x, y, label, kind }) => [
    label,
    kind,
    Math.round(weight(y) / 5) * 5,
    Math.round(arm(x) * 10) / 10,
  ]);
  expect(places).toEqual([
    ["E", "empty", 1030, 21.9],
    ["1", "inside", 1285, 24],
    ["2", "outside", 1470, 27],
    ["3", "outside", 1205, 34.7],
    ["4", "inside", 1105, 23.1],
  ]);
});

test("the outline runs from the lowest corner up to the greatest weight", () => {
  const chart = chartOf(eventfulBalance);
  const { arm, weight } = scales(chart);
  const outline = corners(chart.area ?? "").map(([x, y]) => [
    Math.round(arm(x) * 10) / 10,
    Math.round(weight(y)),
  ]);
  expect(outline).toEqual([
    [20, 1000],
    [21.8, 1450],
    [28, 1450],
    [28, 1000],
  ]);
  expect(chart.lines).toHaveLength(3);
});

describe("limits on one side", () => {
  test("a forward limit and a greatest weight are lines, and enclose nothing", () => {
    const chart = chartOf(`${limits("max-weight: 1500 lb, forward: 25 in")}${weighing}`);
    expect(chart).not.toHaveProperty("area");
    expect(chart.lines).toHaveLength(2);
    const across = corners(chart.lines[1] ?? "");
    expect(across.map(([x]) => x)).toEqual([0, 1000]);
  });

  test("without a greatest weight the outline ends with the corners", () => {
    const chart = chartOf(
      `${limits("forward: 25 in, aft: [{ weight: 900 lb, arm: 40 in }, { weight: 1200 lb, arm: 42 in }]")}${weighing}`,
    );
    expect(chart.lines).toHaveLength(2);
    const { weight } = scales(chart);
    expect(corners(chart.area ?? "").map(([, y]) => Math.round(weight(y)))).toEqual([
      900, 1200, 1200, 900,
    ]);
  });

  test("no limits at all leave the marks", () => {
    const chart = chartOf(`${weighing}cases:\n  - { id: L-1, title: One, items: [] }\n`);
    expect(chart.lines).toEqual([]);
    expect(chart.summary).toContain("1 loading case, no limits declared");
  });
});

test("marks in one place share a label, so that none is printed over another", () => {
  const { marks } = chartOf(
    `${weighing}cases:\n  - { id: L-1, title: One, items: [] }\n  - { id: L-2, title: Two, items: [{ what: pilot, weight: 170 lb, arm: 40 in }] }\n`,
  );
  expect(marks.map(({ label }) => label)).toEqual(["E, 1", "", "2"]);
});

test("there is a chart as soon as something has a centre of gravity, and a summary of it", () => {
  expect(envelopeChart(weighed("").ledger)).toBeUndefined();
  expect(chartOf(weighing).summary).toBe(
    "Empty aircraft at 1000.00 lb and 30.00 in. 0 loading cases, no limits declared.",
  );
  expect(chartOf(eventfulBalance).summary).toContain("outside the limits: number 2, 3.");
});
