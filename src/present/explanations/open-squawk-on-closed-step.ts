import type { Explanation } from "./explanation.ts";

/** What `open-squawk-on-closed-step` means. */
export const openSquawkOnClosedStep: Explanation = {
  code: "open-squawk-on-closed-step",
  severity: "finding",
  title: "A squawk left open on a closed step",
  meaning:
    "Something was found on a step and written down as a squawk. The step is closed, and nobody has closed the squawk. One that is fixed but not looked at is still open.",
  why: "The step cannot be reached any more, and the list says that something is not right in there.",
  mend: [
    "Say what was done under `fixes`, as `did`.",
    "When somebody has looked at it, name them under `fixes` as `closed-by`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-10.md",
      text: `---
date: 2026-03-10
squawks:
  - { id: S-004, found: a nick in the aft flange, step: HS-08 }
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
fixes:
  - { squawk: S-004, did: blended out and primed, closed-by: jon }
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], hours: "1:15", kind: assemble, stage: closed }
---
Drove the tail ribs.
`,
    },
  ],
  caution: "The drawings, the manufacturer, local rules and a licensed person govern.",
};
