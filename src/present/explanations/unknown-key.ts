import type { Explanation } from "./explanation.ts";

/** What `unknown-key` means. */
export const unknownKey: Explanation = {
  code: "unknown-key",
  severity: "error",
  title: "A key that is not known",
  meaning:
    "A key is not one of those that belong here. The message lists the known ones and offers the nearest.",
  why: "Nothing is skipped in silence: a reading under a misspelt key would be a reading lost.",
  mend: ["Correct the spelling.", "If there is no place for it, say it in the prose."],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
title: Tail ribs riveted
conditions: { temperature: 61 °F, humidity: 48 % }
---
Drove the tail ribs.
`,
    },
  ],
};
