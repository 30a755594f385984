import type { Explanation } from "./explanation.ts";

/** What `front-matter-missing` means. */
export const frontMatterMissing: Explanation = {
  code: "front-matter-missing",
  severity: "error",
  title: "No front matter, or it is not closed",
  meaning:
    "An entry begins with `---` on its first line, then keys and values, then `---` on a line of its own. Below that is prose. One of the two lines is missing.",
  why: "The date, the hours and the readings stand between those lines. Without them the entry is only prose, and nothing in it would be counted.",
  mend: [
    "Put `---`, then `date:` with the day, then `---` above the prose.",
    "If the first line is there, look for the second one; it may be indented or run into the line above.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
---
Drove the tail ribs.
`,
    },
  ],
};
