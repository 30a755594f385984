import type { Explanation } from "./explanation.ts";

/** What `rule-does-not-win` means. */
export const ruleDoesNotWin: Explanation = {
  code: "rule-does-not-win",
  severity: "error",
  title: "A rule that does not win over the other",
  meaning:
    "With `over`, a rule says that it is used in place of a more general one, on the steps it names or on all. Only a limit of the drawing or the manual may do so: over one with less authority, or on named steps over a general one with as much. On one step one rule wins.",
  why: "Two limits that both claim a reading leave nobody sure which one it was judged by.",
  mend: [
    "Leave `over` out, and name the rule that is meant in each reading.",
    "Where two rules win on the same step, leave the step out of one.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: edge-1-8
    title: Edge distance, 1/8 rivet
    set: edge-distance-2d
    with: { D: 1/8 in }
  - id: cap-edge
    title: Edge distance in the spar caps
    authority: drawing
    source: { document: HS-03, edition: rev C, place: note 6 }
    at-least: 0.300 in
    over: edge-1-8
    steps: [HS-08]
`,
    },
  ],
  caution:
    "A limit of the drawing or the manual wins over a general one because they know the part. The program only does as `over` says.",
};
