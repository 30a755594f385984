import type { Explanation } from "./explanation.ts";

/** What `code-front-matter` means. */
export const codeFrontMatter: Explanation = {
  code: "code-front-matter",
  severity: "error",
  title: "Front matter in another language",
  meaning:
    "The first line asks for front matter in another language, such as `---js`. Only plain `---` is read.",
  why: "Front matter in a programming language would be run as a program when the journal is read. Entries are never run as code, wherever they come from.",
  mend: ["Write `---` alone on the first line, and keys and values below it."],
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
