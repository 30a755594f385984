import type { Explanation } from "./explanation.ts";

/** What `amendment-does-not-match` means. */
export const amendmentDoesNotMatch: Explanation = {
  code: "amendment-does-not-match",
  severity: "error",
  title: "An amendment that does not fit what it corrects",
  meaning:
    "An amendment names a day, a field, what stood there and what should stand there. There is no such entry, it is not of an earlier day, the field is not there, or `was` is not what stands there.",
  why: "A correction may not hide what it corrects. If `was` is wrong, the wrong value may be about to be replaced.",
  mend: [
    "Open the entry to be corrected, count its items from 1, and write under `was` what stands there, word for word.",
    "If the entry is of the same day, correct it directly.",
  ],
  example: [
    {
      file: "days/2026/2026-03-02.md",
      text: `---
date: 2026-03-02
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
amendments:
  - day: 2026-03-02
    field: "sessions[1].hours"
    was: "1:15"
    now: "1:45"
    why: forgot the clean-up
---
Drove the tail ribs.
`,
    },
  ],
};
