import type { Explanation } from "./explanation.ts";

/** What `unmatched-readings` means. */
export const unmatchedReadings: Explanation = {
  code: "unmatched-readings",
  severity: "error",
  title: "Readings that cannot be taken together",
  meaning:
    "A rule with `judges: difference` wants two values, or two readings with as many values each; `range` and `run-out` want two values or more. The values stand in the reading itself, or `of` names the readings that have them.",
  why: "A figure made of the wrong values would be judged as if it had been measured.",
  mend: [
    "Write all the values, as in `values: [14.381, 14.372] in`.",
    "Or name the readings that have them, as in `of: [R-1, R-2]`, under a rule that has `judges`.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: hinge-sides
    title: Hinge bracket spacing, left against right
    authority: manual
    source: { document: Builder's manual, edition: "2025", place: sheet 4-3 }
    judges: difference
    at-most: 0.030 in
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
readings:
  - { id: R-1, step: HS-07, what: hinge bracket spacing, at: left, value: 14.381 in }
  - { id: R-2, step: HS-07, what: hinge bracket spacing, at: right, value: 14.372 in }
  - { step: HS-07, what: hinge bracket spacing, at: left against right, rule: hinge-sides, of: [R-1, R-2] }
---
Measured both pairs.
`,
    },
  ],
  caution: "Take together only what was measured in the same way and in the same place.",
};
