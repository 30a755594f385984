import type { Explanation } from "./explanation.ts";

/** What `not-a-layout` means. */
export const notALayout: Explanation = {
  code: "not-a-layout",
  severity: "error",
  title: "A layout that cannot be read",
  meaning:
    "A block called `layout` in the prose describes a row of fasteners or a cut-out, and something in it contradicts itself: a length that is not above zero, a `count` together with a `pitch`, a keep-out that runs backwards or off the row, corners that do not fit, a rule that speaks of something else. The block begins with three backquotes and `layout` at the left margin and ends with three backquotes on a line of their own.",
  why: "A template is cut out and drilled through. What it is drawn from has to be unmistakable.",
  mend: [
    "Correct what the message points at.",
    "To show such a block as an example, and not have it drawn, put it inside a fence of four backquotes.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
---
Marked out the upper flange.

\`\`\`layout
title: Upper flange, rib 4
step: HS-07
row:
  length: 6.000 in
  fastener: AN470AD3-4
  edge: 2.5 D
  side: 0.25 in
  count: 12
  check: { edge: edge-distance-2d, pitch: pitch-3d-navy }
\`\`\`
`,
    },
  ],
  caution: "Compare every number with the drawing before you drill; the drawing governs.",
};
