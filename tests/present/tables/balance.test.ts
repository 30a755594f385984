import { expect, test } from "vitest";
import { tablesOf } from "../../../src/present/tables/all-tables.ts";
import { balanceRows, balanceTable } from "../../../src/present/tables/balance.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { analysisWith, eventfulBalance } from "../../support/weighed.ts";

const analysis = analysisWith(eventfulBalance);
const rows = balanceRows(analysis);
const columns = balanceTable.columns.map(({ key }) => key);
const cells = balanceTable.cells(analysis).map((row) => {
  return Object.fromEntries(row.map((cell, index) => [columns[index], cell]));
});

test("the lines before a sum add up to it, weight and moment alike", () => {
  let [weight, moment] = [0, 0];
  let sums = 0;
  for (const row of cells) {
    if (row.row === "line") {
      weight += Number(row.weight);
      moment += Number(row.moment);
    } else if (row.part !== "empty weight") {
      expect(weight).toBeCloseTo(Number(row.weight), 8);
      expect(moment).toBeCloseTo(Number(row.moment), 6);
      [weight, moment] = [0, 0];
      sums += 1;
    }
  }
  // Three weighings, the projection, three changes and four cases.
  expect(sums).toBe(11);
});

test("every row says what it is, as typed and as understood", () => {
  expect(cells.find(({ what }) => what === "nose wheel")).toMatchObject({
    part: "weighing",
    id: "W-1",
    row: "line",
    weight_as_typed: "82.5 kg less 2 lb",
    arm_as_typed: "-24 in",
    estimated: false,
    weight_unit: "lb",
    arm: -24,
    moment_unit: "lb·in",
  });
  expect(cells.find(({ what }) => what === "right main wheel")?.weight_as_typed).toBe("425 lb");
  expect(cells.find(({ what }) => what === "seat cushions")).toMatchObject({
    weight_as_typed: "4 lb",
    estimated: true,
  });
  expect(cells.find(({ what }) => what === "both")?.weight_as_typed).toBe("2 × 190 lb");
  expect(cells.find(({ what }) => what === "empty aircraft")?.weight_as_typed).toBeUndefined();
  expect(
    cells.filter(({ verdict }) => verdict !== undefined).map(({ verdict }) => verdict),
  ).toEqual([
    "inside the limits given",
    "outside: too heavy by 19.50 lb",
    "outside: behind the aft limit by 6.70 in",
    "inside the limits given",
  ]);
});

test("the last row is the empty weight in force", () => {
  expect(cells.at(-1)).toMatchObject({
    part: "empty weight",
    date: "2026-08-01",
    weight: 1029.5,
    moment: 22_546,
    percent_mac: expect.closeTo(23.8, 1),
  });
});

test("every row was typed somewhere in the register", () => {
  expect(rows.every(({ span }) => span.file === "journal/balance.yaml" && span.line > 0)).toBe(
    true,
  );
});

test("there is such a table only where there is a register", () => {
  expect(tablesOf(analysis)).toContain(balanceTable);
  expect(tablesOf(eventfulAnalysis())).not.toContain(balanceTable);
  expect(balanceRows(eventfulAnalysis())).toEqual([]);
  expect(balanceRows(analysisWith("")).map(({ part }) => part)).toEqual([]);
});
