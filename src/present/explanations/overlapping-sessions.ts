import type { Explanation } from "./explanation.ts";

/** What `overlapping-sessions` means. */
export const overlappingSessions: Explanation = {
  code: "overlapping-sessions",
  severity: "error",
  title: "One person at two sessions at once",
  meaning:
    "Two sessions of the same person overlap on the clock. A session may begin in the very minute in which the other ends. Sessions with `hours` alone have no place on the clock and cannot overlap.",
  why: "The minutes that overlap would count twice, and a count of hours that is too high in one place is not believed in any other.",
  mend: [
    "Correct `from` or `to` of one of the two.",
    "Take the person out of `who` where they were not there.",
    "For work done side by side, split the time between the two.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, step: HS-07, who: [ada], from: "18:40", to: "19:30", kind: assemble }
  - { assembly: wing, who: [ada, jon], from: "19:30", to: "21:00", kind: fabricate }
---
Drove the tail ribs.
`,
    },
  ],
};
