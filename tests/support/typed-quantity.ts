import type { Quantity } from "../../src/model/quantity.ts";
import { parseQuantity } from "../../src/read/quantity-syntax.ts";

/** A quantity written as a builder types it; throws when the program cannot read it. */
export function quantity(typed: string): Quantity {
  const parsed = parseQuantity(typed);
  if (parsed.ok) return parsed.quantity;
  throw new Error(`${typed}: expected ${parsed.expected}`);
}
