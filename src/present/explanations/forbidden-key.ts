import type { Explanation } from "./explanation.ts";

/** What `forbidden-key` means. */
export const forbiddenKey: Explanation = {
  code: "forbidden-key",
  severity: "error",
  title: "A key that is never allowed",
  meaning: "The keys `__proto__`, `constructor` and `prototype` are refused wherever they stand.",
  why: "They mean something to the language this program is written in, and could change how everything else is read.",
  mend: ["Leave the line out."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: Tail ribs riveted
---
Drove the tail ribs.
`,
    },
  ],
};
