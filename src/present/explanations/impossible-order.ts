import type { Explanation } from "./explanation.ts";

/** What `impossible-order` means. */
export const impossibleOrder: Explanation = {
  code: "impossible-order",
  severity: "error",
  title: "Two dates or times that cannot be in this order",
  meaning:
    "Something is said to have happened before what it depends on: an entry written before its day, a joint closed after its cure was over, a squawk closed before it was fixed, a calibration due before it was made, a lot expired before it was made, or a reading that supersedes itself or a later one.",
  why: "At least one of the two is wrong, and whatever is worked out from it is wrong too.",
  mend: [
    "Correct the date or time that is wrong.",
    "Where an earlier day is at fault, correct it with an amendment if its month is sealed.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
written: 2026-03-15 08:20
cures:
  - { step: HS-08, mixed: "20:10", closed: "20:55", ready: 2026-03-16 20:10 }
---
Drove the tail ribs.
`,
    },
  ],
};
