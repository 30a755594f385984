// US Army TM 1-1500-204-23-6, general aircraft maintenance: cements, sealants and lubricants.
// Read in a page-by-page copy.

import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

/** Sets of TM 1-1500-204-23-6. */
export const armySealantRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "cement-warming-army-tm",
    title: "Warming cement or sealant to hasten its cure, at most 110 °F",
    authority: "published",
    citation: { document: "Army TM 1-1500-204-23-6", place: "par. 6-1d", status: "read" },
    parameters: [],
    advice: [
      "the temperature is raised gradually (same paragraph)",
      "`sealant-warming-to-1-1-700` has sealant warmed to 130 °F after a flash-off",
      "the maker's data sheet wins over this",
    ],
    row: () => ({ upper: fixedBound("110", "°F") }),
  }),
];
