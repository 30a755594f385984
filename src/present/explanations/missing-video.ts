import type { Explanation } from "./explanation.ts";

/** What `missing-video` means. */
export const missingVideo: Explanation = {
  code: "missing-video",
  severity: "error",
  title: "A recording that is not there",
  meaning:
    "An entry asks for a recording to be published with `host: true`, and no such file stands below `videos`. Capital letters count.",
  why: "The page would link to nothing.",
  mend: [
    "Copy the recording into the `videos` folder.",
    "Correct its name in the entry.",
    "Leave `host` out: then the page tells of the recording, and the file may lie where you keep it.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
videos:
  - { title: Driving row A, file: row-a.mp4, times: [{ at: "1:23", what: the first rivet }] }
---
Drove the tail ribs.
`,
    },
  ],
};
