import type { Explanation } from "./explanation.ts";

/** What `not-a-quantity` means. */
export const notAQuantity: Explanation = {
  code: "not-a-quantity",
  severity: "error",
  title: "A measured value that cannot be read",
  meaning:
    "A measured value is a number and its unit, as in `0.141 in`, `3/32 in`, `31 lbf·in` or `61 °F`. The number may be a decimal, a fraction, or a drill number as in `No. 30`.",
  why: "A number without its unit says nothing: a torque in the wrong unit is a broken bolt or a loose one.",
  mend: [
    "Write the unit behind the number.",
    "Where several values share a unit, write it once behind the list: `values: [0.141, 0.140] in`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
readings:
  - { step: HS-07, what: shop head diameter, rule: heads-3-32, value: 0.141 in }
---
Drove the tail ribs.
`,
    },
  ],
  caution: "Take the unit from the instrument and the drawing. Do not convert in your head.",
};
