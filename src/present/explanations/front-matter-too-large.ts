import type { Explanation } from "./explanation.ts";

/** What `front-matter-too-large` means. */
export const frontMatterTooLarge: Explanation = {
  code: "front-matter-too-large",
  severity: "error",
  title: "Too much between the two lines of dashes",
  meaning:
    "The part between the `---` lines is longer or more deeply nested than any real evening: more than 64 KiB or 2,000 lines, an indent of more than 40 columns, or brackets more than 20 deep.",
  why: "Nesting of that kind stops the parser for the whole journal, so it is refused before it gets that far. It usually comes from a bracket that was never closed, or from prose pasted above the second `---`.",
  mend: [
    "Close the brackets that are open.",
    "Move prose below the second `---`.",
    "Split what belongs to several days into an entry for each.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
next: [drill the second row, order rivets]
---
Drove the tail ribs.
`,
    },
  ],
};
