import type { ExampleFile } from "../explanations/explanation.ts";

/** A sealed month, and an entry of the next one that corrects a day of it. */
export const sealedExample: readonly ExampleFile[] = [
  {
    file: "days/2026/2026-03-14.md",
    text: `---
date: 2026-03-14
sessions:
  - { assembly: stabilizer, who: [ada], hours: "1:15", kind: assemble }
---
Drove the tail ribs.
`,
  },
  {
    file: "seals/2026-03.seal",
    text: `# seal: 2026-03
# designation: SB-1
# serial: 0001
# program: Witness Mark 0.1.0
# previous: none
# in the month: 75 minutes of building, 0 of study and shop
# to date: 75 minutes of building, 0 of study and shop
# check: sha256sum -c seals/2026-03.seal
d9205159cdf2c4e11169120053d15b56f75d26d9ebdcf6de873a229223060c1e  days/2026/2026-03-14.md
`,
  },
  {
    file: "days/2026/2026-04-02.md",
    text: `---
date: 2026-04-02
amendments:
  - { day: 2026-03-14, field: "sessions[1].hours", was: "1:15", now: "1:45", why: forgot the clean-up }
---
Cleaned the bench, and remembered.
`,
  },
];
