import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `work-unlike-the-claim` means. */
export const workUnlikeTheClaim: Explanation = {
  code: "work-unlike-the-claim",
  severity: "finding",
  title: "Work of another kind than is claimed",
  meaning:
    "The builder has a share of a task for assembly, and no entry of kind `assemble` shows it; or a share for fabrication, and no entry of kind `fabricate` does. There are entries that show the task, of other kinds.",
  why: "Making a part and putting it together are two different claims with a column each. Somebody who reads the sheet against the log looks for both.",
  mend: [
    "Let the session that did the other half of the work claim the task too, or give it the right `kind`.",
    "Divide the task anew and say `why`, if only one kind of work was done.",
  ],
  example: [
    exampleTaskList,
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E1, on: 2026-03-14, kit: 0.4, fabrication: 0.6 }
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
    "Never change the kind of a session to fit the sheet. What was done is in the log; the sheet follows it, and whoever inspects the aircraft decides.",
};
