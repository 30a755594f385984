import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `paid-work-without-share` means. */
export const paidWorkWithoutShare: Explanation = {
  code: "paid-work-without-share",
  severity: "finding",
  title: "Paid help that has no share",
  meaning:
    "An entry shows paid help at work on a task, and the sheet gives paid help nothing of it.",
  why: "Help for hire or compensation counts against the builder, and it has to be told apart from help that was not paid. A sheet that leaves it out claims more than was done.",
  mend: [
    "Divide the task anew with a share under `paid`, say `why`, and put that share into the row of `help.yaml`.",
    "If they only taught, and did nothing of the task, the role is `instruction`.",
    "If that session was on something else, correct its step or its `tasks`.",
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
