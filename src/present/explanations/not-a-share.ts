import { exampleListHead } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `not-a-share` means. */
export const notAShare: Explanation = {
  code: "not-a-share",
  severity: "error",
  title: "A share that is not in tenths",
  meaning:
    "A task of the major-portion sheet is one point, and the point is divided in tenths: a share in `portion.yaml` is 0, 0.1 and so on up to 1; `mfr_tenths` in `tasks.csv` is a whole number of tenths, from 0 to 10.",
  why: "The smallest share of the sheet is a tenth. A finer one would be rounded by somebody later, and the totals would no longer be those that were claimed.",
  mend: [
    "In `portion.yaml` write one digit behind the point, as in `0.3`.",
    "In `tasks.csv` write 9 for nine tenths, or leave the cell empty.",
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
