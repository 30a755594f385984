import type { RuleSet } from "../rule-set.ts";
import { ac4313RuleSets } from "./ac-43-13-1b.ts";
import { ac4313SizeRuleSets } from "./ac-43-13-1b-sizes.ts";
import { airlinerSealantRuleSets } from "./airliner-manual-sealants.ts";
import { armySealantRuleSets } from "./army-tm-1-1500-204-23.ts";
import { countersinkRuleSets } from "./army-tm-9-2320-363-34-2.ts";
import { shelterManualRuleSets } from "./army-tm-10-5410-229-13-p.ts";
import { commonPracticeRuleSets } from "./common-practice.ts";
import { counselorRuleSets } from "./counselor-list.ts";
import { milRivetRuleSets } from "./mil-r-47196a.ts";
import { navyRivetRuleSets } from "./navedtra-14018.ts";
import { navySealantRuleSets } from "./navedtra-14315.ts";
import { serviceManualRuleSets } from "./service-manual-1940s.ts";
import { airForceSealantRuleSets } from "./to-1-1-700.ts";

/**
 * Every rule set, by name, in alphabetical order. Where sources disagree they are different
 * sets: the builder picks the one the work is done to.
 */
export const ruleSets: ReadonlyMap<string, RuleSet> = new Map(
  [
    ...ac4313RuleSets,
    ...ac4313SizeRuleSets,
    ...airlinerSealantRuleSets,
    ...armySealantRuleSets,
    ...counselorRuleSets,
    ...countersinkRuleSets,
    ...shelterManualRuleSets,
    ...commonPracticeRuleSets,
    ...milRivetRuleSets,
    ...navyRivetRuleSets,
    ...navySealantRuleSets,
    ...serviceManualRuleSets,
    ...airForceSealantRuleSets,
  ]
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .map((set) => [set.name, set]),
);
