// US Army TM 9-2320-363-34-2, tables 3 and 4, machine countersinking for 100-degree blind
// rivets. Read in a page-by-page copy.

import type { Citation } from "../citation.ts";
import { fixedBound, type RuleSet, rowOfSize, ruleSet } from "../rule-set.ts";

const citation: Citation = {
  document: "Army TM 9-2320-363-34-2",
  place: "tables 3 and 4",
  status: "read",
};

const diameter = { kind: "size", name: "D", help: "the rivet's shank diameter" } as const;
const scope = "printed for 100-degree blind rivets, in a manual for vehicles";

const countersinks: Readonly<Record<string, readonly [smallest: string, largest: string]>> = {
  "1/8": ["0.222", "0.228"],
  "5/32": ["0.283", "0.289"],
  "3/16": ["0.350", "0.356"],
};

const thinnestSheet: Readonly<Record<string, string>> = {
  "3/32": "0.040",
  "1/8": "0.050",
  "5/32": "0.064",
  "3/16": "0.072",
  "1/4": "0.072",
};

/** Sets of Army TM 9-2320-363-34-2. */
export const countersinkRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "countersink-army-tm",
    title: "Diameter of a machine countersink, 100-degree blind rivets",
    authority: "published",
    citation,
    parameters: [diameter],
    advice: [scope],
    row: ({ size }) => {
      const found = rowOfSize(countersinks, "D", size("D"));
      if (!found.ok) return found;
      const [smallest, largest] = found.row;
      return { lower: fixedBound(smallest, "in"), upper: fixedBound(largest, "in") };
    },
  }),
  ruleSet({
    name: "minimum-sheet-army-tm",
    title: "Thinnest sheet for a machine countersink, 100-degree blind rivets",
    authority: "published",
    citation,
    parameters: [diameter],
    advice: [scope],
    row: ({ size }) => {
      const found = rowOfSize(thinnestSheet, "D", size("D"));
      return found.ok ? { lower: fixedBound(found.row, "in") } : found;
    },
  }),
];
