import type { Explanation } from "./explanation.ts";

/** What `missing-file` means. */
export const missingFile: Explanation = {
  code: "missing-file",
  severity: "error",
  title: "A register is missing",
  meaning:
    "A journal has six registers beside its day entries: `project.yaml`, `people.yaml`, `assemblies.yaml`, `rules.yaml`, `instruments.yaml` and `lots.yaml`. One of them is not there.",
  why: "Entries may use only names that a register declares. Without the register nothing can tell a name from a slip of the finger.",
  mend: [
    "Copy the file from the starter journal in `content/`, and change what it says.",
    "If the register has nothing in it yet, write an empty list, as below.",
  ],
  example: [
    {
      file: "lots.yaml",
      text: `lots: []
`,
    },
  ],
};
