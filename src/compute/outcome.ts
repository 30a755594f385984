import type { JudgedReading, JudgedValue } from "./analysis.ts";

/** How a reading counts for its rule; every reading counts as one of these. */
export const outcomes = ["within", "undecided", "out", "accounted for", "replaced"] as const;
export type Outcome = (typeof outcomes)[number];

/**
 * How a reading counts for its rule. `undecided`: there is no verdict, or the values lie within
 * but a guarded rule does not find that proven. `accounted for`: a decided deviation is named,
 * whether the values are out or not proven.
 */
export function outcomeOf(judged: JudgedReading): Outcome {
  const { standing, deviation } = judged;
  switch (standing) {
    case "superseded":
      return "replaced";
    case "out":
    case "accounted for":
      return standing;
    case "no rule":
      return "undecided";
    case "within":
      if (unprovenValues(judged).length === 0) return "within";
      return deviation?.disposition ? "accounted for" : "undecided";
  }
}

/**
 * The values whose conformity a guarded rule does not find proven (JCGM 106:2012); none under
 * a rule that decides simply.
 */
export function unprovenValues({ rule, values }: JudgedReading): readonly JudgedValue[] {
  if (!rule || rule.decision === "simple") return [];
  return values.filter(({ assurance }) => assurance?.kind !== "proven");
}
