import type { Explanation } from "./explanation.ts";

/** What `date-differs-from-file-name` means. */
export const dateDiffersFromFileName: Explanation = {
  code: "date-differs-from-file-name",
  severity: "error",
  title: "The date inside is not the date of the file",
  meaning: "The file is called after one day, and `date` inside says another.",
  why: "One of the two is wrong, and only you know which.",
  mend: ["Correct `date`.", "Rename the file."],
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
