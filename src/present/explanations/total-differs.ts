import type { Explanation } from "./explanation.ts";

/** What `total-differs` means. */
export const totalDiffers: Explanation = {
  code: "total-differs",
  severity: "error",
  title: "An asserted total that does not hold",
  meaning:
    "Under `assert` an entry vouches for a total: of the whole build, or of an assembly with everything below it, up to and including that day. What the entries add up to is something else. Hours of the kinds `study` and `shop` are not part of it.",
  why: "That is what the assertion is for: a session has been lost, changed or entered twice since the last time the total held. The message says when that was.",
  mend: [
    "Look through the entries since the last assertion that held: `witness explain hours` prints the sum line by line, and takes `--assembly` and `--month`.",
    "If the entries are right, correct the assertion.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
assert: { total: "1:15", stabilizer: "1:15" }
---
Drove the tail ribs.
`,
    },
  ],
};
