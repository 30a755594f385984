import type { Explanation } from "./explanation.ts";

/** What `time-in-gap` means. */
export const timeInGap: Explanation = {
  code: "time-in-gap",
  severity: "error",
  title: "A time that the clocks skipped",
  meaning:
    "On the day on which the clocks go forward there is an hour that does not exist. This time lies in it.",
  why: "To guess would shift the session by an hour.",
  mend: ["Write the time that the shop clock showed.", "Give `hours` in place of `from` and `to`."],
  example: [
    {
      file: "days/2026/2026-03-08.md",
      text: `---
date: 2026-03-08
sessions:
  - { assembly: stabilizer, who: [ada], from: "01:30", to: "03:30", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
