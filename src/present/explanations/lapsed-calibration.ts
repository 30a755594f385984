import type { Explanation } from "./explanation.ts";

/** What `lapsed-calibration` means. */
export const lapsedCalibration: Explanation = {
  code: "lapsed-calibration",
  severity: "finding",
  title: "Measured with an instrument past its calibration",
  meaning:
    "A reading was taken after the calibration of its instrument was due, or before it was calibrated at all. The due day itself is still good. An instrument with no calibrations in the register is not under calibration and never sets this off.",
  why: "Nobody knows whether the instrument was right on that day, so that its readings prove nothing until it has been looked at.",
  mend: [
    "Measure again with a calibrated instrument, and name this reading in the new one as `supersedes`.",
    "If it was calibrated in time, add that to `calibrations` of the instrument.",
    "If the next calibration shows that it was right all along, say so in a deviation; the finding stays as what happened.",
  ],
  example: [
    {
      file: "days/2026/2026-03-10.md",
      text: `---
date: 2026-03-10
readings:
  - { step: HS-08, what: length of the spar web, rule: spar-web-length, with: caliper-1, value: 12.502 in }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "A torque wrench out of calibration has turned every fastener it was used on since. The drawings, the manufacturer, local rules and a licensed person govern.",
};
