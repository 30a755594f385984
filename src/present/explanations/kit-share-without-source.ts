import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `kit-share-without-source` means. */
export const kitShareWithoutSource: Explanation = {
  code: "kit-share-without-source",
  severity: "finding",
  title: "A share of the kit that rests on nothing",
  meaning:
    "The kit's share of a task is not the one that the list gives, or the list gives none, and no `source` says what it rests on.",
  why: "The first column is not the builder's to choose: it comes from an evaluation of the kit, or from the record of a part that was bought. A share that is smaller than the list gives makes the builder's own larger.",
  mend: [
    "Write under `source` what it rests on: an evaluation, an invoice, the record of the part.",
    "Keep to the share that the list gives.",
  ],
  example: [
    exampleTaskList,
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E1, on: 2026-03-14, kit: 0.4, fabrication: 0.6 }
  - { task: E2, on: 2026-03-14, kit: 1.0, source: "came riveted, by the packing list" }
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
    "The evaluation of the kit, the authority and whoever inspects the aircraft govern; this program only asks what a number rests on.",
};
