import type { Explanation } from "./explanation.ts";

/** What `not-an-alteration` means. */
export const notAnAlteration: Explanation = {
  code: "not-an-alteration",
  severity: "error",
  title: "Papers of an alteration, for an aircraft that is built",
  meaning:
    "The journal has `alteration.yaml`, and `project.yaml` does not say `basis: alteration`.",
  why: "The file is for the papers of work on a finished type-certificated aircraft, which a licensed person signs. An aircraft that an amateur builds is inspected another way, and such papers would mislead whoever reads them.",
  mend: [
    "Take `alteration.yaml` out of the journal.",
    "If a type-certificated aircraft is altered, write `basis: alteration` in `project.yaml`.",
  ],
  example: [
    {
      file: "project.yaml",
      text: `title: A second radio
designation: AX-2
serial: "1107"
basis: alteration
zone: America/Denver
begun: 2026-03-01
summary: A second radio in a finished aircraft.
drawings:
  - { id: HS-03, title: Front spar, revision: C }
`,
    },
    {
      file: "alteration.yaml",
      text: `title: Second radio
where: instrument panel, right-hand side
data: [{ document: RP-7, revision: rev B, title: Radio panel }]
tests: [{ id: T-1, what: transmission on three channels }]
`,
    },
  ],
  caution: "What may be altered, and on which papers, is decided by the authority, not here.",
};
