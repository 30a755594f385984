import type { Explanation } from "./explanation.ts";

/** What `name-not-portable` means. */
export const nameNotPortable: Explanation = {
  code: "name-not-portable",
  severity: "error",
  title: "A file name that not every system allows",
  meaning:
    "The name has a sign that Windows or an address cannot hold, ends in a dot or a space, or is one that Windows keeps for a device, such as `CON` or `NUL`.",
  why: "The journal should open on any machine, also in ten years, and photographs keep their names in addresses.",
  mend: ["Rename the file with letters, digits, dots and dashes."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
photos:
  - { file: 2026-03-14/rib4.jpg, caption: Row A driven }
---
Drove the tail ribs.
`,
    },
  ],
};
