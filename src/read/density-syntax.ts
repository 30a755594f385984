import type { Density } from "../model/density.ts";
import { unitNamed } from "../model/unit.ts";
import { parseQuantity } from "./quantity-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

export type ParsedDensity = { readonly ok: true; readonly density: Density } | SyntaxFault;

const advice = "write a mass for one unit of volume, as in `6 lb/gal` or `0.72 kg/L`";

/**
 * Reads a mass for each unit of volume: `6 lb/gal`, `0.72 kg/L`, `5.9 lb per gal`.
 * @example parseDensity("6 lb/gal")
 */
export function parseDensity(text: string): ParsedDensity {
  const stroke = /\s*(?:\/|\bper\b)\s*/iu.exec(text);
  if (!stroke) return syntaxFault("a mass for each unit of volume", 0, text.length, advice);
  const behind = stroke.index + stroke[0].length;

  const mass = parseQuantity(text.slice(0, stroke.index));
  if (!mass.ok) return mass;
  if (mass.quantity.unit.dimension !== "mass")
    return syntaxFault("a mass before the stroke", 0, stroke.index, advice);
  if (mass.quantity.amount.lte(0)) return syntaxFault("a mass above zero", 0, stroke.index);
  const per = unitNamed(text.slice(behind));
  if (per?.dimension !== "volume")
    return syntaxFault("a unit of volume", behind, text.length - behind, advice);
  return { ok: true, density: { typed: text.trim(), mass: mass.quantity, per } };
}
