import type { Explanation } from "./explanation.ts";

/** What `not-an-expression` means. */
export const notAnExpression: Explanation = {
  code: "not-an-expression",
  severity: "error",
  title: "A limit that cannot be read",
  meaning:
    "A limit in `rules.yaml` is a value with its unit, or in terms of a named size: `0.25 in`, `2 D`, `2 D + 0.05 in`. Sizes are declared under `sizes`.",
  why: "Every reading under this rule is judged by it.",
  mend: [
    "Write a number, a space and the size, as in `2 D`; join parts with `+` or `-`.",
    "Declare the size that the limit is in terms of.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: edge-3-32
    title: Edge distance, 3/32 rivet
    authority: drawing
    source: { document: HS-03, edition: rev C }
    sizes: { D: 3/32 in }
    at-least: 2 D
`,
    },
  ],
  caution:
    "Copy limits from the drawing or the manual with the page open. They govern, whatever this file says.",
};
