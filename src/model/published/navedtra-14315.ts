// US Navy training manual NAVEDTRA 14315, application of sealants. Read in a page-by-page copy.

import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

/** Sets of NAVEDTRA 14315. */
export const navySealantRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "sealant-metal-temperature",
    title: "Metal temperature for applying sealant, at least 70 °F",
    authority: "published",
    citation: { document: "NAVEDTRA 14315", place: "application of sealants", status: "read" },
    parameters: [],
    advice: [
      "the same place says that warming the metal to 90 to 100 °F gives better adhesion",
      "the sealant maker's data sheet wins over this",
    ],
    row: () => ({ lower: fixedBound("70", "°F") }),
  }),
];
