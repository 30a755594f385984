import { exampleListHead, exampleTaskList } from "./example-task-list.ts";
import type { Explanation } from "./explanation.ts";

/** What `credit-for-salvage` means. */
export const creditForSalvage: Explanation = {
  code: "credit-for-salvage",
  severity: "finding",
  title: "Credit claimed for a salvaged assembly",
  meaning:
    "A task is marked `salvage: true`, made from a used assembly of a type-certificated aircraft, and the builder has a share of it.",
  why: "By what others quote from AC 20-27G, a used assembly may be put in if it is fit for safe operation, but using, rebuilding or altering it earns the builder nothing. The text itself was not seen; whoever inspects the aircraft decides.",
  mend: [
    "Give the whole point to `kit`, and say `why` if it was divided otherwise before.",
    "Take `salvage` out, if the part was made new after all.",
  ],
  example: [
    exampleTaskList,
    {
      file: "portion.yaml",
      text: `${exampleListHead}splits:
  - { task: E2, on: 2026-03-14, kit: 1.0, salvage: true }
`,
    },
  ],
  caution:
    "Whether a used assembly may be put in, and how it counts, is for the authority and whoever inspects the aircraft. Nothing here says that a part is fit to fly.",
};
