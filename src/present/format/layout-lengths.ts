import type Fraction from "fraction.js";
import { convert, type Quantity, quantityOf } from "../../model/quantity.ts";
import { type Unit, unitOf } from "../../model/unit.ts";
import { formatAmount, formatInchFraction } from "./quantity.ts";
import { roundedText } from "./reckoned.ts";

/** A worked-out length to the places that a shop can use: `0.8119 in`. */
export function lengthText(value: Fraction, symbol: string): string {
  return `${roundedText({ value, unit: symbol })} ${symbol}`;
}

/** A length as a tape shows it, where it falls on a mark: `8 5/8`; otherwise empty. */
export function onTheTape(value: Fraction, unit: Unit): string {
  const text = formatInchFraction(quantityOf(value, unit));
  return text === undefined ? "" : text.replace(/ in$/, "");
}

/** A length in millimetres to a hundredth: `219.08`. */
export function inMillimetres(quantity: Quantity): string {
  return formatAmount(convert(quantity, unitOf("mm")).amount, 2);
}
