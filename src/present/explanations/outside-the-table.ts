import type { Explanation } from "./explanation.ts";

/** What `outside-the-table` means. */
export const outsideTheTable: Explanation = {
  code: "outside-the-table",
  severity: "finding",
  title: "A reading outside the rows of its table",
  meaning:
    "The rule's limits are a table, such as cable tension against temperature, and the reading was taken where the table has no rows. Between rows the limits run in a straight line; beyond the first and the last there are none.",
  why: "Nobody has said what the limit is there. A guess would look like a verdict.",
  mend: [
    "Measure again where the table has rows, and name this reading there as `supersedes`.",
    "If the place was warmer or colder than the day's `conditions`, write `temperature` beside the reading.",
    "If the source has more rows, copy them into the rule.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: trim-cable
    title: Trim cable tension
    authority: manual
    source: { document: Builder's manual, edition: "2025", place: sheet 11-4 }
    table: [[temperature, at-least, at-most], [40 °F, 8 lbf, 12 lbf], [60 °F, 10 lbf, 14 lbf]]
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
conditions: { temperature: 61 °F }
readings:
  - { step: HS-07, what: trim cable tension, rule: trim-cable, value: 11 lbf, temperature: 53 °F }
---
Set the trim cable by the open door.
`,
    },
  ],
  caution:
    "Rig by the manual's own chart and at a temperature that it covers. Nothing here extends a table beyond its rows.",
};
