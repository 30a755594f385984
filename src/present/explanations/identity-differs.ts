import type { Explanation } from "./explanation.ts";

/** What `identity-differs` means. */
export const identityDiffers: Explanation = {
  code: "identity-differs",
  severity: "error",
  title: "A file kept for another aircraft",
  meaning:
    "Under `for` a register says for which aircraft it is kept: designation, serial number, registration, builder. A seal says it too. What it says is not what `project.yaml` and `people.yaml` say. Upper and lower case count, white space does not.",
  why: "An inspector compares the names on every sheet. One that differs means either a slip or a file that was copied from another aircraft, and nobody can tell which.",
  mend: [
    "Correct the one that is wrong: the line under `for`, or `project.yaml`.",
    "If the file belongs to another aircraft, take it out, or make it this one's and change the line.",
    "A seal keeps the designation and serial that the project had when it was made: do not change them afterwards. A registration may come or change at any time; a seal does not carry it.",
  ],
  example: [
    {
      file: "lots.yaml",
      text: `for: { builder: Ada Sample, designation: SB-1, serial: "0001" }
lots:
  - { id: sealant-1, title: Tank sealant, material: sealant }
`,
    },
  ],
};
