import type Fraction from "fraction.js";
import type { Quantity } from "../../model/quantity.ts";
import { formatAmount } from "./quantity.ts";

type Amount = Pick<Quantity, "amount" | "unit">;

/** Decimal places of weights, arms and moments, by unit as printed; two for all others. */
const places: Readonly<Record<string, number>> = {
  g: 0,
  mm: 1,
  m: 4,
  ft: 3,
  lb·in: 1,
  kg·mm: 0,
  kg·cm: 1,
  kg·m: 3,
};

function placesOf(unit: string): number {
  return places[unit] ?? 2;
}

/** A weight or an arm to the places of its column, without its unit: `1331.50`. */
export function balanceNumber({ amount, unit }: Amount): string {
  return formatAmount(amount, placesOf(unit.symbol));
}

/** The same with its unit: `1331.50 lb`. */
export function balanceText(quantity: Amount): string {
  return `${balanceNumber(quantity)} ${quantity.unit.symbol}`;
}

/** With its sign, for changes: `+14.20`, `-3.00`; nothing before zero. */
export function signedNumber(quantity: Amount): string {
  const text = balanceNumber(quantity);
  return quantity.amount.gt(0) && /[1-9]/.test(text) ? `+${text}` : text;
}

/** A moment to the places of its column, without its unit. */
export function momentNumber(moment: Fraction, unit: string): string {
  return formatAmount(moment, placesOf(unit));
}

/** A place on the mean aerodynamic chord: `27.81`. */
export function chordNumber(percent: Fraction): string {
  return formatAmount(percent, 2);
}

/**
 * How much room is left to a limit, never rounded up: `0.36 in` for 0.369. What is left but
 * too little to be shown is said in words.
 */
export function roomText({ amount, unit }: Amount): string {
  const digits = placesOf(unit.symbol);
  if (amount.gt(0) && amount.floor(digits).equals(0))
    return `less than ${smallest(digits)} ${unit.symbol}`;
  return `${formatAmount(amount.floor(digits), digits)} ${unit.symbol}`;
}

/** How far something is beyond a limit, never rounded down: `0.37 in` for 0.361. */
export function excessText({ amount, unit }: Amount): string {
  const digits = placesOf(unit.symbol);
  return `${formatAmount(amount.abs().ceil(digits), digits)} ${unit.symbol}`;
}

function smallest(digits: number): string {
  return digits === 0 ? "1" : `0.${"1".padStart(digits, "0")}`;
}
