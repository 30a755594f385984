// Sheet-metal repair page of a service manual for a fighter of the 1940s, read in a
// transcription. It prints values to aim at, without limits.

import type { Citation } from "../citation.ts";
import { fixedBound, type RuleSet, rowOfSize, ruleSet } from "../rule-set.ts";
import { holeOf } from "./rivet-hole.ts";

const citation = (place: string): Citation => ({
  document: "service manual of a 1940s fighter",
  place: `sheet-metal repair, ${place}`,
  status: "read",
});

const diameter = { kind: "size", name: "D", help: "the rivet's shank diameter" } as const;

const heads: Readonly<Record<string, { readonly diameter: string; readonly height: string }>> = {
  "1/8": { diameter: "0.188", height: "0.063" },
  "5/32": { diameter: "0.234", height: "0.078" },
};

const drills: Readonly<Record<string, string>> = {
  "1/16": "52",
  "3/32": "41",
  "1/8": "30",
  "5/32": "22",
  "3/16": "12",
};

/** Sets of the service manual. */
export const serviceManualRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "driven-head-1940s",
    title: "Driven head of an AN430 rivet, 1940s nominal sizes",
    authority: "published",
    citation: citation("AN430 rivets"),
    parameters: [
      { kind: "choice", name: "of", values: ["diameter", "height"], help: "what was measured" },
      diameter,
    ],
    advice: ["nominal sizes: the source prints no limits, so nothing is judged against them"],
    row: ({ choice, size }) => {
      const found = rowOfSize(heads, "D", size("D"));
      if (!found.ok) return found;
      const { diameter: across, height } = found.row;
      return { nominal: fixedBound(choice("of") === "diameter" ? across : height, "in") };
    },
  }),
  ruleSet({
    name: "rivet-hole-1940s",
    title: "Hole for a solid rivet, 1940s drills",
    authority: "published",
    citation: citation("drill sizes for rivets"),
    parameters: [diameter],
    advice: [
      "a drill size: the source prints no limits, so nothing is judged against it",
      "modern practice drills one size larger for most rivets: `rivet-hole-modern`",
    ],
    row: ({ size }) => {
      const found = rowOfSize(drills, "D", size("D"));
      return found.ok ? holeOf(found.row) : found;
    },
  }),
];
