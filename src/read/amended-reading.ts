import type { AmendedReading } from "../model/amendment.ts";
import type { Quantity } from "../model/quantity.ts";
import { parseQuantities } from "./quantity-syntax.ts";
import type { MapNode, TypedNode } from "./typed-tree.ts";

/**
 * The reading that an amendment corrects, and the values that it had before.
 * @param tree The corrected day, every correction in place.
 * @param path The value that the amendment names, its numbers counted from 0.
 * @param was What stood there.
 * @returns `undefined` when the amendment corrects something else.
 */
export function amendedReading(
  tree: MapNode,
  path: readonly (string | number)[],
  was: TypedNode,
): AmendedReading | undefined {
  const [list, index, key] = path;
  if (list !== "readings" || typeof index !== "number") return undefined;
  const readings = tree.entries.get("readings")?.value;
  const reading = readings?.kind === "list" ? readings.items[index] : undefined;
  if (reading?.kind !== "map") return undefined;
  const [id, date] = [reading.entries.get("id")?.value, tree.entries.get("date")?.value];
  return {
    id: id?.kind === "text" ? id.text : `${date?.kind === "text" ? date.text : ""}.r${index + 1}`,
    values: key === undefined || key === "value" || key === "values" ? valuesIn(was) : [],
  };
}

// What could not be read as a value was a fault of the old entry, and is shown as text alone.
function valuesIn(node: TypedNode): readonly Quantity[] {
  switch (node.kind) {
    case "text": {
      const parsed = parseQuantities(node.text);
      return parsed.ok ? parsed.quantities.map(({ quantity }) => quantity) : [];
    }
    case "list":
      return node.items.flatMap(valuesIn);
    case "map":
      return ["value", "values"].flatMap((key) => {
        const entry = node.entries.get(key);
        return entry ? valuesIn(entry.value) : [];
      });
  }
}
