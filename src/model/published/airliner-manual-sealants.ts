// Maintenance manual of an airliner, 28-11-0, page 812, fuel-tank sealing. Read in a copy.

import type { Citation } from "../citation.ts";
import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

const citation: Citation = {
  document: "an airliner's maintenance manual",
  place: "28-11-0, page 812",
  status: "read",
};

/** Sets of the airliner's manual on sealants. */
export const airlinerSealantRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "sealant-air-airliner",
    title: "Air for curing sealant: 77 °F, 50 ± 5 % relative humidity",
    authority: "published",
    citation,
    parameters: [
      { kind: "choice", name: "of", values: ["temperature", "humidity"], help: "what is measured" },
    ],
    advice: [
      "called ideal by the manual; it sets no limits for the temperature",
      "below 40 % the cure is slowed down (same place)",
      "the sealant maker's data sheet wins over this",
    ],
    row: ({ choice }) =>
      choice("of") === "temperature"
        ? { nominal: fixedBound("77", "°F") }
        : { lower: fixedBound("45", "%"), upper: fixedBound("55", "%") },
  }),
  ruleSet({
    name: "sealant-mixed-frozen-airliner",
    title: "Storage of mixed and frozen sealant: at most 21 or 7 days",
    authority: "published",
    citation,
    parameters: [
      {
        kind: "choice",
        name: "storage",
        values: ["-40 °F", "-20 °F"],
        help: "how cold it is kept",
      },
    ],
    advice: [
      "never frozen again after thawing (same place)",
      "the copy prints the colder storage as -41 °F (-40 °C)",
    ],
    row: ({ choice }) => ({ upper: fixedBound(choice("storage") === "-40 °F" ? "21" : "7", "d") }),
  }),
];
