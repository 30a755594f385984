import type { Explanation } from "./explanation.ts";

/** What `missing-photo` means. */
export const missingPhoto: Explanation = {
  code: "missing-photo",
  severity: "error",
  title: "A photograph that is not there",
  meaning:
    "An entry names a photograph, and no such file stands below `photos`. Capital letters count.",
  why: "The page would show a hole, and the evidence would be missing when somebody asks.",
  mend: ["Copy the photograph into the `photos` folder.", "Correct its name in the entry."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
photos:
  - { file: 2026-03-14/rib4.jpg, caption: Row A driven }
---
Drove the tail ribs.
`,
    },
  ],
};
