import type { Explanation } from "./explanation.ts";

/** What `comment-swallows-text` means. */
export const commentSwallowsText: Explanation = {
  code: "comment-swallows-text",
  severity: "error",
  title: "A number sign that hides the rest of a line",
  meaning:
    "After a space, `#` begins a comment, and everything behind it is left out. Here text stands right behind the sign, as in the number of a drill, so it does not look like a comment.",
  why: "A drill size or a sheet number would vanish from the record without a word.",
  mend: [
    "Write a drill as `No. 30`.",
    "Put the whole value in quotation marks.",
    "If it is a comment, leave a space after the `#`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: Opened the holes with a No. 30 drill
---
Drove the tail ribs.
`,
    },
  ],
};
