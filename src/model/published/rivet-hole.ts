import { exactText } from "../quantity.ts";
import { fixedBound, type RowLimits } from "../rule-set.ts";
import { drillNamed } from "./drill-sizes.ts";

/**
 * The hole that a drill is for, as a value to aim at.
 * @param name `30` or `F`.
 * @throws RangeError if there is no such drill.
 */
export function holeOf(name: string): RowLimits {
  const drill = drillNamed(name);
  if (!drill) throw new RangeError(`no drill is called ${name}`);
  const call = /\d/.test(name) ? `No. ${name}` : `letter ${name}`;
  return {
    nominal: fixedBound(exactText(drill.inches), "in"),
    notes: [`${call} drill`],
  };
}
