import type { Explanation } from "./explanation.ts";

/** What `expired-lot` means. */
export const expiredLot: Explanation = {
  code: "expired-lot",
  severity: "finding",
  title: "A lot used after its last day",
  meaning:
    "A session or a cure names a lot of sealant, primer, adhesive or other material after its expiry. The day of expiry itself is still good. An extension counts from the day on which it was given, so that one given later does not cover this use.",
  why: "Old sealant may look right, cure soft and leak years later.",
  mend: [
    "If another lot was used, name that one.",
    "If the maker allows a longer life, add it under `extensions` with the day on which it was given.",
    "Otherwise record what becomes of the joint as a deviation or a squawk.",
  ],
  example: [
    {
      file: "days/2026/2026-03-12.md",
      text: `---
date: 2026-03-12
sessions:
  - { assembly: stabilizer, step: HS-08, who: [ada], hours: "1:15", kind: assemble, lots: [sealant-b2-118] }
---
Drove the tail ribs.
`,
    },
  ],
  caution:
    "Expired material can fail without a sign, and leaking fuel burns. The maker's data sheet governs.",
};
