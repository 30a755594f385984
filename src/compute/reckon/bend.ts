import type Fraction from "fraction.js";
import { convert, inBaseUnits, type Quantity } from "../../model/quantity.ts";
import type { Unit } from "../../model/unit.ts";
import { plus, type Real, radians, tangentOfHalf, times } from "./real.ts";
import type { InputProblem } from "./sum.ts";

/** A bend in sheet: inside radius, thickness, and how far the sheet is turned. */
export interface Bend {
  /** Inside radius in `unit`. */
  readonly radius: Fraction;
  /** Thickness in `unit`. */
  readonly thickness: Fraction;
  /** Turned through, above 0 and below 180: 0 is flat sheet. Not the angle between the legs. */
  readonly degrees: Fraction;
  readonly unit: Unit;
}

/** The three inputs every sum on bends shares. */
export const bendInputs = {
  radius: {
    kind: "quantity",
    dimension: "length",
    range: "zero or more",
    about: "inside radius R of the bend",
    required: true,
    example: "0.16 in",
  },
  thickness: {
    kind: "quantity",
    dimension: "length",
    range: "above zero",
    about: "sheet thickness t",
    required: true,
    example: "0.040 in",
  },
  angle: {
    kind: "quantity",
    dimension: "angle",
    range: "above zero",
    about: "how far the sheet is turned, from flat: 45 deg is an open bend",
    required: true,
    example: "90 deg",
  },
} as const;

/** Stands with every sum on bends. */
export const bendCaution =
  "the angle is how far the sheet is turned from flat, not the angle left between the legs";

/**
 * The bend of three inputs, in the unit of the radius.
 * @returns A problem for an angle of 180 degrees and more, where the setback has no end.
 */
export function bendOf(
  radius: Quantity,
  thickness: Quantity,
  angle: Quantity,
): Bend | InputProblem {
  const degrees = inBaseUnits(angle);
  if (degrees.gte(180))
    return {
      input: "angle",
      message: `\`${angle.typed}\` folds the sheet flat on itself; mold lines no longer meet`,
      help: ["give the angle turned from flat, below 180 deg"],
    };
  const { unit } = radius;
  return { radius: radius.amount, thickness: convert(thickness, unit).amount, degrees, unit };
}

/** K = tan(angle / 2). */
export function setbackFactor({ degrees }: Bend): Real {
  return tangentOfHalf(degrees);
}

/**
 * From mold line to the start of the bend: SB = K (R + t), in the unit of the bend.
 * AC 43.13-1B, par. 4-56b.
 */
export function setback(bend: Bend): Real {
  return times(setbackFactor(bend), bend.radius.add(bend.thickness));
}

/** The handbook's allowance, (0.01743 R + 0.0078 t) × degrees, in the unit of the bend. */
export function handbookAllowance({ radius, thickness, degrees }: Bend): Fraction {
  return radius.mul("0.01743").add(thickness.mul("0.0078")).mul(degrees);
}

/** The length of the arc half-way through the sheet, in the unit of the bend. */
export function midlineAllowance({ radius, thickness, degrees }: Bend): number {
  return radians(degrees) * plus(radius, thickness.div(2)).valueOf();
}
