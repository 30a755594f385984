// What shops do today without a publication that could be named and read.

import { type RuleSet, rowOfSize, ruleSet } from "../rule-set.ts";
import { holeOf } from "./rivet-hole.ts";

const drills: Readonly<Record<string, string>> = {
  "3/32": "40",
  "1/8": "30",
  "5/32": "21",
  "3/16": "11",
  "1/4": "F",
};

/** Sets that rest on common practice alone. */
export const commonPracticeRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "rivet-hole-modern",
    title: "Hole for a solid rivet, drills in common use",
    authority: "common practice",
    citation: { document: "common practice", place: "drills for solid rivets", status: "memory" },
    parameters: [{ kind: "size", name: "D", help: "the rivet's shank diameter" }],
    advice: ["a drill size without limits, so nothing is judged against it"],
    row: ({ size }) => {
      const found = rowOfSize(drills, "D", size("D"));
      return found.ok ? holeOf(found.row) : found;
    },
  }),
];
