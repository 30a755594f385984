import type { Explanation } from "./explanation.ts";

/** What `duplicate-id` means. */
export const duplicateId: Explanation = {
  code: "duplicate-id",
  severity: "error",
  title: "An id used twice",
  meaning:
    "Two things of the same kind have the same id, or ids that differ only in capital letters. Or a person stands twice in `who` of one session.",
  why: "Whatever names the id could mean either of the two.",
  mend: [
    "Give one of the two another id, and change it where it is used.",
    "Name each person once in a session.",
  ],
  example: [
    {
      file: "people.yaml",
      text: `people:
  - { id: ada, name: Ada Sample, role: builder }
  - { id: jon, name: Jon Sample, role: unpaid help }
`,
    },
  ],
};
