import type { Explanation } from "./explanation.ts";

/** What `unpublishable-video` means. */
export const unpublishableVideo: Explanation = {
  code: "unpublishable-video",
  severity: "finding",
  title: "A recording that stays at home",
  meaning:
    "A recording was to be published with `host: true`, and the file tells where it was taken, or cannot be looked through to its end, or is too large. The message says which. The page tells of the recording without the file.",
  why: "A recording is published as it is, and cameras write the place into it: that is where the shop and the tools are. What a camera writes into the pictures themselves cannot be seen here.",
  mend: [
    "Send it through a video program that leaves out all metadata, and name the new file.",
    "Switch off the place in the camera's settings for recordings to come.",
    "Leave `host` out, or put the recording on a site for recordings and name its `link`.",
  ],
  example: [
    {
      file: "days/2026/2026-03-14.md",
      text: `---
date: 2026-03-14
videos:
  - { title: Driving row A, link: https://videos.example/row-a }
---
Drove the tail ribs.
`,
    },
  ],
};
