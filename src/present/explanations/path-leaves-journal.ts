import type { Explanation } from "./explanation.ts";

/** What `path-leaves-journal` means. */
export const pathLeavesJournal: Explanation = {
  code: "path-leaves-journal",
  severity: "error",
  title: "A path or link that leaves the journal",
  meaning:
    "A photograph is named by a path that leads out of the `photos` folder, or a file of the journal is a link that leads out of the journal, nowhere, or back to itself.",
  why: "Whatever it leads to would be published with the site: letters, accounts, keys.",
  mend: ["Copy the file itself into the journal, and name it from there."],
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
