import type { Explanation } from "./explanation.ts";

/** What `empty-weight-not-above-zero` means. */
export const emptyWeightNotAboveZero: Explanation = {
  code: "empty-weight-not-above-zero",
  severity: "error",
  title: "An empty weight of nothing",
  meaning:
    "A weighing in `balance.yaml` comes to nothing or less once tare and what does not belong to the empty weight are off, or a change of equipment takes out as much as the aircraft weighs, or more.",
  why: "No aircraft weighs nothing. Every centre of gravity after it would be a number without a meaning, printed as neatly as the others.",
  mend: [
    "Compare `reads` and `tare` with the sheet of the weighing: one of them may stand in the other's place.",
    "Look at `out`: only what was on the scales, or counted in before, can be taken out.",
  ],
  example: [
    {
      file: "balance.yaml",
      text: `datum: leading edge of the wing at the root
empty-weight: { oil: in, unusable-fuel: in }
weighings:
  - id: W-1
    on: 2026-03-14
    title: Three scales, tail level
    points:
      - { at: left main wheel, reads: 412 lb, tare: 4 lb, arm: 30.0 in }
      - { at: right main wheel, reads: 409 lb, tare: 4 lb, arm: 30.0 in }
      - { at: nose wheel, reads: 162 lb, tare: 2 lb, arm: -38.5 in }
changes:
  - id: C-1
    on: 2026-03-14
    title: Battery to the tail
    weighed-with: false
    out: [{ what: battery, weight: 12 lb, arm: -20.0 in }]
    in: [{ what: battery, weight: 12 lb, arm: 130.0 in }]
`,
    },
  ],
  caution:
    "This is arithmetic on what was typed. The aircraft's own weight and balance data, its designer and a licensed person govern.",
};
