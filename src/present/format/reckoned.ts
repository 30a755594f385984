import Fraction from "fraction.js";
import type { Figure, Words } from "../../compute/reckon/sum.ts";
import { exactText } from "../../model/quantity.ts";
import { formatAmount, formatSignificant } from "./quantity.ts";

/** Decimal places that a shop can use, by unit as printed. */
const places: Readonly<Record<string, number>> = {
  in: 4,
  mm: 3,
  lb: 2,
  kg: 3,
  lb·in: 1,
  "°": 2,
  "°F": 1,
  "°C": 1,
  "%": 2,
  D: 2,
  rivets: 0,
};
const significant = 5;
const longestExact = 12;
const largestDenominator = 999n;

/**
 * A figure with its unit, to the places that a shop can use, and what it is exactly where that
 * differs and is short enough to read: `0.3929 in (exactly 11/28 in)`, `3.77 mm`.
 */
export function figureText(figure: Figure): string {
  const { value, unit } = figure;
  const rounded = roundedText(figure);
  const shown = withUnit(rounded, unit);
  const exact = typeof value === "number" || unit === "D" ? undefined : shortExact(value, unit);
  return exact === undefined || exact === rounded
    ? shown
    : `${shown} (exactly ${withUnit(exact, unit)})`;
}

/** A figure to the places that a shop can use, without its unit. */
export function roundedText({ value, unit, round }: Figure): string {
  // Beyond this a double has no digit left behind the point.
  if (typeof value === "number" && Math.abs(value) >= 1e15) return value.toPrecision(significant);
  // The noise of binary fractions would push a number past the one it stands for.
  const number = round && typeof value === "number" ? Number(value.toPrecision(12)) : value;
  const amount = typeof number === "number" ? new Fraction(number.toFixed(15)) : number;
  const fixed = places[unit];
  const safe = (to: number) =>
    round === "up" ? amount.ceil(to) : round === "down" ? amount.floor(to) : amount;
  const text = fixed === undefined ? undefined : formatAmount(safe(fixed), fixed);
  // Something small is shown with digits of its own rather than as zeros.
  const enough = text !== undefined && (fixed === 0 || /[1-9]/.test(text) || amount.n === 0n);
  const shown = enough ? text : formatSignificant(amount, significant);
  // Zeros at the end say that something was rounded; an exact value has none.
  const lossless = typeof value !== "number" && new Fraction(shown).equals(value);
  return lossless ? exactText(value) : shown;
}

/** A sentence with its figures rounded to be read. */
export function wordsText(words: Words): string {
  if (typeof words === "string") return words;
  return words
    .map((word) => (typeof word === "string" ? word : withUnit(roundedText(word), word.unit)))
    .join("");
}

/**
 * A figure for programs to read on: correct to twelve significant digits, which drops the noise
 * of binary fractions and nothing that was measured.
 */
export function figureNumber({ value }: Pick<Figure, "value">): number {
  return Number(typeof value === "number" ? value.toPrecision(12) : formatSignificant(value, 12));
}

function withUnit(text: string, unit: string): string {
  if (unit === "") return text;
  if (unit === "°") return `${text}°`;
  return `${text} ${text === "1" && unit === "rivets" ? "rivet" : unit}`;
}

// Fractions of an inch where a tape has them, decimals where they end soon.
function shortExact(value: Fraction, unit: string): string | undefined {
  const decimal = exactText(value);
  const marks = unit === "in" && value.d <= 64n && 64n % value.d === 0n;
  if (!decimal.includes("/") && decimal.length <= longestExact && !marks) return decimal;
  if (value.d > largestDenominator || value.d === 1n) return undefined;
  return value.toFraction(true);
}
