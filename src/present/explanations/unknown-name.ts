import type { Explanation } from "./explanation.ts";

/** What `unknown-name` means. */
export const unknownName: Explanation = {
  code: "unknown-name",
  severity: "error",
  title: "A name that nothing declares",
  meaning:
    "An entry names an assembly, step, person, rule, instrument, lot, drawing, reading, deviation, squawk or hold that is not declared, that belongs elsewhere, or that is of a later day. The message offers the nearest name.",
  why: "A slip of the finger would open a second assembly for the same hours, or hang a reading on a rule that nobody wrote.",
  mend: ["Correct the spelling.", "Declare it in its register if it is new."],
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
