import type { Span } from "../model/diagnostic.ts";
import type { Quantity } from "../model/quantity.ts";
import type { Bound } from "../model/tolerance.ts";
import type { Dimension } from "../model/unit.ts";
import { parseExpression } from "./expression-syntax.ts";
import type { Faults, ReaderFault } from "./faults.ts";
import { parseQuantities, parseQuantity } from "./quantity-syntax.ts";
import { type Shape, textAs } from "./shape.ts";
import type { SyntaxFault } from "./syntax-fault.ts";
import type { TextNode } from "./typed-tree.ts";

/** A quantity with its place. */
export interface QuantityNode {
  readonly quantity: Quantity;
  readonly node: TextNode;
  readonly span: Span;
}

/** Any quantity: a number and its unit. */
export const quantity = textAs<QuantityNode>((node, faults) => {
  const parsed = parseQuantity(node.text);
  if (parsed.ok) return { quantity: parsed.quantity, node, span: node.span };
  return addSyntaxFault("not-a-quantity", "a quantity", node, parsed, faults);
});

/** A quantity of one dimension. */
export function quantityOf(...dimensions: readonly Dimension[]): Shape<QuantityNode> {
  return (typed, faults) => {
    const read = quantity(typed, faults);
    if (!read || dimensions.includes(read.quantity.unit.dimension)) return read;
    return addDimensionFault(read.node, read.quantity.unit.dimension, dimensions, faults);
  };
}

/**
 * A quantity that counts up from zero, such as an uncertainty or a drag: a sign would turn it round.
 */
export function notBelowZero(of: Shape<QuantityNode>): Shape<QuantityNode> {
  return (typed, faults) => {
    const read = of(typed, faults);
    if (!read || read.quantity.amount.gte(0)) return read;
    return faults.add("not-a-quantity", read.span, {
      message: `\`${read.quantity.typed}\` is below zero, and this has no sign`,
      help: ["write it without a sign"],
    });
  };
}

/** One or several values, with a unit each or one behind the list. */
export const quantities: Shape<readonly QuantityNode[]> = (typed, faults) => {
  if (typed.kind === "list") {
    return typed.items.map((item) => quantity(item, faults)).filter((item) => item !== undefined);
  }
  return textAs<readonly QuantityNode[]>((node) => {
    const parsed = parseQuantities(node.text);
    if (parsed.ok) {
      return parsed.quantities.map(({ quantity: each, offset, length }) => ({
        quantity: each,
        node,
        span: placeWithin(node, offset, length),
      }));
    }
    return addSyntaxFault("not-a-quantity", "a list of values", node, parsed, faults);
  })(typed, faults);
};

/**
 * Reads a limit: a quantity, or in terms of declared sizes.
 * @param sizes Names of the sizes that may stand in it.
 */
export function readBound(
  node: TextNode,
  sizes: Iterable<string>,
  faults: Faults,
): Bound | undefined {
  const parsed = parseExpression(node.text, sizes);
  if (parsed.ok) return parsed.bound;
  return addSyntaxFault("not-an-expression", "a limit", node, parsed, faults);
}

/** Reports a quantity of the wrong kind, such as a length where a torque is wanted. */
export function addDimensionFault(
  node: TextNode,
  found: Dimension,
  wanted: readonly Dimension[],
  faults: Faults,
): undefined {
  return faults.add("wrong-dimension", node.span, {
    message: `\`${node.text}\` is a ${found}, expected a ${wanted.join(" or a ")}`,
    help: [`write a number with a unit of ${wanted.join(" or ")}`],
  });
}

/** Reports text that could not be read, at the very characters that are in the way. */
export function addSyntaxFault(
  code: ReaderFault,
  what: string,
  node: TextNode,
  { expected, offset, length, help }: SyntaxFault,
  faults: Faults,
): undefined {
  return faults.add(code, placeWithin(node, offset, length), {
    message: `\`${node.text}\` is not ${what}: expected ${expected}`,
    help,
  });
}

/** The place of a part of a typed text. Quotes shift it by one; escapes blur it to the whole. */
export function placeWithin(node: TextNode, offset: number, length: number): Span {
  const quoted = node.source !== node.text;
  if (quoted && node.source.slice(1, -1) !== node.text) return node.span;
  const column = node.span.column + (quoted ? 1 : 0) + offset;
  return { ...node.span, column, length: Math.max(1, length) };
}
