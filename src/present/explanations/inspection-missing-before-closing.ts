import type { Explanation } from "./explanation.ts";

/** What `inspection-missing-before-closing` means. */
export const inspectionMissingBeforeClosing: Explanation = {
  code: "inspection-missing-before-closing",
  severity: "finding",
  title: "Closed before it was looked at",
  meaning:
    "A step declares what has to be looked at before it is closed, under `looks`. It was closed on a day by which one of these looks had not come out clear: it was not there, or the newest one held it.",
  why: "What is closed cannot be seen any more. A look afterwards is noted, but it is not the same: the joint was out of sight by then.",
  mend: [
    "If somebody looked in time, add that inspection to the entry of that day.",
    "Otherwise open the step again, have it looked at, book the work as `rework`, and close it anew. The finding stays as what happened.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
inspections:
  - { step: HS-07, look: driven heads, by: jon, open: both skins off, findings: none, result: clear }
  - { step: HS-07, look: before closing, by: jon, open: aft skin lifted, findings: none, result: clear }
sessions:
  - { assembly: stabilizer, step: HS-07, who: [ada], hours: "1:15", kind: assemble, stage: closed }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "What has to be inspected, when and by whom is for local rules and the authority to say. Ask before closing, not after.",
};
