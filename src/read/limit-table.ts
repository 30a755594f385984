import type { LimitTable, LimitTableRow } from "../model/limit-table.ts";
import { compareQuantities, type Quantity } from "../model/quantity.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import { quantity } from "./quantity-shape.ts";
import { list, type Shape, text } from "./shape.ts";
import type { ListNode, TextNode } from "./typed-tree.ts";

/** How a table of limits looks, for messages. */
export const limitTableExample =
  "table: [[temperature, at-least, at-most], [40 °F, 52 lbf, 60 lbf], [80 °F, 66 lbf, 74 lbf]]";

const columns = { "at-least": "lower", "at-most": "upper", nominal: "nominal" } as const;
type ColumnName = keyof typeof columns;
const columnNames = Object.keys(columns) as ColumnName[];

interface TypedRow {
  readonly node: ListNode;
  readonly cells: readonly TextNode[];
}

/** A table as typed: a head and the rows below it, each a list of words or quantities. */
export const limitTableShape: Shape<readonly TypedRow[]> = (node, faults) => {
  const before = faults.found.length;
  const rows = list("rows", rowShape, limitTableExample)(node, faults);
  // A row that is left out would move the line between its neighbours.
  return faults.found.length > before ? undefined : rows;
};

const rowShape: Shape<TypedRow> = (node, faults) => {
  const cells = list("cells", text, "[40 °F, 52 lbf, 60 lbf]")(node, faults);
  return cells && node.kind === "list" ? { node, cells } : undefined;
};

/**
 * Reads a table of limits: a head that says what it is entered with and what its columns are,
 * then two rows or more, going up. Every cell is a quantity.
 * @returns `undefined` when a fault was added.
 */
export function readLimitTable(
  typed: readonly TypedRow[],
  key: TextNode,
  faults: Faults,
): LimitTable | undefined {
  const [head, ...rows] = typed;
  const before = faults.found.length;
  const [first, ...rest] = head?.cells ?? [];
  if (!head || !first || !/^[A-Za-z][A-Za-z0-9_]*$/.test(first.text) || rest.length === 0) {
    return faults.add("not-a-table", (first ?? key).span, {
      message: "a table begins with a head: what it is entered with, then what its columns are",
      help: [`write \`${limitTableExample}\``],
    });
  }
  const names = rest.map((cell) => columnName(cell, rest, faults));
  if (rows.length < 2) {
    faults.add("not-a-table", head.node.span, {
      message: `the table has ${rows.length === 0 ? "no rows" : "one row"}, and there is nothing between rows to go by`,
      help: ["copy two rows or more from the source, in its own units"],
    });
  }
  const read = rows.map((row) => readRow(row, first, names, faults));
  if (faults.found.length > before) return undefined;
  const known = read.filter((row) => row !== undefined);
  checkRows(known, rows, first, faults);
  return faults.found.length > before ? undefined : { by: first.text, rows: known };
}

function columnName(
  cell: TextNode,
  all: readonly TextNode[],
  faults: Faults,
): ColumnName | undefined {
  const name = columnNames.find((each) => each === cell.text);
  if (!name) {
    const nearest = nearestName(cell.text, columnNames);
    return faults.add("not-a-table", cell.span, {
      message: `\`${cell.text}\` is not a column of a table of limits`,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      notes: [`a column is one of: ${columnNames.join(", ")}`],
      help: [
        nearest
          ? `write \`${nearest}\``
          : "put what the table is entered with first, and the limits behind it",
      ],
    });
  }
  const before = all.slice(0, all.indexOf(cell)).map(({ text: other }) => other);
  if (before.includes(name) || (name === "nominal" && all.length > 1)) {
    return faults.add("not-a-table", cell.span, {
      message: before.includes(name)
        ? `the column \`${name}\` stands twice`
        : "`nominal` stands alone, with a `tolerance` beside the table",
      help: ["write `at-least`, `at-most` or both; or `nominal`"],
    });
  }
  return name;
}

interface ReadRow extends LimitTableRow {
  readonly cells: readonly Quantity[];
}

function readRow(
  { node, cells }: TypedRow,
  by: TextNode,
  names: readonly (ColumnName | undefined)[],
  faults: Faults,
): ReadRow | undefined {
  if (cells.length !== names.length + 1) {
    return faults.add("not-a-table", node.span, {
      message: `this row has ${cells.length === 1 ? "one cell" : `${cells.length} cells`}, and the head has ${names.length + 1}`,
      help: [`write a value for each of \`${[by.text, ...names].join("`, `")}\``],
    });
  }
  const read = cells.map((cell) => quantity(cell, faults)?.quantity);
  const [at, ...limits] = read;
  if (!at || limits.includes(undefined)) return undefined;
  if (by.text === "temperature" && at.unit.dimension !== "temperature") {
    return faults.add("wrong-dimension", (cells[0] ?? by).span, {
      message: `\`${at.typed}\` is a ${at.unit.dimension}, expected a temperature`,
      help: ["write the temperature of the row, as in `40 °F`"],
    });
  }
  const row: Partial<Record<(typeof columns)[ColumnName], Quantity>> = {};
  for (const [index, name] of names.entries()) {
    const value = limits[index];
    if (name && value) row[columns[name]] = value;
  }
  return { at, ...row, cells: read.filter((cell) => cell !== undefined) };
}

// Rows go up and never cross; a column measures one thing from top to bottom.
function checkRows(
  rows: readonly ReadRow[],
  typed: readonly TypedRow[],
  by: TextNode,
  faults: Faults,
): void {
  const [first] = rows;
  for (const [index, row] of rows.entries()) {
    const { node, cells = [] } = typed[index] ?? {};
    if (!first || !node) continue;
    const odd = row.cells.findIndex(
      ({ unit }, column) => unit.dimension !== first.cells[column]?.unit.dimension,
    );
    const [cell, model] = [row.cells[odd], first.cells[odd]];
    if (cell && model) {
      faults.add("wrong-dimension", (cells[odd] ?? by).span, {
        message: `\`${cell.typed}\` is a ${cell.unit.dimension}, and the first row has a ${model.unit.dimension} here`,
        help: ["write a column in units of one kind"],
      });
      return;
    }
    const { lower, upper } = row;
    if (lower && upper && lower.unit.dimension !== upper.unit.dimension) {
      faults.add("wrong-dimension", node.span, {
        message: `\`at-least\` is a ${lower.unit.dimension}, \`at-most\` is a ${upper.unit.dimension}`,
        help: ["write both limits in units of the same kind"],
      });
      return;
    }
    if (lower && upper && compareQuantities(lower, upper) > 0) {
      faults.add("not-a-table", node.span, {
        message: `in this row \`at-least\` is ${lower.typed}, above the \`at-most\` of ${upper.typed}`,
        help: ["correct the row: `at-least` is the lower limit, `at-most` the upper one"],
      });
    }
    const above = rows[index - 1];
    if (above && compareQuantities(above.at, row.at) >= 0) {
      faults.add("not-a-table", node.span, {
        message: `the row for ${row.at.typed} stands below the one for ${above.at.typed}`,
        help: [`write the rows with \`${by.text}\` going up, each once`],
      });
    }
  }
}
