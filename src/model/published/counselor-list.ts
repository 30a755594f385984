// A list of what a builder has ready before a technical counselor comes, and of the walk round
// the aircraft with them. Read in a copy; the rest of the document was not visible.

import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

/** Sets of the counselor's list. */
export const counselorRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "flap-clearance-counselor",
    title: "Clearance between flap and fuselage, at least 1/8 in",
    authority: "common practice",
    citation: {
      document: "list for a technical counselor's visit",
      place: "flap and wing root",
      status: "read",
    },
    parameters: [],
    row: () => ({ lower: fixedBound("1/8", "in") }),
  }),
];
