import type { Explanation } from "./explanation.ts";

/** What `not-a-number` means. */
export const notANumber: Explanation = {
  code: "not-a-number",
  severity: "error",
  title: "A count that is not a number",
  meaning:
    "A whole number is expected, or the coverage factor of a calibration, which may have decimals.",
  why: "A count of clecos or bolts is compared and printed; words cannot be.",
  mend: ["Write digits only.", "Say what is uncertain about it in `where` or in the prose."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
holds:
  - { step: HS-08, with: clecos, count: 24, where: lower flange }
releases:
  - { step: HS-08 }
---
Drove the tail ribs.
`,
    },
  ],
};
