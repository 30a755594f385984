import type { LimitTable, LimitTableRow } from "../model/limit-table.ts";
import type { Quantity } from "../model/quantity.ts";
import { type Bound, expressionDimension, type ToleranceRule } from "../model/tolerance.ts";
import { dimensionWords } from "./dimension-words.ts";
import type { Faults } from "./faults.ts";
import { readLimitTable } from "./limit-table.ts";
import { readBound } from "./quantity-shape.ts";
import type { TypedRule } from "./read-rules.ts";
import { readTolerance } from "./read-tolerance.ts";
import { given } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** The limits of a rule that is written out. */
export type WrittenLimits = Pick<ToleranceRule, "lower" | "upper" | "nominal" | "table">;

type Sizes = ReadonlyMap<string, Quantity>;

/**
 * Reads the limits of a rule: `at-least` and `at-most`; `nominal` with a `tolerance`; or a
 * `table`.
 * @returns `undefined` when a fault was added.
 */
export function readLimits(
  typed: TypedRule,
  sizes: Sizes,
  faults: Faults,
): WrittenLimits | undefined {
  const before = faults.found.length;
  const limits = typed.table
    ? readTableLimits(typed, typed.table, sizes, faults)
    : readPlainLimits(typed, sizes, faults);
  if (limits && faults.found.length === before) checkDimensions(typed, limits, sizes, faults);
  return faults.found.length > before ? undefined : limits;
}

function readPlainLimits(
  typed: TypedRule,
  sizes: Sizes,
  faults: Faults,
): WrittenLimits | undefined {
  const read = (node: TextNode | undefined) => node && readBound(node, sizes.keys(), faults);
  const lower = read(typed["at-least"]);
  const upper = read(typed["at-most"]);
  const nominal = read(typed.nominal);
  // What was typed and could not be read has its own fault already.
  const has = (key: string) => typed.node.entries.has(key);
  if (has("nominal") || has("tolerance")) {
    if (!has("nominal") || !has("tolerance") || has("at-least") || has("at-most")) {
      return faults.add("missing-key", (typed.nominal ?? typed.id).span, {
        message: "`nominal` and `tolerance` stand together, without `at-least` and `at-most`",
        help: ["write `nominal: 12.500 in` and `tolerance: 0.015 in`"],
      });
    }
    return nominal && typed.tolerance && around(nominal, typed.tolerance, sizes, faults);
  }
  if (has("table")) return undefined;
  if (!has("at-least") && !has("at-most")) {
    return faults.add("missing-key", typed.id.span, {
      message: `rule \`${typed.id.text}\` has no limit`,
      help: ["write `at-least`, `at-most` or both; `nominal` and `tolerance`; or a `table`"],
    });
  }
  return given({ lower, upper });
}

function readTableLimits(
  typed: TypedRule,
  rows: NonNullable<TypedRule["table"]>,
  sizes: Sizes,
  faults: Faults,
): WrittenLimits | undefined {
  for (const key of ["at-least", "at-most", "nominal"] as const) {
    const entry = typed.node.entries.get(key);
    if (!entry) continue;
    faults.add("unknown-key", entry.key.span, {
      message: `a rule with \`table\` has no \`${key}\`: it is a column of the table`,
      help: [`leave \`${key}\` out, or leave \`table\` out`],
    });
  }
  const table = readLimitTable(rows, typed.node.entries.get("table")?.key ?? typed.id, faults);
  if (!table) return undefined;
  const nominal = columnBound(table, "nominal");
  if (nominal && typed.tolerance) {
    const limits = around(nominal, typed.tolerance, sizes, faults);
    return limits && { ...limits, table };
  }
  if (nominal || typed.tolerance) {
    const place = typed.node.entries.get(nominal ? "table" : "tolerance")?.key ?? typed.id;
    return faults.add("missing-key", place.span, {
      message: "a table with a `nominal` column and a `tolerance` stand together",
      help: ["write `tolerance: 5 lbf` beside the table, or `at-least` and `at-most` as columns"],
    });
  }
  return given({
    lower: columnBound(table, "lower"),
    upper: columnBound(table, "upper"),
    table,
  });
}

function columnBound(
  { by, rows }: LimitTable,
  name: keyof Omit<LimitTableRow, "at">,
): Bound | undefined {
  const column = rows.flatMap((row) => {
    const value = row[name];
    return value ? [{ at: row.at, value }] : [];
  });
  if (column.length === 0) return undefined;
  return { typed: `table by ${by}`, expression: { kind: "table", by, column } };
}

function around(
  nominal: Bound,
  { plus, minus, same }: NonNullable<TypedRule["tolerance"]>,
  sizes: Sizes,
  faults: Faults,
): WrittenLimits | undefined {
  const up = readTolerance(plus, same ? "both" : "plus", sizes.keys(), faults);
  const down = same ? up : readTolerance(minus, "minus", sizes.keys(), faults);
  if (!up || !down) return undefined;
  return {
    nominal,
    lower: {
      typed: `${nominal.typed} - ${down.typed}`,
      expression: { kind: "difference", left: nominal.expression, right: down.expression },
    },
    upper: {
      typed: `${nominal.typed} + ${up.typed}`,
      expression: { kind: "sum", left: nominal.expression, right: up.expression },
    },
  };
}

function checkDimensions(
  typed: TypedRule,
  { lower, upper, table }: WrittenLimits,
  sizes: Sizes,
  faults: Faults,
): void {
  const [row] = table?.rows ?? [];
  const known = table && row ? new Map([...sizes, [table.by, row.at]]) : sizes;
  const low = lower && expressionDimension(lower.expression, known);
  const high = upper && expressionDimension(upper.expression, known);
  const { minus, plus } = typed.tolerance ?? {};
  const sides = [
    [low, lower, typed["at-least"] ?? minus],
    [high, upper, typed["at-most"] ?? plus],
  ] as const;
  for (const [side, bound, node] of sides) {
    const words = side && bound && dimensionWords(side, bound.typed);
    if (!words || !node) continue;
    faults.add("wrong-dimension", node.span, words);
    // The two sides of one tolerance have one fault.
    if (typed.tolerance) return;
  }
  if (low?.kind !== "dimension" || high?.kind !== "dimension") return;
  if (low.dimension === high.dimension) return;
  const node = typed["at-most"] ?? typed.id;
  faults.add("wrong-dimension", node.span, {
    message: `\`at-least\` is a ${low.dimension}, \`at-most\` is a ${high.dimension}`,
    help: ["write both limits in units of the same kind"],
  });
}
