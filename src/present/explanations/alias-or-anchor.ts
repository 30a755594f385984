import type { Explanation } from "./explanation.ts";

/** What `alias-or-anchor` means. */
export const aliasOrAnchor: Explanation = {
  code: "alias-or-anchor",
  severity: "error",
  title: "An anchor, alias or tag",
  meaning:
    "A value begins with `&`, `*` or `!`. In YAML these give a value a name, repeat it elsewhere, or change its type. None of that is used here.",
  why: "A record should say what it says where it stands. A few lines of aliases can also grow to fill the memory of the machine.",
  mend: [
    "Write the value out in each place.",
    "If the sign belongs to the text, put the text in quotation marks.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: "*Finished* the tail ribs"
---
Drove the tail ribs.
`,
    },
  ],
};
