import type { Explanation } from "./explanation.ts";

/** What `not-an-id` means. */
export const notAnId: Explanation = {
  code: "not-an-id",
  severity: "error",
  title: "A name that cannot be an id",
  meaning:
    "An id has letters, digits, dots, dashes and underscores, and begins with a letter or a digit. It has no spaces and at most 80 signs.",
  why: "Ids become addresses of pages and names of files, and are typed again in later entries.",
  mend: ["Choose a short id, and put the words into `title` or the other fields."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
deviations:
  - id: D-014
    drawing: HS-03 rev C
    planned: 1.0 in block
    done: 0.75 in block
    why: rib sits further aft
    disposition: use as is
    accepted-by: jon
---
Drove the tail ribs.
`,
    },
  ],
};
