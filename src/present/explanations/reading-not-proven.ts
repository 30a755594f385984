import type { Explanation } from "./explanation.ts";

/** What `reading-not-proven` means. */
export const readingNotProven: Explanation = {
  code: "reading-not-proven",
  severity: "finding",
  title: "A reading too near its limit to be sure",
  meaning:
    "The value is within its limits. But the rule asks for a guard against the uncertainty of the instrument (`guarded by U` or `guarded for 95 %`), and the value is nearer to the limit than that, or nothing is known of the uncertainty.",
  why: "An instrument that may be off by more than what is left to the limit cannot show that the limit is met.",
  mend: [
    "Measure again with a better instrument, and name this reading in the new one as `supersedes`.",
    "Name the instrument under `with`, and its `uncertainty` from the calibration sheet in `instruments.yaml`.",
    "If it stays as it is, record a deviation with its disposition, and name it as `deviation`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-09.md",
      text: `---
date: 2026-03-09
readings:
  - { step: HS-08, what: length of the spar web, rule: spar-web-length, with: caliper-1, value: 12.502 in }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "Within the limits on the display is not always within the limits. The drawings, the manufacturer, local rules and a licensed person govern.",
};
