import Fraction from "fraction.js";

/**
 * A number of a sum: a `Fraction` is exact; a plain `number` is an irrational one, such as a
 * multiple of pi, to double precision. One inexact part makes the whole inexact.
 */
export type Real = Fraction | number;

/** Both added. */
export function plus(a: Real, b: Real): Real {
  return isExact(a) && isExact(b) ? a.add(b) : Number(a) + Number(b);
}

/** The first less the second. */
export function minus(a: Real, b: Real): Real {
  return isExact(a) && isExact(b) ? a.sub(b) : Number(a) - Number(b);
}

/** Both multiplied. */
export function times(a: Real, b: Real): Real {
  return isExact(a) && isExact(b) ? a.mul(b) : Number(a) * Number(b);
}

/**
 * The first divided by the second.
 * @throws RangeError when the second is zero; callers test for that first.
 */
export function over(a: Real, b: Real): Real {
  if (Number(b) === 0) throw new RangeError("division by zero");
  return isExact(a) && isExact(b) ? a.div(b) : Number(a) / Number(b);
}

/** Whether nothing was lost on the way to this number. */
export function isExact(value: Real): value is Fraction {
  return typeof value !== "number";
}

/**
 * The cosine of an angle in degrees, from 0 to 180; exact where it is a rational number.
 * @example cosine(new Fraction(60)) // 1/2, exactly
 */
export function cosine(degrees: Fraction): Real {
  for (const [angle, value] of rationalCosines) if (degrees.equals(angle)) return value;
  return Math.cos(radians(degrees));
}

// The only rational cosines of rational degrees in this range (Niven's theorem).
const rationalCosines = [
  [0, new Fraction(1)],
  [60, new Fraction(1, 2)],
  [90, new Fraction(0)],
  [120, new Fraction(-1, 2)],
  [180, new Fraction(-1)],
] as const;

/**
 * The tangent of half an angle in degrees, from 0 up to but not including 180: the K of
 * sheet-metal tables, exactly 1 at 90 degrees.
 */
export function tangentOfHalf(degrees: Fraction): Real {
  if (degrees.equals(90)) return new Fraction(1);
  return Math.tan(radians(degrees) / 2);
}

/** An angle in degrees as radians, to double precision. */
export function radians(degrees: Fraction): number {
  return (degrees.valueOf() * Math.PI) / 180;
}
