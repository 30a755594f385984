import type Fraction from "fraction.js";
import { convert, exactText, type Quantity } from "../../model/quantity.ts";
import { type Unit, unitOf } from "../../model/unit.ts";

/** How a quantity is to be shown. */
export interface QuantityStyle {
  /** Decimal places, with zeros at the end kept; absent: nothing is rounded. */
  readonly places?: number;
  /** Another unit of the same dimension. */
  readonly unit?: Unit;
}

/**
 * A quantity with its unit. Without a style it is the text as typed; in another unit without
 * `places` it is the exact amount. Either reads back as the same quantity.
 * @throws DimensionError if `unit` is of another dimension.
 * @example formatQuantity(quantity, { unit: unitOf("mm"), places: 2 }) // "3.18 mm" for 1/8 in
 */
export function formatQuantity(quantity: Quantity, { places, unit }: QuantityStyle = {}): string {
  const shown = unit ? convert(quantity, unit) : quantity;
  return places === undefined
    ? shown.typed
    : `${formatAmount(shown.amount, places)} ${shown.unit.symbol}`;
}

/**
 * A number with a set count of decimal places. Halves are rounded away from zero; what
 * rounds to zero has no sign.
 * @example formatAmount(new Fraction("0.0625"), 3) // "0.063"
 */
export function formatAmount(amount: Fraction, places: number): string {
  const scale = 10n ** BigInt(places);
  const rounded = (amount.n * scale * 2n + amount.d) / (amount.d * 2n);
  const digits = rounded.toString().padStart(places + 1, "0");
  const point = digits.length - places;
  const sign = amount.s < 0n && rounded > 0n ? "-" : "";
  return `${sign}${digits.slice(0, point)}${places > 0 ? `.${digits.slice(point)}` : ""}`;
}

/**
 * A number rounded to so many significant digits, without zeros at its end; digits before the
 * decimal point are all kept. Never zero unless the amount is.
 * @example formatSignificant(new Fraction(1, 3), 3) // "0.333"
 */
export function formatSignificant(amount: Fraction, digits: number): string {
  if (amount.n === 0n) return "0";
  let exponent = 0;
  let size = amount.abs();
  while (size.gte(10)) {
    size = size.div(10);
    exponent += 1;
  }
  while (size.lt(1)) {
    size = size.mul(10);
    exponent -= 1;
  }
  const text = formatAmount(amount, Math.max(0, digits - 1 - exponent));
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/**
 * A quantity that was computed and not typed, short enough to be read: its exact amount where
 * that is a short decimal, otherwise four significant digits with `about` before them.
 * @example computedText(subtract(quantity("1 in"), quantity("25 mm"))) // "about 0.01575 in"
 */
export function computedText({ typed, amount, unit }: Quantity): string {
  const exact = exactText(amount);
  const short = !exact.includes("/") && exact.length <= 9;
  const text = short ? typed : `about ${formatSignificant(amount, 4)} ${unit.symbol}`;
  return text.replace(/ °$/, "°");
}

/**
 * A length as a tape shows it, in whole inches and a fraction: `1 3/16 in`.
 * @param denominator Finest mark of the tape, a power of two.
 * @returns `undefined` when the length does not fall on a mark: nothing is rounded here.
 * @throws DimensionError if the quantity is not a length.
 */
export function formatInchFraction(quantity: Quantity, denominator = 64): string | undefined {
  const { amount, unit } = convert(quantity, unitOf("in"));
  if (BigInt(denominator) % amount.d !== 0n) return undefined;
  const whole = amount.n / amount.d;
  const rest = amount.n % amount.d;
  const parts = [
    ...(whole > 0n || rest === 0n ? [`${whole}`] : []),
    ...(rest > 0n ? [`${rest}/${amount.d}`] : []),
  ];
  return `${amount.s < 0n ? "-" : ""}${parts.join(" ")} ${unit.symbol}`;
}

/**
 * A quantity as typed with the same in another unit behind it: `0.125 in (3.18 mm)`.
 * @throws DimensionError if `unit` is of another dimension.
 */
export function formatInBoth(quantity: Quantity, unit: Unit, places: number): string {
  return `${quantity.typed} (${formatQuantity(quantity, { unit, places })})`;
}
