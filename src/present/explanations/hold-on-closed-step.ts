import type { Explanation } from "./explanation.ts";

/** What `hold-on-closed-step` means. */
export const holdOnClosedStep: Explanation = {
  code: "hold-on-closed-step",
  severity: "finding",
  title: "Something left in a closed step",
  meaning:
    "Clecos, tape, clamps or temporary bolts are recorded as a hold on a step that is now closed, and nothing says that they came out.",
  why: "A cleco inside a closed wing jams a control or works through a skin.",
  mend: [
    "If it is gone, say so under `releases` on the day it went.",
    "If it may still be in there, open the step and look; book the work as `rework`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-10.md",
      text: `---
date: 2026-03-10
holds:
  - { id: H-3, step: HS-08, with: clecos, count: 24 }
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
releases:
  - { hold: H-3 }
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], hours: "1:15", kind: assemble, stage: closed }
---
Drove the tail ribs.
`,
    },
  ],
  caution: "Count what went in and what came out. A thing left inside can jam a control in flight.",
};
