import type { Explanation } from "./explanation.ts";

/** What `not-a-table` means. */
export const notATable: Explanation = {
  code: "not-a-table",
  severity: "error",
  title: "A table of limits that cannot be read",
  meaning:
    "A `table` in `rules.yaml` begins with a head: what it is entered with, then its columns, which are `at-least`, `at-most` or both, or `nominal` with a `tolerance` beside the table. Below it stand two rows or more, going up, with a value and its unit in every cell.",
  why: "A limit between two rows is worked out on the straight line between them. A row out of order or short of a cell would move that line.",
  mend: [
    "Write the head as in `[temperature, at-least, at-most]`.",
    "Copy the rows from the source in its own units, each once, from the lowest to the highest.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: trim-cable
    title: Trim cable tension
    authority: manual
    source: { document: Builder's manual, edition: "2025", place: sheet 11-4 }
    table:
      - [temperature, at-least, at-most]
      - [40 °F, 8 lbf, 12 lbf]
      - [60 °F, 10 lbf, 14 lbf]
      - [90 °F, 14 lbf, 18 lbf]
`,
    },
  ],
  caution:
    "Copy the table from the drawing or the manual with the page open. They govern, whatever this file says.",
};
