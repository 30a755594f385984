import type { Explanation } from "./explanation.ts";

/** What `wrong-shape` means. */
export const wrongShape: Explanation = {
  code: "wrong-shape",
  severity: "error",
  title: "Text where a list belongs, or the other way round",
  meaning:
    "A value is of another shape than it should be: one word where a list is expected, a list where text is expected, or keys and values where neither is.",
  why: "Read the wrong way, a list of two people could count as one.",
  mend: [
    "Put a list in square brackets, also when it has one item.",
    "Put text that begins with a bracket in quotation marks.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
};
