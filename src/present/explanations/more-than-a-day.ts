import type { Explanation } from "./explanation.ts";

/** What `more-than-a-day` means. */
export const moreThanADay: Explanation = {
  code: "more-than-a-day",
  severity: "error",
  title: "More hours than the day has",
  meaning:
    "The sessions of one person under one date add up to more than that day has: 24 hours, or 23 or 25 when the clocks change.",
  why: "It cannot be true, so that the totals cannot be believed.",
  mend: [
    "Correct `hours`, or `from` and `to`.",
    "Give the hours of another day to the entry of that day.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], hours: "9:30", kind: assemble }
  - { assembly: wing, who: [ada], hours: "2:15", kind: fabricate }
---
Drove the tail ribs.
`,
    },
  ],
};
