import type { Explanation } from "./explanation.ts";

/** What `duplicate-day` means. */
export const duplicateDay: Explanation = {
  code: "duplicate-day",
  severity: "error",
  title: "Two entries for one day",
  meaning: "Two files below `days` are called after the same date.",
  why: "A day has one entry and one page. With two, hours might be entered twice.",
  mend: ["Put both into one file, and look for sessions that stand in both."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
