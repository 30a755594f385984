import type { Explanation } from "./explanation.ts";

/** What `not-a-link` means. */
export const notALink: Explanation = {
  code: "not-a-link",
  severity: "error",
  title: "Something that is not a link",
  meaning:
    "A link has to be a whole address on the web, beginning with `https://` or `http://`, without spaces and without a name to sign in with.",
  why: "Readers follow it from the page of the day, from feeds and from paper; half an address leads nowhere.",
  mend: ["Copy the address as the browser shows it."],
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
