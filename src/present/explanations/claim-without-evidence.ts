import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `claim-without-evidence` means. */
export const claimWithoutEvidence: Explanation = {
  code: "claim-without-evidence",
  severity: "finding",
  title: "A claimed task that nothing shows",
  meaning:
    "In `portion.yaml` the builder has a share of a task, and no entry by a builder or an unpaid helper is evidence of it, or none of these entries has a place, a text or a photograph. A session is evidence of a task when it names the task under `tasks`, or when its step is listed under `claims`. Study and shop time are evidence of nothing.",
  why: "The sheet is read against the log. A line with no dated entry and no picture behind it is worth nothing to whoever inspects the aircraft, and it is easily mended while the parts are still open.",
  mend: [
    "Name the task in the session that did it, or list its steps under `claims` in `portion.yaml`.",
    "List a photograph under `photos` of such an entry, and say in words what was done, with which material and how.",
    "If the task is still ahead, leave its division out until it is begun. It then stands as not divided yet, and `witness portion --what-if` shows what it would come to.",
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
    "Never add an entry, a date or a photograph to fill a gap. A gap that is left open is honest; a record that was made up is not.",
};
