import type { Explanation } from "./explanation.ts";

/** What `empty-day` means. */
export const emptyDay: Explanation = {
  code: "empty-day",
  severity: "error",
  title: "An entry that says nothing",
  meaning: "The entry has a date, but neither prose nor sessions.",
  why: "It would make an empty page. It may also be an evening that was never written down.",
  mend: [
    "Write a sentence below the second `---`.",
    "Add what was worked on under `sessions`.",
    "Remove the file.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
---
Drove the tail ribs.
`,
    },
  ],
};
