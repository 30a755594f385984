import type { Explanation } from "./explanation.ts";

/** What `wrong-dimension` means. */
export const wrongDimension: Explanation = {
  code: "wrong-dimension",
  severity: "error",
  title: "A length where a torque belongs, or the like",
  meaning:
    "A value measures something else than what it is held against: a torque against a limit of length, a length where a temperature is asked for, or two ends of a rule that do not match.",
  why: "The two cannot be compared, so that nothing would be judged.",
  mend: ["Correct the unit.", "Name the rule that was meant."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
readings:
  - { step: HS-07, what: shop head diameter, rule: heads-3-32, value: 0.141 in }
  - { step: HS-08, what: torque of the spar bolt, rule: torque-10-32, value: 24 lbf·in }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "A reading in the wrong unit may come from an instrument set to the wrong unit. Look at the part before correcting the entry.",
};
