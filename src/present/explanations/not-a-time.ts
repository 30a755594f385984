import type { Explanation } from "./explanation.ts";

/** What `not-a-time` means. */
export const notATime: Explanation = {
  code: "not-a-time",
  severity: "error",
  title: "A time of day that cannot be read",
  meaning:
    "A time is hours and minutes on the 24-hour clock, as in `18:40`, in quotation marks. With a date in front it is written as in `2026-03-16 20:10`.",
  why: "The time says when a session began and when a joint may be worked on again. It is not guessed.",
  mend: [
    "Write hours, a colon and two digits of minutes.",
    "Where an offset is written behind the time, it has to be one that the clocks of the shop have on that day.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
written: 2026-03-14 21:40
sessions:
  - { assembly: stabilizer, who: [ada], from: "19:30", to: "21:05", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
