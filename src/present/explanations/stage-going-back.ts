import type { Explanation } from "./explanation.ts";

/** What `stage-going-back` means. */
export const stageGoingBack: Explanation = {
  code: "stage-going-back",
  severity: "finding",
  title: "A finished joint goes back to an earlier stage",
  meaning:
    "A step that was riveted, bonded, sealed or closed goes back to an earlier stage, and the session is not booked as `rework`. Going back and forth before that is ordinary work and is not reported.",
  why: "To drill a joint that was riveted, something has to have come out of it. The record should say so, because drilled-out rivets leave their mark on the holes.",
  mend: [
    "If the joint was undone, book the session as `kind: rework`.",
    "If only part of the step had come so far, correct the earlier `stage`, or split the step in two.",
  ],
  example: [
    {
      file: "days/2026/2026-03-10.md",
      text: `---
date: 2026-03-10
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], hours: "1:15", kind: assemble, stage: riveted }
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], hours: "0:40", kind: rework, stage: drilled }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "Holes from which fasteners were removed may be out of round or cracked. Look at them before they are filled again. The drawings, the manufacturer, local rules and a licensed person govern.",
};
