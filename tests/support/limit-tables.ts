// Tables of limits as a builder types them from a manual.

import type { LimitTable } from "../../src/model/limit-table.ts";
import type { ToleranceRule } from "../../src/model/tolerance.ts";
import { quantity, rule } from "./small-measurements.ts";

type Row = readonly [at: string, lower: string, upper: string];

/** Cable tension against temperature, invented. */
export const cableRows: readonly Row[] = [
  ["40 °F", "52 lbf", "60 lbf"],
  ["60 °F", "60 lbf", "68 lbf"],
  ["90 °F", "70 lbf", "80 lbf"],
];

/** A table with a lower and an upper limit in each row. */
export function limitTable(rows: readonly Row[] = cableRows, by = "temperature"): LimitTable {
  return {
    by,
    rows: rows.map(([at, lower, upper]) => ({
      at: quantity(at),
      lower: quantity(lower),
      upper: quantity(upper),
    })),
  };
}

/** A rule of the manual whose limits are such a table. */
export function tableRule(
  table: LimitTable = limitTable(),
  overrides: Partial<Omit<ToleranceRule, "lower" | "upper" | "sizes">> = {},
): ToleranceRule {
  const { lower: _lower, upper: _upper, ...rest } = rule({ sizes: {} });
  const bound = (end: "lower" | "upper") => ({
    typed: `table by ${table.by}`,
    expression: {
      kind: "table" as const,
      by: table.by,
      column: table.rows.flatMap((row) => {
        const value = row[end];
        return value ? [{ at: row.at, value }] : [];
      }),
    },
  });
  return {
    ...rest,
    id: "cable",
    title: "Elevator cable tension",
    lower: bound("lower"),
    upper: bound("upper"),
    table,
    ...overrides,
  };
}
