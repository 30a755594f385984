import { describe, expect, test } from "vitest";
import { allTables } from "../../../src/present/tables/all-tables.ts";
import { hoursTable } from "../../../src/present/tables/hours.ts";
import { openItems } from "../../../src/present/tables/open-items.ts";
import { columnNamed } from "../../../src/present/tables/table.ts";
import {
  allHours,
  assemblyHours,
  monthHours,
  personHours,
  roleHours,
  stepHours,
} from "../../../src/present/tables/totals.ts";
import { eventfulAnalysis, longAnalysis } from "../../support/eventful-build.ts";

const analysis = eventfulAnalysis();

describe.each(allTables.map((table) => [table.name, table] as const))(
  "the table of %s",
  (_, table) => {
    test("has a key, a heading and a meaning for every column, and no key twice", () => {
      const keys = table.heads.map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);
      expect(new Set(table.heads.map(({ heading }) => heading)).size).toBe(keys.length);
      for (const { key, heading, means } of table.heads) {
        expect(key).toMatch(/^[a-z]+(_[a-z]+)*$/);
        expect(heading).toMatch(/^[A-Z]/);
        expect(means).toMatch(/\.$/);
      }
    });

    test("has as many cells in every row as columns", () => {
      for (const cells of table.cells(analysis)) expect(cells.length).toBe(table.heads.length);
    });

    test("says last where every row was typed", () => {
      expect(table.heads.slice(-2).map(({ key }) => key)).toEqual(["file", "line"]);
      for (const cells of table.cells(analysis)) {
        expect(cells.at(-2)).toMatch(/^content\//);
        expect(cells.at(-1)).toBeGreaterThan(0);
      }
    });
  },
);

test("a column can be asked for by its key, and a wrong key is a slip in the program", () => {
  expect(columnNamed(hoursTable, "minutes").heading).toBe("Minutes");
  expect(() => columnNamed(hoursTable, "hours")).toThrow("table hours has no column hours");
});

test("open items are what waits, and nothing that is settled", () => {
  const items = openItems(analysis).map(({ kind, id, what, standing }) => [
    kind,
    id ?? what,
    standing,
  ]);
  expect(items).toEqual([
    ["squawk", "S-005", "open"],
    ["deviation", "D-015", "no disposition"],
    ["deviation", "D-016", "no disposition"],
    ["reading", "R-4", "out of limits"],
    ["look", "driven heads", "last look held"],
  ]);
});

describe.each([
  ["eventful", analysis],
  ["long", longAnalysis(70)],
] as const)("the totals of the %s build", (_, each) => {
  const { total } = each.hours;
  const sum = (all: readonly { readonly total: { build: number; apart: number } }[]) => ({
    build: all.reduce((so, { total: { build } }) => so + build, 0),
    apart: all.reduce((so, { total: { apart } }) => so + apart, 0),
  });

  test("are the same by person, by role, by month, by step and by assembly", () => {
    expect(sum(personHours(each))).toEqual(total);
    expect(sum(roleHours(each))).toEqual(total);
    expect(sum(monthHours(each))).toEqual(total);
    expect(sum(stepHours(each).map(({ hours }) => ({ total: hours })))).toEqual(total);
    expect(sum(assemblyHours(each).map(({ own }) => ({ total: own })))).toEqual(total);
    expect(allHours(each).total).toEqual(total);
    const roots = assemblyHours(each).filter(({ depth }) => depth === 0);
    expect(sum(roots.map(({ rolledUp }) => ({ total: rolledUp })))).toEqual(total);
  });

  test("by kind are those of the ledger", () => {
    const minutes = [...each.hours.byKind].map(([kind, { build, apart }]) => [kind, build + apart]);
    expect([...allHours(each).byKind]).toEqual(minutes);
  });

  test("to date end at the total of the build", () => {
    expect(monthHours(each).at(-1)?.toDate).toBe(total.build);
  });
});
