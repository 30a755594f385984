import type { Explanation } from "./explanation.ts";

/** What `unreadable-photo` means. */
export const unreadablePhoto: Explanation = {
  code: "unreadable-photo",
  severity: "finding",
  title: "A photograph that cannot be read",
  meaning:
    "The file is there, but it is empty, cut short, too large, of another kind than its name says, or of a kind that cannot be published. The message says which. The other photographs are not affected.",
  why: "The page shows the caption without a picture, and the evidence is missing.",
  mend: [
    "Copy the photograph from the camera again.",
    "Save it anew as JPEG or PNG.",
    "Set the telephone to take pictures as JPEG.",
  ],
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
