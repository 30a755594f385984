import type { Explanation } from "./explanation.ts";

/** What `limits-not-known` means. */
export const limitsNotKnown: Explanation = {
  code: "limits-not-known",
  severity: "error",
  title: "Limits that nothing can be judged by",
  meaning:
    "The lower limit of a rule lies above the upper one, or a size or drag given with a reading makes it so, or is of another kind than the limit.",
  why: "Every reading under the rule would be left without a verdict.",
  mend: [
    "Correct `at-least` and `at-most` of the rule.",
    "Correct `sizes` or `drag` of the reading, or name the rule that was meant.",
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
    at-most: 4 D
`,
    },
  ],
  caution:
    "Copy limits from the drawing or the manual with the page open. They govern, whatever this file says.",
};
