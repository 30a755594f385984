import { exampleListHead } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `portion-of-an-alteration` means. */
export const portionOfAnAlteration: Explanation = {
  code: "portion-of-an-alteration",
  severity: "error",
  title: "A major-portion sheet for an alteration",
  meaning:
    "The journal has `portion.yaml` or `tasks.csv`, and `project.yaml` says `basis: alteration`.",
  why: "The sheet is about an aircraft that an amateur builds. The forms it follows say that they are invalid for an altered or modified type-certificated aircraft, so a sum of such work would mislead.",
  mend: [
    "Take the two files out of the journal.",
    "If the aircraft is amateur-built, write `basis: amateur-built` in `project.yaml`.",
  ],
  example: [
    {
      file: "tasks.csv",
      text: `section,task_number,task,mfr_tenths
Empennage,E1,"Make the tail ribs, all of them",9
Empennage,E2,Rivet the tail ribs,
`,
    },
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E1, on: 2026-03-14, kit: 0.9, assembly: 0.1 }
  - { task: E2, on: 2026-03-14, not-applicable: true, why: bonded on this variant }
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
place: shop
sessions:
  - { assembly: stabilizer, step: HS-07, who: [ada], hours: "1:30", kind: assemble, tasks: [E1] }
photos:
  - { file: 2026-03-14/rib4.jpg, caption: Rib 4 on the block, step: HS-07 }
---
Ribs of the tail, on the bench.
`,
    },
  ],
  caution: "Whether an aircraft qualifies is decided by the authority, not here.",
};
