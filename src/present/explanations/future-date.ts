import type { Explanation } from "./explanation.ts";

/** What `future-date` means. */
export const futureDate: Explanation = {
  code: "future-date",
  severity: "error",
  title: "An entry from the future",
  meaning:
    "The date of an entry, or the time at which it says that it was written, is after the day on which the journal is judged. That is today, unless `--as-of` or the project says otherwise.",
  why: "Work that has not been done cannot be recorded. Usually the year or the month is mistyped.",
  mend: [
    "Correct `date` and the name of the file, or `written`.",
    "Keep plans under `next`.",
    "Mark an entry that is being prepared with `draft: true`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
written: 2026-03-14 21:40
next: [drive the second row]
---
Drove the tail ribs.
`,
    },
  ],
};
