import Fraction from "fraction.js";

/**
 * Nominal shank diameter of an AN hex bolt, in inches: AN4 to AN20 count sixteenths. Shop
 * knowledge: no source was read for it.
 * @returns `undefined` for other numbers. AN3 is one of them: a 10-32 bolt, called 3/16 in by
 *   some drawings and 0.190 in by others.
 */
export function boltDiameterInches(size: number): Fraction | undefined {
  return size >= 4 && size <= 20 ? new Fraction(size, 16) : undefined;
}
