import type { LimitColumn } from "../model/limit-table.ts";
import { compareQuantities, inBaseUnits, type Quantity, quantityOf } from "../model/quantity.ts";

/**
 * The value of a column at a place between its rows, exactly, on the straight line between the
 * two rows around it. On a row it is the value as printed there.
 * @param column At least one row, `at` rising.
 * @returns In the unit of the row below; `undefined` outside the rows: nothing is extrapolated.
 * @throws DimensionError if `at` measures something else than the rows are entered with.
 * @example 52 lbf at 40 °F and 60 lbf at 60 °F give 57.2 lbf at 53 °F
 */
export function interpolate(column: LimitColumn, at: Quantity): Quantity | undefined {
  const above = column.findIndex((row) => compareQuantities(row.at, at) >= 0);
  const [below, next] = [column[above - 1], column[above]];
  if (!next) return undefined;
  if (compareQuantities(next.at, at) === 0) return next.value;
  if (!below) return undefined;
  const [from, to] = [inBaseUnits(below.at), inBaseUnits(next.at)];
  const part = inBaseUnits(at).sub(from).div(to.sub(from));
  const [low, high] = [inBaseUnits(below.value), inBaseUnits(next.value)];
  const { unit } = below.value;
  const amount = low.add(high.sub(low).mul(part)).sub(unit.offset).div(unit.factor);
  return quantityOf(amount, unit);
}
