import type { Explanation } from "./explanation.ts";

/** What `deviation-without-disposition` means. */
export const deviationWithoutDisposition: Explanation = {
  code: "deviation-without-disposition",
  severity: "finding",
  title: "A deviation that nobody has decided about",
  meaning:
    "Something departs from the drawings and is recorded, but not what is to become of it: use as is, repair, make anew.",
  why: "Until somebody entitled to decide has decided, the part is in no known state. Readings that rely on the deviation stay out of limits as well.",
  mend: [
    "Ask whoever may decide, and write the answer as `disposition`, and who gave it as `accepted-by`.",
    "A later entry may decide it, under `dispositions`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
deviations:
  - id: D-014
    step: HS-08
    drawing: HS-03 rev C
    planned: 1.0 in block
    done: 0.75 in block
    why: first rib sits further aft
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-16.md",
      text: `---
date: 2026-03-16
dispositions:
  - { deviation: D-014, disposition: use as is, accepted-by: jon }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "This program decides nothing about a deviation and certifies nothing. The drawings, the manufacturer, local rules and a licensed person govern.",
};
