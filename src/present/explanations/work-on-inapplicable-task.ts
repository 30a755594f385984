import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `work-on-inapplicable-task` means. */
export const workOnInapplicableTask: Explanation = {
  code: "work-on-inapplicable-task",
  severity: "finding",
  title: "Work on a task that does not apply",
  meaning:
    "A task is put aside as not applicable, and entries show work on it, or a row of help has a share of it.",
  why: "A task that is put aside leaves the count, which changes the percentage. If it was worked on, it applies.",
  mend: [
    "Divide the task in `portion.yaml`, and say `why` it applies after all.",
    "Take the task out of the sessions, of `claims` and of `help.yaml`, if the work was on something else.",
  ],
  example: [
    exampleTaskList,
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E1, on: 2026-03-14, kit: 0.4, fabrication: 0.6 }
  - { task: E2, on: 2026-03-14, not-applicable: true, why: bonded on this variant }
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
place: shop
sessions:
  - { assembly: stabilizer, step: HS-07, who: [ada], hours: "1:30", kind: fabricate, tasks: [E1] }
photos:
  - { file: 2026-03-14/rib4.jpg, caption: Rib 4 on the block, step: HS-07 }
---
Ribs of the tail, on the bench.
`,
    },
  ],
  caution:
    "Which tasks apply is for whoever inspects the aircraft to judge. This program only sees that two things in the journal do not agree.",
};
