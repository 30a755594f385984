import type Fraction from "fraction.js";
import { convert, type Quantity } from "../../model/quantity.ts";
import type { Unit } from "../../model/unit.ts";

/**
 * How many of a unit a quantity is, exactly.
 * @throws DimensionError if the unit is of another dimension.
 */
export function amountIn(quantity: Quantity, unit: Unit): Fraction {
  return convert(quantity, unit).amount;
}
