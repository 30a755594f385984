import type { Explanation } from "./explanation.ts";

/** What `missing-key` means. */
export const missingKey: Explanation = {
  code: "missing-key",
  severity: "error",
  title: "Something that has to be there is not",
  meaning:
    "A key that this thing cannot do without is missing or empty: a session without its kind, a reading without a value, a rule without its source.",
  why: "Without it the entry cannot be counted or judged, and a guess would not be a record.",
  mend: ["Add the key. The message shows a line that works."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], from: "18:40", to: "21:05", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
