import type { Load } from "../model/load.ts";
import {
  compareQuantities,
  convert,
  type Quantity,
  quantityOf,
  scale,
  subtract,
} from "../model/quantity.ts";
import { amountAt } from "./amount-syntax.ts";
import { parseDensity } from "./density-syntax.ts";
import { listItems } from "./list-items.ts";
import { parseQuantity } from "./quantity-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

export type ParsedLoads = { readonly ok: true; readonly loads: readonly Load[] } | SyntaxFault;

const advice =
  "write a name, a weight and its arm, as in `pilot 170 lb @ 16 in`; tare comes off as in `650 lb less 5 lb`";

const lessSign = /^(.+?)\s+(?:less|minus|-|−)\s+(.+)$/iu;

/**
 * Reads lines of a weighing or loading: `pilot 170 lb @ 16 in`, `left main 650 lb less 5 lb @
 * 70 in`, `seats -2 x 12 lb @ 68.5 in`, `fuel 30 gal x 5.9 lb/gal @ 95 in`. Commas or
 * semicolons stand between several.
 * @returns In the order typed.
 */
export function parseLoads(text: string): ParsedLoads {
  const loads: Load[] = [];
  for (const item of listItems(text)) {
    const load = parseLoad(item.text);
    if (!("name" in load)) return { ...load, offset: load.offset + item.offset };
    loads.push(load);
  }
  return { ok: true, loads };
}

function parseLoad(text: string): Load | SyntaxFault {
  const at = [...text.matchAll(/\s*@\s*|\s+at\s+/giu)].at(-1);
  if (!at) return syntaxFault("`@` and an arm behind the weight", 0, text.length, advice);
  const behind = at.index + at[0].length;
  const arm = parseQuantity(text.slice(behind));
  if (!arm.ok) return { ...arm, offset: arm.offset + behind };
  if (arm.quantity.unit.dimension !== "length")
    return syntaxFault("an arm: a length from the datum", behind, text.length - behind, advice);

  // The first number begins the weight. Were later ones tried, `30 gal x 5.9 lb` would become
  // something of 5.9 lb that is called `30 gal x`.
  const front = text.slice(0, at.index);
  const start = /(?<!\S)[-−+]?\s*\.?[\d½¼¾⅓-⅞]/u.exec(front)?.index;
  if (start === undefined) return syntaxFault("a weight before the arm", 0, front.length, advice);
  const weight = parseWeight(front.slice(start));
  if (weight) return { name: front.slice(0, start).trim(), weight, arm: arm.quantity };
  return weightFault(front, start);
}

function parseWeight(text: string): Quantity | undefined {
  if (lessSign.test(text)) {
    const less = lessOf(text);
    return less && compareQuantities(less.tare, less.gross) <= 0
      ? subtract(less.gross, less.tare)
      : undefined;
  }
  const times = /^(.+?)\s*[x×*]\s*(.+)$/iu.exec(text);
  if (times?.[1] && times[2]) return product(times[1], times[2]);
  return mass(text);
}

// A reading and its tare, neither below zero.
function lessOf(text: string): { readonly gross: Quantity; readonly tare: Quantity } | undefined {
  const [, first, second] = lessSign.exec(text) ?? [];
  const [gross, tare] = [mass(first ?? ""), mass(second ?? "")];
  return gross && tare && gross.amount.s >= 0n && tare.amount.s >= 0n ? { gross, tare } : undefined;
}

function product(left: string, right: string): Quantity | undefined {
  const count = amountAt(left, 0);
  if (count?.ok && count.end === left.length) {
    const each = mass(right);
    return each && scale(each, count.amount);
  }
  const volume = parseQuantity(left);
  const density = parseDensity(right);
  if (!volume.ok || !density.ok || volume.quantity.unit.dimension !== "volume") return undefined;
  const { mass: each, per } = density.density;
  return quantityOf(convert(volume.quantity, per).amount.mul(each.amount), each.unit);
}

function mass(text: string): Quantity | undefined {
  const read = parseQuantity(text);
  return read.ok && read.quantity.unit.dimension === "mass" ? read.quantity : undefined;
}

function weightFault(front: string, offset: number): SyntaxFault {
  const read = parseQuantity(front.slice(offset));
  const help = [advice, "a number in a name is written without a blank before it, as in `rib4`"];
  const less = lessOf(front.slice(offset));
  if (less && compareQuantities(less.tare, less.gross) > 0)
    return syntaxFault(
      "tare that is not heavier than the reading it is taken off",
      offset,
      front.length - offset,
      "the reading of the scale stands first: `650 lb less 5 lb`",
    );
  if (!read.ok) return { ...read, offset: read.offset + offset, help: [...read.help, ...help] };
  return syntaxFault("a weight, in `lb` or `kg`", offset, front.length - offset, ...help);
}
