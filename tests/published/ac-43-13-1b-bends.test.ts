// Source: FAA AC 43.13-1B (8 Sep 1998, change 1 27 Sep 2001), table 4-6, "Recommended radii for
// 90-degree bends in aluminum alloys", page 4-14, from a copy of the page. Ranges are multiples
// of the thickness t.

import { describe, expect, test } from "vitest";
import { judge } from "../../src/compute/judge.ts";
import { askSet, ruleSetNamed, setLimits } from "../support/set-limits.ts";
import { quantity } from "../support/typed-quantity.ts";

const set = "bend-radius-ac43-13-1b-table-4-6";
const columns = ["0.016", "0.032", "0.064", "0.128", "0.182", "0.258"] as const;

// biome-ignore format: laid out as the table is printed
const table4_6 = [
  ["2024-0",   [0, 0],     [0, 1],     [0, 1],     [0, 1],     [0, 1],     [0, 1]],
  ["2024-T3",  [1.5, 3],   [2, 4],     [3, 5],     [4, 6],     [4, 6],     [5, 7]],
  ["5052-0",   [0, 0],     [0, 0],     [0, 1],     [0, 1],     [0, 1],     [0, 1]],
  ["5052-H32", [0, 0],     [0, 0],     [0.5, 1],   [0.5, 1.5], [0.5, 1.5], [0.5, 1.5]],
  ["5052-H34", [0, 0],     [0, 0],     [0.5, 1.5], [1.5, 2.5], [1.5, 2.5], [2, 3]],
  ["6061-0",   [0, 0],     [0, 1],     [0, 1],     [0, 1],     [0, 1],     [0, 1]],
  ["6061-T6",  [0, 1],     [0.5, 1.5], [1, 2],     [1.5, 3],   [2, 4],     [3, 4]],
  ["7075-T6",  [2, 4],     [3, 5],     [4, 6],     [5, 7],     [5, 7],     [6, 10]],
  ["2024-T61", [2, 4],     [3, 5],     [3, 5],     [4, 6],     [5, 7],     [6, 10]],
  ["5052-H36", [0, 1],     [0.5, 1.5], [1, 2],     [1.5, 3],   [2, 4],     [2, 4]],
  ["5052-H38", [0.5, 1.5], [1, 2],     [1.5, 3],   [2, 4],     [3, 5],     [4, 6]],
  ["6061-T4",  [0, 1],     [0, 1],     [0.5, 1.5], [1, 2],     [1.5, 3],   [2.5, 4]],
  ["7075-0",   [0, 0],     [0, 1],     [0, 1],     [0.5, 1.5], [1, 2],     [1.5, 3]],
] as const;

describe.each(table4_6)("table 4-6: %s", (alloy, ...ranges) => {
  test.each(columns.map((column, index) => [column, ranges[index]] as const))(
    "the column for %s in",
    (column, range) => {
      // A sheet of 1 in makes the multiple readable as the limit itself.
      const limit = (end: string) =>
        setLimits(set, { alloy, column, end, t: "1 in" }).lower?.amount.valueOf();
      expect([limit("low"), limit("high")]).toEqual(range);
    },
  );
});

test("the set knows the alloys of the table and no others", () => {
  const [alloy] = ruleSetNamed(set).parameters;
  const names = table4_6.map(([name]) => name);
  expect(alloy?.kind === "choice" && [...alloy.values].toSorted()).toEqual(names.toSorted());
});

// FAA-H-8083-31: smallest radius for 0.040 in 2024-T3 is 0.16 in, from a maker's chart.
test.each([
  ["0.032", "high"],
  ["0.064", "low"],
])("the handbook's 0.16 in for 0.040 in 2024-T3 meets the %s in column's %s end", (column, end) => {
  const limits = setLimits(set, { alloy: "2024-T3", column, end, t: "0.040 in" });
  expect(judge(quantity("0.16 in"), limits).kind).toBe("within");
});

test("a thickness between columns is not interpolated", () => {
  const answer = askSet(set, { alloy: "2024-T3", column: "0.040", end: "low", t: "0.040 in" });
  expect(answer.ok || answer.parameter).toBe("column");
});
