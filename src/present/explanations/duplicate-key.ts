import type { Explanation } from "./explanation.ts";

/** What `duplicate-key` means. */
export const duplicateKey: Explanation = {
  code: "duplicate-key",
  severity: "error",
  title: "The same key twice",
  meaning:
    "A key stands twice in the same place, so that one of its two values would silently win.",
  why: "Nobody could tell which of the two was meant, and the other would be lost.",
  mend: ["Keep one of the two.", "To add to a list, add an item to the first one."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: Tail ribs riveted
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
