import type { PortionSum } from "../../compute/portion.ts";
import type { CreditColumn, Split, Tenths } from "../../model/portion.ts";
import { tenthsText } from "../../model/tenths-text.ts";

/** What the columns are called on pages and paper. */
export const columnNames: Readonly<Record<CreditColumn, string>> = {
  kit: "Kit or part maker",
  paid: "Paid help",
  assembly: "Builder, assembly",
  fabrication: "Builder, fabrication",
};

/** Points with one decimal, exact; an empty share is empty. */
export function shareText(tenths: Tenths): string {
  return tenths === 0 ? "" : tenthsText(tenths);
}

/**
 * The builder's share in per cent, cut behind one decimal and never rounded up, so that a share
 * below a line is not printed as if it reached it.
 * @example 5096 of 10000 // "50.9 %"
 */
export function builderPercent({ builder, total }: Pick<PortionSum, "builder" | "total">): string {
  if (total === 0) return "–";
  const thousandths = Math.floor((builder * 1000) / total);
  return `${Math.trunc(thousandths / 10)}.${thousandths % 10} %`;
}

/** A division in words: `kit 0.3, fabrication 0.7`. */
export function splitText(split: Split | undefined): string {
  if (!split) return "not applicable";
  return (["kit", "paid", "assembly", "fabrication"] as const)
    .filter((column) => split[column] > 0)
    .map((column) => `${column} ${tenthsText(split[column])}`)
    .join(", ");
}
