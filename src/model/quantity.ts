import type Fraction from "fraction.js";
import { type Dimension, differenceUnitOf, type Unit } from "./unit.ts";

/** One measured or stated value: the text as typed, its exact amount, and its unit. */
export interface Quantity {
  /** As typed, trailing zeros and all: `0.1250 in`, `1 3/16 in`, `No. 30`. */
  readonly typed: string;
  /** In `unit`. */
  readonly amount: Fraction;
  readonly unit: Unit;
}

/**
 * Two quantities that measure different things were put together. What a builder types is
 * tested for this first; thrown, it means a fault in this program.
 */
export class DimensionError extends Error {
  readonly left: Dimension;
  readonly right: Dimension;

  constructor(left: Dimension, right: Dimension, deed = "compared") {
    super(`a ${left} and a ${right} cannot be ${deed}`);
    this.name = "DimensionError";
    this.left = left;
    this.right = right;
  }
}

/** The text as the builder typed it. */
export function asTyped(quantity: Quantity): string {
  return quantity.typed;
}

/**
 * A quantity that nobody typed. Its text is the exact amount: a decimal where one ends,
 * otherwise a fraction.
 * @example quantityOf(new Fraction(3, 32), unitNamed("in")).typed // "0.09375 in"
 */
export function quantityOf(amount: Fraction, unit: Unit): Quantity {
  return { typed: `${exactText(amount)} ${unit.symbol}`, amount, unit };
}

/**
 * An amount with nothing lost: `0.09375`, or `5/9` and `57 1/3` where no decimal ends.
 * @example exactText(new Fraction(-5, 9)) // "-5/9"
 */
export function exactText(amount: Fraction): string {
  const sign = amount.s < 0n ? "-" : "";
  const places = decimalPlaces(amount.d);
  if (places === undefined) {
    const whole = amount.n / amount.d;
    return `${sign}${whole > 0n ? `${whole} ` : ""}${amount.n % amount.d}/${amount.d}`;
  }
  const digits = ((amount.n * 10n ** BigInt(places)) / amount.d)
    .toString()
    .padStart(places + 1, "0");
  const point = digits.length - places;
  return `${sign}${digits.slice(0, point)}${places ? `.${digits.slice(point)}` : ""}`;
}

// A fraction in lowest terms ends as a decimal if its denominator is made of twos and fives.
function decimalPlaces(denominator: bigint): number | undefined {
  let rest = denominator;
  const powers = [2n, 5n].map((prime) => {
    let power = 0;
    while (rest % prime === 0n) {
      rest /= prime;
      power += 1;
    }
    return power;
  });
  return rest === 1n ? Math.max(...powers) : undefined;
}

/** The exact amount in the base unit of its dimension: metres for a length, kelvins for `°F`. */
export function inBaseUnits({ amount, unit }: Quantity): Fraction {
  return amount.mul(unit.factor).add(unit.offset);
}

/**
 * Orders two quantities by size, exactly, whatever their units: 25.4 mm equals 1 in.
 * @returns Negative, zero or positive, as `Array.prototype.sort` wants it.
 * @throws DimensionError if they measure different things.
 */
export function compareQuantities(a: Quantity, b: Quantity): number {
  sameDimension(a, b, "compared");
  return inBaseUnits(a).compare(inBaseUnits(b));
}

/**
 * How far one quantity lies above another, in base units, exactly: negative when it lies below.
 * For temperatures this is a difference, 5/9 K from 70 °F to 71 °F.
 * @throws DimensionError if they measure different things.
 */
export function stepBetween(from: Quantity, to: Quantity): Fraction {
  sameDimension(from, to, "compared");
  return inBaseUnits(to).sub(inBaseUnits(from));
}

/**
 * The same quantity in another unit, exactly. Its text is the exact amount, unless the unit
 * is its own, when the text stays as typed.
 * @throws DimensionError if the unit is of another dimension.
 * @example convert(quantityOf(new Fraction(77), unitNamed("°F")), unitNamed("°C")).typed // "25 °C"
 */
export function convert(quantity: Quantity, unit: Unit): Quantity {
  if (quantity.unit === unit) return quantity;
  if (quantity.unit.dimension !== unit.dimension)
    throw new DimensionError(quantity.unit.dimension, unit.dimension, "converted into each other");
  return quantityOf(inBaseUnits(quantity).sub(unit.offset).div(unit.factor), unit);
}

/**
 * The sum, in the unit of the left one. To a temperature only a temperature difference can
 * be added, and the other way round.
 * @throws DimensionError if they do not add.
 */
export function add(left: Quantity, right: Quantity): Quantity {
  const [a, b] = [left.unit.dimension, right.unit.dimension];
  if (a === "temperature difference" && b === "temperature") return add(right, left);
  if (!(a === "temperature" && b === "temperature difference") && (a !== b || a === "temperature"))
    throw new DimensionError(a, b, "added");
  return quantityOf(left.amount.add(stepIn(right, left.unit)), left.unit);
}

/**
 * The left one less the right one, in the unit of the left one. Two temperatures leave a
 * temperature difference.
 * @throws DimensionError if they cannot be subtracted.
 */
export function subtract(left: Quantity, right: Quantity): Quantity {
  const [a, b] = [left.unit.dimension, right.unit.dimension];
  if (a === "temperature" && b === "temperature")
    return quantityOf(
      inBaseUnits(left).sub(inBaseUnits(right)).div(left.unit.factor),
      differenceUnitOf(left.unit),
    );
  if (a !== b && !(a === "temperature" && b === "temperature difference"))
    throw new DimensionError(a, b, "subtracted");
  return quantityOf(left.amount.sub(stepIn(right, left.unit)), left.unit);
}

/**
 * A quantity times a plain number, in its own unit.
 * @throws DimensionError for a temperature: twice 60 °F means nothing. Differences do scale.
 */
export function scale(quantity: Quantity, factor: Fraction): Quantity {
  const { dimension } = quantity.unit;
  if (dimension === "temperature") throw new DimensionError(dimension, "ratio", "multiplied");
  return quantityOf(quantity.amount.mul(factor), quantity.unit);
}

// Offsets drop out of a step, so that 5 Δ°C is 9 Δ°F and moves a temperature in °F by 9.
function stepIn(step: Quantity, unit: Unit): Fraction {
  return step.amount.mul(step.unit.factor).div(unit.factor);
}

function sameDimension(a: Quantity, b: Quantity, deed: string): void {
  if (a.unit.dimension !== b.unit.dimension)
    throw new DimensionError(a.unit.dimension, b.unit.dimension, deed);
}
