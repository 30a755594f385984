import { exampleListHead } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `not-a-split` means. */
export const notASplit: Explanation = {
  code: "not-a-split",
  severity: "error",
  title: "A division that is not one whole point",
  meaning:
    "The shares of a task come to more or less than one point, there are none, or the task is said to be not applicable and has shares as well.",
  why: "The sheet counts tasks. A task that is worth 0.9 or 1.1 points shifts the percentage though nobody did any work.",
  mend: [
    "Divide the whole point between `kit`, `paid`, `assembly` and `fabrication`.",
    "Of a task that does not apply, write `not-applicable: true` and `why`, and no shares.",
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
};
