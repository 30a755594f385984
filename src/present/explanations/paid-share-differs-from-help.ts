import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `paid-share-differs-from-help` means. */
export const paidShareDiffersFromHelp: Explanation = {
  code: "paid-share-differs-from-help",
  severity: "finding",
  title: "A paid share that the help received does not have",
  meaning:
    "The sheet gives paid help a share of a task, and the rows of `help.yaml` come to another share of it, or to none.",
  why: "Whoever inspects the aircraft asks who was paid for what, and when. The column for paid help and the register of help have to tell the same story.",
  mend: [
    "Say in `help.yaml` who was paid, for what and when, with the task and its share under `shares`.",
    "Divide the task anew in `portion.yaml` and say `why`.",
  ],
  example: [
    exampleTaskList,
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E1, on: 2026-03-14, kit: 0.4, paid: 0.2, fabrication: 0.4 }
`,
    },
    {
      file: "help.yaml",
      text: `help:
  - { id: P-1, who: jon, kind: paid help, from: 2026-03-14, what: bent half of the ribs, shares: { E1: 0.2 } }
`,
    },
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
place: shop
sessions:
  - { assembly: stabilizer, step: HS-07, who: [ada, jon], hours: "1:30", kind: fabricate, tasks: [E1], roles: { jon: paid help } }
photos:
  - { file: 2026-03-14/rib4.jpg, caption: Rib 4 on the block, step: HS-07 }
---
Ribs of the tail, on the bench.
`,
    },
  ],
  caution:
    "How help counts is decided by whoever inspects the aircraft, if possible before the work. This program decides nothing.",
};
