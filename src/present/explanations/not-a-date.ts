import type { Explanation } from "./explanation.ts";

/** What `not-a-date` means. */
export const notADate: Explanation = {
  code: "not-a-date",
  severity: "error",
  title: "A date that does not exist or cannot be read",
  meaning:
    "A date is a year, a month and a day with dashes between, as in `2026-03-14`, and the day has to exist. An entry is called after its day too: `2026-03-14.md`.",
  why: "Dates written in other ways mean different days in different countries.",
  mend: [
    "Write year, month and day, each with all its digits.",
    "Move a file that is not an entry out of the `days` folder.",
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
