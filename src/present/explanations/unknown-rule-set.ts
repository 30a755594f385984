import type { Explanation } from "./explanation.ts";

/** What `unknown-rule-set` means. */
export const unknownRuleSet: Explanation = {
  code: "unknown-rule-set",
  severity: "error",
  title: "A rule set that is not shipped",
  meaning:
    "A rule takes its limits from a rule set that this program does not have, or with parameters that the set does not know.",
  why: "Published limits are chosen by name, so that each verdict can say which publication it comes from.",
  mend: [
    "Choose one of the rule sets that `witness explain rule-sets` lists.",
    "Write the limits out, with `authority` and `source`.",
  ],
  example: [
    {
      file: "rules.yaml",
      text: `rules:
  - id: torque-10-32
    title: AN3 bolt with tension nut
    set: ac43-13-1b-table-7-1
    with: { thread: 10-32, nut: tension }
`,
    },
  ],
  caution:
    "A published rule is general information. A limit on the drawing or in the manual wins over it.",
};
