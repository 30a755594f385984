import type { Explanation } from "./explanation.ts";

/** What `time-in-fold` means. */
export const timeInFold: Explanation = {
  code: "time-in-fold",
  severity: "error",
  title: "A time that the clocks showed twice",
  meaning:
    "On the day on which the clocks go back one hour happens twice. This time lies in it, and nothing says which of the two is meant.",
  why: "The two are an hour apart, and a guess would be wrong half of the time.",
  mend: [
    "Write the offset behind the time; the message shows both.",
    "Give `hours` in place of `from` and `to`.",
  ],
  example: [
    {
      file: "days/2025/2025-11-02.md",
      text: `---
date: 2025-11-02
sessions:
  - { assembly: stabilizer, who: [ada], from: "00:30", to: "01:30-07:00", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
