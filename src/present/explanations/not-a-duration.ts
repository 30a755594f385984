import type { Explanation } from "./explanation.ts";

/** What `not-a-duration` means. */
export const notADuration: Explanation = {
  code: "not-a-duration",
  severity: "error",
  title: "Hours that cannot be read, or that disagree",
  meaning:
    'A duration is hours and minutes with a colon between, in quotation marks, as in `"1:15"`. Or `hours` stands beside `from` and `to` and says something else than they do.',
  why: "Hours are kept in whole minutes and added up over years. A fraction such as 1.1 has no exact minutes.",
  mend: [
    "Write hours, a colon and two digits of minutes.",
    "Where `from` and `to` are given, leave `hours` out.",
  ],
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
