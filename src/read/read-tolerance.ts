import type { Bound } from "../model/tolerance.ts";
import { differenceUnitOf } from "../model/unit.ts";
import type { Faults } from "./faults.ts";
import { placeWithin, readBound } from "./quantity-shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** For which side of the nominal value a tolerance was typed. */
export type ToleranceSide = "both" | "plus" | "minus";

// As drawings print them: ±0.015 for both sides, +0.002 and -0.000 for one each.
const signs: Readonly<Record<ToleranceSide, RegExp>> = {
  both: /^(?:±|\+\/-|\+-)\s*/u,
  plus: /^\+\s*/u,
  minus: /^[-−]\s*/u,
};

/**
 * Reads a tolerance: a length of way from the nominal value to a limit, with or without the sign
 * of its side. A tolerance in degrees of temperature is a difference, not a temperature.
 * @param sizes Names of the sizes that may stand in it.
 * @returns `undefined` when a fault was added.
 */
export function readTolerance(
  node: TextNode,
  side: ToleranceSide,
  sizes: Iterable<string>,
  faults: Faults,
): Bound | undefined {
  const sign = signs[side].exec(node.text)?.[0].length ?? 0;
  const text = node.text.slice(sign);
  if (/^[-−+±]/u.test(text)) {
    return faults.add("not-an-expression", placeWithin(node, sign, 1), {
      message: `\`${node.text}\` is not a tolerance: expected a size without a sign`,
      help: [
        "write `tolerance: 0.015 in`, or `tolerance: { plus: 0.002 in, minus: 0.000 in }`",
        "where both limits lie on one side of the nominal value, write `at-least` and `at-most`",
      ],
    });
  }
  const span = sign === 0 ? node.span : placeWithin(node, sign, text.length);
  const bound = readBound(
    sign === 0 ? node : { kind: "text", text, source: text, span },
    sizes,
    faults,
  );
  if (bound?.expression.kind !== "quantity") return bound;
  const { quantity } = bound.expression;
  const unit = differenceUnitOf(quantity.unit);
  return { ...bound, expression: { kind: "quantity", quantity: { ...quantity, unit } } };
}
