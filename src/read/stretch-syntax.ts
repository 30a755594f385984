import { compareQuantities, type Quantity } from "../model/quantity.ts";
import type { Stretch } from "../model/stretch.ts";
import { listItems } from "./list-items.ts";
import { parseQuantity } from "./quantity-syntax.ts";
import { type SyntaxFault, syntaxFault } from "./syntax-fault.ts";

export type ParsedStretches =
  | { readonly ok: true; readonly stretches: readonly Stretch[] }
  | SyntaxFault;

const advice = "write each stretch from its start to its end, as in `2.0-2.6 in` or `2 in to 3 in`";
// A hyphen may also join a mixed number, as in 1-3/16; so what cannot is tried first.
const separators = [/\s+to\s+/giu, /\s*(?:–|—|\.\.+)\s*/gu, /\s+-\s+/gu, /-/gu];

/**
 * Reads stretches of a line: `2.0-2.6 in`, `2 in to 2 5/8 in`, `2.0-2.6, 3.5-3.9 in`. A unit
 * behind the last one holds for all that have none of their own.
 * @returns In the order typed.
 */
export function parseStretches(text: string): ParsedStretches {
  const stretches: Stretch[] = [];
  let unit: string | undefined;
  for (const item of listItems(text).toReversed()) {
    const stretch = parseStretch(item.text, unit);
    if (!stretch)
      return syntaxFault(
        "a stretch of the row with its unit",
        item.offset,
        item.text.length,
        advice,
      );
    unit ??= stretch.to.unit.symbol;
    stretches.unshift(stretch);
  }
  return { ok: true, stretches };
}

function parseStretch(text: string, shared: string | undefined): Stretch | undefined {
  for (const separator of separators) {
    for (const { 0: mark, index } of text.matchAll(separator)) {
      const to = length(text.slice(index + mark.length), shared);
      const from = to && length(text.slice(0, index), to.unit.symbol);
      if (from && to && from.amount.gte(0) && compareQuantities(from, to) < 0) return { from, to };
    }
  }
  return undefined;
}

function length(text: string, unit: string | undefined): Quantity | undefined {
  const own = parseQuantity(text);
  const read = own.ok || unit === undefined ? own : parseQuantity(`${text} ${unit}`);
  return read.ok && read.quantity.unit.dimension === "length" ? read.quantity : undefined;
}
