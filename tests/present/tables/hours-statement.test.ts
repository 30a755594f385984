import { expect, test } from "vitest";
import { hoursText } from "../../../src/present/format/hours.ts";
import { hoursStatement } from "../../../src/present/tables/hours-statement.ts";
import { eventfulAnalysis, longAnalysis } from "../../support/eventful-build.ts";

test("is parted by person, month and role", () => {
  const rows = hoursStatement(eventfulAnalysis()).map(({ person, rows: each }) => [
    person.id,
    each.map(({ month, role, total }) => `${month} ${role} ${hoursText(total.build)}`),
  ]);
  expect(rows).toEqual([
    ["ada", ["2026-03 builder 8:28"]],
    ["jon", ["2026-03 paid help 1:45", "2026-03 unpaid help 0:45"]],
  ]);
});

test("adds up to the ledger: per person, and in all", () => {
  const analysis = longAnalysis(100);
  const statements = hoursStatement(analysis);
  for (const { person, rows, total } of statements) {
    expect(total.total).toEqual(analysis.hours.byPerson.get(person.id));
    expect(rows.reduce((sum, row) => sum + row.total.build, 0)).toBe(total.total.build);
    expect(rows.reduce((sum, row) => sum + row.total.apart, 0)).toBe(total.total.apart);
  }
  expect(statements.reduce((sum, { total }) => sum + total.total.build, 0)).toBe(
    analysis.hours.total.build,
  );
});
