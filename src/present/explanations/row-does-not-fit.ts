import type { Explanation } from "./explanation.ts";

/** What `row-does-not-fit` means. */
export const rowDoesNotFit: Explanation = {
  code: "row-does-not-fit",
  severity: "finding",
  title: "A row that cannot be laid out",
  meaning:
    "No even row keeps to everything that the layout asks for: its edge distance at both ends, the least and the greatest pitch, the number of fasteners, and the stretches kept out. The message says what stands in the way.",
  why: "Found on the bench, it costs a pencil line. Found with the drill in the hand, it costs a part.",
  mend: [
    "Ask for fewer fasteners, or for more, as the message says.",
    "Where something in the middle is in the way, lay out the parts on either side of it as rows of their own.",
    "Look at the units, and at whether lengths are measured from the left end of the row.",
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
  length: 8.000 in
  diameter: 1/8 in
  edge: 2.5 D
  pitch-min: 4 D
  keep-outs: [{ from: 3.80 in, to: 4.20 in, what: stringer }]
\`\`\`
`,
    },
  ],
  caution:
    "Fewer fasteners make a weaker joint. How many there have to be is for the drawing to say, not for the room there is.",
};
