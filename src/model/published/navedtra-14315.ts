// US Navy training manual NAVEDTRA 14315, application of sealants. Read in a page-by-page copy.

import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

/** Application time of a sealant in hours, by the dash number of its class. */
export const applicationHours: Readonly<Record<string, string>> = {
  "1/2": "0.5",
  "1": "1",
  "2": "2",
  "4": "4",
};

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
  ruleSet({
    name: "sealant-application-time",
    title: "Time from mixing a sealant to the end of applying it: its dash number in hours",
    authority: "published",
    citation: { document: "NAVEDTRA 14315", place: "application of sealants", status: "read" },
    parameters: [
      {
        kind: "choice",
        name: "dash",
        values: Object.keys(applicationHours),
        help: "the number behind the class on the can: 2 of class B-2",
      },
    ],
    advice: [
      "at 77 °F and 50 % relative humidity; no source says how it changes with temperature",
      "on faying surfaces every rivet is driven within it (same place)",
      "sealant too stiff to apply is thrown away at once, whatever the clock says (same manual)",
    ],
    row: ({ choice }) => ({ upper: fixedBound(applicationHours[choice("dash")] ?? "", "h") }),
  }),
];
