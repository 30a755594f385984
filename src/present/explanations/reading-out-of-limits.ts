import type { Explanation } from "./explanation.ts";

/** What `reading-out-of-limits` means. */
export const readingOutOfLimits: Explanation = {
  code: "reading-out-of-limits",
  severity: "finding",
  title: "A reading outside its limits",
  meaning:
    "A measured value is outside the limits of its rule, no later reading replaces it, and no deviation with a disposition accounts for it. The limits are taken as written, and a value right on a limit is within.",
  why: "Either the part is not as the drawing wants it, or the measurement is wrong. The record has to say which.",
  mend: [
    "Put the part right, measure again, and name the first reading in the new one as `supersedes`. The first one stays readable.",
    "If it was measured wrong, measure again in the same way.",
    "If it stays as it is, record a deviation with its disposition, and name it in the reading as `deviation`.",
    "If friction drag was in a wrench reading, record it beside the reading as `drag`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
readings:
  - { id: R-12, step: HS-07, what: shop head diameter, at: rib 4, rule: heads-3-32, value: 0.119 in }
  - { step: HS-07, what: shop head diameter, at: rib 4 re-driven, rule: heads-3-32, value: 0.141 in, supersedes: R-12 }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "A part outside its limits may fail in flight. Do not close it up before somebody entitled to decide has decided. The drawings, the manufacturer, local rules and a licensed person govern.",
};
