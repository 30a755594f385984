import type { Explanation } from "./explanation.ts";

/** What `work-before-cure` means. */
export const workBeforeCure: Explanation = {
  code: "work-before-cure",
  severity: "finding",
  title: "Work on a joint that was still curing",
  meaning:
    "A session on the same step began after the joint was closed and before its cure was over. Study and inspection do not load a joint and are left out. A session with `hours` alone counts as beginning with its day, because nothing shows that it waited.",
  why: "A joint that is loaded or moved while it cures may never reach its strength, and it does not show.",
  mend: [
    "If the work began later that day, give `from` and `to`.",
    "If it did not touch the joint, book it to another step, or as `inspect` or `study`.",
    "Otherwise look at the joint, and record what was found as a squawk or a deviation.",
  ],
  example: [
    {
      file: "days/2026/2026-03-10.md",
      text: `---
date: 2026-03-10
cures:
  - { step: HS-08, lot: sealant-b2-118, mixed: "20:10", closed: "20:55", ready: 2026-03-12 20:10, source: maker's data sheet }
---
Drove the tail ribs.
`,
    },
    {
      file: "days/2026/2026-03-12.md",
      text: `---
date: 2026-03-12
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], from: "20:15", to: "21:00", kind: assemble }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "How long a cure takes depends on temperature, humidity and the batch. The maker's data sheet governs.",
};
