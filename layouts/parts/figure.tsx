import type { Sum } from "../../src/present/pages/page.ts";

/**
 * Hours as a figure that leads to the rows it is the sum of. The marks `data-…` on figures and
 * rows are what a test follows to add them up again; `tests/support/figures.ts` explains them.
 */
export function Figure({ text, sum }: { text: string; sum?: Sum | undefined }) {
  if (sum === undefined) return <>{text}</>;
  return (
    <a href={sum.href} data-figure={sum.of}>
      {text}
    </a>
  );
}
