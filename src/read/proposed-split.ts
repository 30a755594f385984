import { creditColumns, type Split, tenthsOfATask } from "../model/portion.ts";
import { tenthsText } from "../model/tenths-text.ts";
import { parseTenths } from "./tenths-syntax.ts";

/** A division to be tried out; without a split the task would not apply. */
export interface ProposedSplit {
  readonly task: string;
  readonly split?: Split;
}

/**
 * Reads a division typed on one line: `F1=kit 0.3, fabrication 0.7`, `F1=not applicable`.
 * @returns What is wrong, and how it is written, when it cannot be read.
 */
export function proposedSplit(
  text: string,
): ProposedSplit | { readonly why: string; readonly help: string } {
  const how = "write `F1=kit 0.3, paid 0.2, fabrication 0.5`, or `F1=not applicable`";
  const [, task, typed] = /^\s*([^=\s]+)\s*=\s*(.+?)\s*$/.exec(text) ?? [];
  if (task === undefined || typed === undefined) {
    return { why: `\`${text}\` does not say which task is divided how`, help: how };
  }
  if (typed === "not applicable") return { task };
  const split = { kit: 0, paid: 0, assembly: 0, fabrication: 0 };
  const seen = new Set<string>();
  for (const part of typed.split(",").map((each) => each.trim())) {
    const [, name, number] = /^(\S+)\s+(\S+)$/.exec(part) ?? [];
    const column = creditColumns.find((each) => each === name);
    const tenths = number === undefined ? undefined : parseTenths(number);
    if (column === undefined || tenths === undefined || seen.has(column)) {
      return {
        why:
          column !== undefined && seen.has(column)
            ? `\`${column}\` stands twice in \`${text}\``
            : `\`${part}\` is not a share: expected ${creditColumns.join(", ")} and tenths of a point`,
        help: how,
      };
    }
    seen.add(column);
    split[column] = tenths;
  }
  const sum = creditColumns.reduce((total, column) => total + split[column], 0);
  if (sum === tenthsOfATask) return { task, split };
  return {
    why: `the shares in \`${text}\` come to ${tenthsText(sum)}, and a task is one point`,
    help: how,
  };
}
