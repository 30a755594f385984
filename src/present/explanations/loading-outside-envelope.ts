import type { Explanation } from "./explanation.ts";

/** What `loading-outside-envelope` means. */
export const loadingOutsideEnvelope: Explanation = {
  code: "loading-outside-envelope",
  severity: "finding",
  title: "A loading case outside the limits",
  meaning:
    "A case in `balance.yaml` is heavier than the greatest weight, or its centre of gravity lies ahead of the forward limit or behind the aft one at that weight, or its weight is one that the limits say nothing about. The sum is exact: every weight times its arm, starting from the newest weighing and the changes since, or from the projection while there is no weighing. A case on a limit is inside.",
  why: "An aircraft outside its limits may not leave the ground, may not flare, or may not come out of a stall. It is cheapest to find while a battery can still be moved.",
  mend: [
    "Look for a slip first: an arm ahead of the datum without its sign, a tare left out, a liquid counted twice because the empty weight has it already.",
    "If it must not be loaded so, change the case to what will be placarded, such as less baggage.",
    "Move equipment or add ballast, and enter that under `changes`.",
    "If the case only shows that the limit is reached, keep it: the finding stays as what was found.",
  ],
  example: [
    {
      file: "balance.yaml",
      text: `datum: leading edge of the wing at the root
empty-weight: { oil: in, unusable-fuel: in }
limits:
  source: { document: Designer's weight sheet, edition: rev B }
  max-weight: 1450 lb
  forward: [{ weight: 900 lb, arm: 10.0 in }, { weight: 1450 lb, arm: 12.5 in }]
  aft: 18.0 in
weighings:
  - id: W-1
    on: 2026-03-14
    title: Three scales, tail level
    points:
      - { at: left main wheel, reads: 412 lb, tare: 4 lb, arm: 30.0 in }
      - { at: right main wheel, reads: 409 lb, tare: 4 lb, arm: 30.0 in }
      - { at: nose wheel, reads: 162 lb, tare: 2 lb, arm: -38.5 in }
    out:
      - { what: fuel in the tanks, volume: 2.5 gal, density: 6.0 lb/gal, arm: 9.5 in }
cases:
  - id: L-1
    title: Pilot alone, full tanks
    items:
      - { what: pilot, weight: 170 lb, arm: 16.0 in }
      - { what: fuel, volume: 28 gal, density: 6.0 lb/gal, arm: 9.5 in }
`,
    },
  ],
  caution:
    "This is arithmetic on what was typed. The aircraft's own weight and balance data, its designer and a licensed person govern; a case that is inside here permits nothing.",
};
