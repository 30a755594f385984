import type { Explanation } from "./explanation.ts";

/** What `not-a-zone` means. */
export const notAZone: Explanation = {
  code: "not-a-zone",
  severity: "error",
  title: "A time zone that is not known",
  meaning:
    "The zone of the shop is written as a region and a city, as in `America/Denver` or `Europe/Berlin`.",
  why: "Without it nobody knows when the clocks change, and sessions over midnight or on that night would be an hour off.",
  mend: ["Write the name of the zone in `project.yaml`."],
  example: [
    {
      file: "project.yaml",
      text: `title: A small two-seat aeroplane
designation: SB-1
serial: "0001"
basis: amateur-built
zone: America/Denver
begun: 2025-09-06
summary: An example.
drawings:
  - { id: HS-03, title: Stabilizer front spar, revision: C }
`,
    },
  ],
};
