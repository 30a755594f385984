import type { Explanation } from "./explanation.ts";

/** What `not-a-choice` means. */
export const notAChoice: Explanation = {
  code: "not-a-choice",
  severity: "error",
  title: "Not one of the words that are allowed here",
  meaning:
    "Some fields take one of a few words: the kind of work, the role, the stage, the result of an inspection, `true` or `false`. The message lists them.",
  why: "Hours are added up by these words, so that a word used for the same thing in two spellings would split the total.",
  mend: [
    "Use one of the words listed.",
    "A project may declare its own stages in `project.yaml`; the other lists are fixed.",
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
