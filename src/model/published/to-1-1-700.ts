// US Air Force TO 1-1-700, chapter 12, sealants. Read in a page-by-page copy.

import { fixedBound, type RuleSet, ruleSet } from "../rule-set.ts";

const order = (place: string) => ({ document: "USAF TO 1-1-700", place, status: "read" }) as const;

/** Sets of TO 1-1-700. */
export const airForceSealantRuleSets: readonly RuleSet[] = [
  ruleSet({
    name: "sealant-cold-metal-to-1-1-700",
    title: "Metal temperature for applying sealant, at least 16 °C",
    authority: "published",
    citation: order("par. 12.5.1.2"),
    parameters: [],
    advice: [
      "the order says that sealant wets poorly and cures slowly at 60 °F and below; 16 °C, which it prints beside that, is 60.8 °F",
      "the copy that was read misprints the place as 600 °F (160 °C)",
      "`sealant-metal-temperature` draws the line at 70 °F",
      "the sealant maker's data sheet wins over this",
    ],
    row: () => ({ lower: fixedBound("16", "°C") }),
  }),
  ruleSet({
    name: "sealant-warming-to-1-1-700",
    title: "Warming fresh sealant after 30 min of flash-off: 130 ± 10 °F",
    authority: "published",
    citation: order("par. 12.5.1.2"),
    parameters: [],
    advice: [
      "`cement-warming-army-tm` allows no more than 110 °F",
      "the sealant maker's data sheet wins over this",
    ],
    row: () => ({ lower: fixedBound("120", "°F"), upper: fixedBound("140", "°F") }),
  }),
  ruleSet({
    name: "sealant-hot-metal",
    title: "Metal temperature for applying sealant, at most 90 °F",
    authority: "published",
    citation: order("par. 12.5.1.3"),
    parameters: [],
    advice: [
      "on metal of 100 °F or more solvent bubbles; the order has it cooled to 90 °F or lower and kept there for 30 min",
      "the sealant maker's data sheet wins over this",
    ],
    row: () => ({ upper: fixedBound("90", "°F") }),
  }),
  ruleSet({
    name: "sealant-storage",
    title: "Storage of sealant in its unopened container, at most 80 °F",
    authority: "published",
    citation: order("par. 12.8"),
    parameters: [],
    advice: [
      "an expired lot is not used before an update test; passing it extends the life by half of the original shelf life (same paragraph)",
    ],
    row: () => ({ upper: fixedBound("80", "°F") }),
  }),
];
