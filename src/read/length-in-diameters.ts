import type { StatedLength } from "../model/layout.ts";
import { add, type Quantity, scale, subtract } from "../model/quantity.ts";
import { type Expression, expressionDimension } from "../model/tolerance.ts";
import { dimensionWords } from "./dimension-words.ts";
import type { Faults } from "./faults.ts";
import { addNotPositive } from "./not-positive.ts";
import { addDimensionFault, readBound } from "./quantity-shape.ts";
import type { TextNode } from "./typed-tree.ts";

/**
 * Reads a length above zero that may be in terms of the fastener's diameter: `0.28 in`, `2 D`,
 * `2 D + 0.05 in`.
 * @param key What it is called, for messages.
 * @returns `undefined` when a fault was added.
 */
export function lengthInDiameters(
  node: TextNode,
  diameter: Quantity,
  key: string,
  faults: Faults,
): StatedLength | undefined {
  const bound = readBound(node, ["D"], faults);
  if (!bound) return undefined;
  const { span } = node;
  const of = expressionDimension(bound.expression, new Map([["D", diameter]]));
  if (of.kind === "unknown size") {
    return faults.add("not-an-expression", span, {
      message: `\`${bound.typed}\` speaks of \`${of.name}\`, and only \`D\` is known here`,
      help: ["write a length, or a multiple of the fastener's diameter as in `2 D`"],
    });
  }
  const words = dimensionWords(of, bound.typed);
  if (words) return faults.add("wrong-dimension", span, words);
  if (of.kind !== "dimension") return undefined;
  if (of.dimension !== "length") return addDimensionFault(node, of.dimension, ["length"], faults);
  const length = lengthOf(bound.expression, diameter);
  if (length.amount.gt(0)) return { typed: bound.typed, length, span };
  return addNotPositive(key, bound.typed, span, faults);
}

// The dimension was tested above, and the only size is D.
function lengthOf(expression: Expression, diameter: Quantity): Quantity {
  switch (expression.kind) {
    case "quantity":
      return expression.quantity;
    case "multiple":
      return scale(lengthOf(expression.of, diameter), expression.factor);
    case "sum":
      return add(lengthOf(expression.left, diameter), lengthOf(expression.right, diameter));
    case "difference":
      return subtract(lengthOf(expression.left, diameter), lengthOf(expression.right, diameter));
    default:
      return diameter;
  }
}
