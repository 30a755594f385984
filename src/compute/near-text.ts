import { exactText, type Quantity } from "../model/quantity.ts";

const longest = 9;
const places = 4;

/**
 * A worked-out amount for a message, where nothing may be rounded: exact where its digits end
 * soon, otherwise said to be a little above what they begin with.
 * @example nearText(quantityOf(new Fraction(25, 68), unitOf("in"))) // "a little above 0.3676 in"
 */
export function nearText({ amount, unit }: Pick<Quantity, "amount" | "unit">): string {
  const exact = exactText(amount);
  if (!exact.includes("/") && exact.length <= longest) return `${exact} ${unit.symbol}`;
  return `a little above ${exactText(amount.floor(places))} ${unit.symbol}`;
}
