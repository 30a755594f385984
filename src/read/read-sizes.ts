import type { Quantity } from "../model/quantity.ts";
import { unitNamed } from "../model/unit.ts";
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
    if (unitNamed(name)?.dimension === "length") {
      faults.add("not-an-expression", node.span, {
        message: `\`${name}\` is a unit of length, and a limit such as \`2 ${name}\` would not say which is meant`,
        help: ["give the size another name, such as `D`"],
      });
    } else if (read) sizes.set(name, read.quantity);
  }
  return sizes;
}
