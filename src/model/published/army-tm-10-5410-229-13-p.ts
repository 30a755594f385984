// US Army TM 10-5410-229-13&P, a repair manual for metal shelters. Read on page 112 of a
// page-by-page copy: rivet layout for new sections.

import type { Citation } from "../citation.ts";
import { multipleBound, type RuleSet, ruleSet } from "../rule-set.ts";

const citation: Citation = {
  document: "Army TM 10-5410-229-13&P",
  place: "par. 5-6(3)(b)",
  status: "read",
};

const diameter = { kind: "size", name: "D", help: "the rivet's shank diameter" } as const;
const scope = "the manual is one for metal shelters, not for aircraft";

/** Sets of Army TM 10-5410-229-13&P. */
export const shelterManualRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "edge-distance-2d",
    title: "Edge distance of rivets, at least 2 D",
    authority: "published",
    citation,
    parameters: [diameter],
    advice: ["measure to the centre of the rivet", scope],
    row: () => ({ lower: multipleBound("2", "D") }),
  }),
  ruleSet({
    name: "pitch-army-tm",
    title: "Spacing of rivets: 3 D in a row, 2.5 D between rows",
    authority: "published",
    citation,
    parameters: [
      {
        kind: "choice",
        name: "between",
        values: ["rivets", "rows"],
        help: "whether rivets of one row or two rows are meant",
      },
      diameter,
    ],
    advice: ["measure from centre to centre", scope],
    row: ({ choice }) => ({
      lower: multipleBound(choice("between") === "rivets" ? "3" : "2.5", "D"),
    }),
  }),
];
