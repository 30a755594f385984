import { type Tenths, tenthsOfATask } from "../model/portion.ts";
import type { Faults } from "./faults.ts";
import { type Shape, textAs } from "./shape.ts";

/**
 * Tenths from a share of a point: `0.3`, `.3`, `1`, `1.0`, `0`.
 * @returns `undefined` for what is not in whole tenths between 0 and 1.
 */
export function parseTenths(text: string): Tenths | undefined {
  const [, tenths, point] = /^(?:0?\.(\d)|([01])(?:\.0)?)$/.exec(text) ?? [];
  if (tenths !== undefined) return Number(tenths);
  return point === undefined ? undefined : Number(point) * tenthsOfATask;
}

/** A share of a point, in tenths. */
export const share: Shape<Tenths> = textAs((node, faults: Faults) => {
  const tenths = parseTenths(node.text);
  if (tenths !== undefined) return tenths;
  return faults.add("not-a-share", node.span, {
    message: `\`${node.text}\` is not a share: a point is divided in tenths, from 0 to 1`,
    help: ["write one digit behind the point, as in `0.3`"],
  });
});
