import type { Explanation } from "./explanation.ts";

/** What `layout-breaks-rule` means. */
export const layoutBreaksRule: Explanation = {
  code: "layout-breaks-rule",
  severity: "finding",
  title: "A layout outside the limits of a rule it names",
  meaning:
    "A row's edge distance or pitch, or a cut-out's corner radius or edge finish, is outside the limits of a rule named under `check`, and no deviation with a disposition accounts for it. Distances are those from centre to centre and from the centre to the edge. A length right on a limit is within.",
  why: "Holes too close to an edge or to each other tear out; a tight corner or a rough edge is where a crack begins. On paper it can still be changed.",
  mend: [
    "Change the layout before a hole is drilled, as far as the drawing allows it.",
    "If the drawing asks for it as it is, name the drawing's own limit under `check` in place of the general one.",
    "If it stays as it is, record a deviation with its disposition, and name it in the block as `deviation`.",
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
row:
  length: 6.000 in
  diameter: 1/8 in
  edge: 2.5 D
  side: 0.28 in
  count: 12
  check: { edge: edge-distance-2d, pitch: [pitch-3d-navy, pitch-army-tm] }
\`\`\`
`,
    },
  ],
  caution:
    "General limits are for general work. The drawings, the manufacturer, local rules and a licensed person govern.",
};
