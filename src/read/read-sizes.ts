import type { Quantity } from "../model/quantity.ts";
import type { Faults } from "./faults.ts";
import { quantity } from "./quantity-shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** Reads named sizes, such as `D: 3/32 in`. Sizes at fault are left out. */
export function readSizes(
  typed: ReadonlyMap<string, TextNode> | undefined,
  faults: Faults,
): Map<string, Quantity> {
  const sizes = new Map<string, Quantity>();
  for (const [name, node] of typed ?? []) {
    const read = quantity(node, faults);
    if (read) sizes.set(name, read.quantity);
  }
  return sizes;
}
