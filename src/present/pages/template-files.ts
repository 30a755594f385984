import type { Layout } from "../../model/layout.ts";

/** Papers that templates are printed on. */
export const templatePapers = ["A4", "Letter"] as const;
export type TemplatePaper = (typeof templatePapers)[number];

/**
 * Where the sheet to be printed at full size stands, from the site's root.
 * @example templateFile({ date: "2026-03-14", number: 1 }, "A4") // "drawings/2026-03-14-1-a4.pdf"
 */
export function templateFile(
  { date, number }: Pick<Layout, "date" | "number">,
  paper: TemplatePaper,
): string {
  return `drawings/${date}-${number}-${paper.toLowerCase()}.pdf`;
}
