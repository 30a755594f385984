// MIL-R-47196A, rivets, buck type, preparation for and installation of. The document was not
// seen: the rows are as builders quote them, 1/8 by two of them and 3/32 by one.

import type { Citation } from "../citation.ts";
import { fixedBound, type RuleSet, rowOfSize, ruleSet } from "../rule-set.ts";

const citation: Citation = {
  document: "MIL-R-47196A",
  place: "table of driven heads, as quoted by others",
  status: "secondary",
};

interface Head {
  readonly diameter: string;
  readonly lowest: string;
  readonly highest: string;
}

const heads: Readonly<Record<string, Head>> = {
  "3/32": { diameter: "0.122", lowest: "0.038", highest: "0.050" },
  "1/8": { diameter: "0.163", lowest: "0.050", highest: "0.070" },
};

/** Sets of MIL-R-47196A. */
export const milRivetRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "driven-head-mil",
    title: "Driven head of a rivet, MIL sizes",
    authority: "published",
    citation,
    parameters: [
      { kind: "choice", name: "of", values: ["diameter", "height"], help: "what was measured" },
      { kind: "size", name: "D", help: "the rivet's shank diameter" },
    ],
    advice: ["`driven-head-1.5d` asks for a wider head"],
    row: ({ choice, size }) => {
      const found = rowOfSize(heads, "D", size("D"));
      if (!found.ok) return found;
      const { diameter, lowest, highest } = found.row;
      return choice("of") === "diameter"
        ? { lower: fixedBound(diameter, "in") }
        : { lower: fixedBound(lowest, "in"), upper: fixedBound(highest, "in") };
    },
  }),
];
