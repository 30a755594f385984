// US Navy training manual NAVEDTRA 14018, chapter 13, rivets. Read in a page-by-page copy.

import type { Citation } from "../citation.ts";
import { fixedBound, multipleBound, type RuleSet, ruleSet } from "../rule-set.ts";

const rivets = (place: string): Citation => ({
  document: "NAVEDTRA 14018",
  place: `chapter 13, ${place}`,
  status: "read",
});

/** Sets of NAVEDTRA 14018. */
export const navyRivetRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "pitch-3d-navy",
    title: "Spacing of rivets in a row, at least 3 D",
    authority: "published",
    citation: rivets("rivet spacing"),
    parameters: [{ kind: "size", name: "D", help: "the rivet's shank diameter" }],
    advice: [
      "measure from centre to centre",
      "the same place calls a spacing below 4 D or above 8 D rare",
    ],
    row: () => ({ lower: multipleBound("3", "D") }),
  }),
  ruleSet({
    name: "rivet-smallest-navy",
    title: "Smallest rivet in structural parts, control parts and wing covering: 3/32 in",
    authority: "published",
    citation: rivets("rivet selection, rule 5"),
    parameters: [],
    row: () => ({ lower: fixedBound("3/32", "in") }),
  }),
  ruleSet({
    name: "rivet-diameter-navy",
    title: "Rivet diameter for a sheet: from 1 to 3 times the thickest one",
    authority: "published",
    citation: rivets("rivet selection, rules 6 and 7"),
    parameters: [{ kind: "size", name: "t", help: "the thickness of the thickest sheet" }],
    row: () => ({ lower: multipleBound("1", "t"), upper: multipleBound("3", "t") }),
  }),
];
