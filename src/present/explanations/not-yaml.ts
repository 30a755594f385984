import type { Explanation } from "./explanation.ts";

/** What `not-yaml` means. */
export const notYaml: Explanation = {
  code: "not-yaml",
  severity: "error",
  title: "A line that cannot be read",
  meaning:
    "Between the `---` lines, and in the registers, each line is `key: value`, or an item of a list after `- `. This line is neither. Usually there is a colon or a quotation mark inside the text, a tab in front of it, or a bracket that was not closed.",
  why: "What cannot be read would be left out, and with it hours or readings.",
  mend: [
    "Put text with a colon, or with `@`, `%` or a backquote in front, into quotation marks.",
    "Indent with spaces, two for each level.",
    "Close every bracket and quotation mark on the line where it is opened.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: "Tail ribs: riveted"
---
Drove the tail ribs.
`,
    },
  ],
};
