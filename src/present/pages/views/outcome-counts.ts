import type { JudgedReading } from "../../../compute/analysis.ts";
import { type Outcome, outcomeOf, outcomes } from "../../../compute/outcome.ts";
import type { Mention } from "../page.ts";
import type { ReadingView } from "./reading-view.ts";

/** The outcomes as headings of a table; together they are all readings of a rule. */
export const outcomeHeads: Readonly<Record<Outcome, string>> = {
  within: "Within",
  undecided: "Undecided",
  out: "Out",
  "accounted for": "Accounted for",
  replaced: "Replaced",
};

/** What the headings mean, in one sentence. */
export const outcomeLegend =
  "Within: inside the limits, and proven where the rule asks for proof. Undecided: no verdict, or inside the limits but not proven. Out: outside, with nothing decided about it. Accounted for: a deviation has been decided. Replaced: measured again.";

/** How many readings came out one way. */
export interface OutcomeCount {
  readonly outcome: Outcome;
  /** The count; it leads to the readings themselves unless there are none. */
  readonly count: Mention;
  readonly wants: boolean;
}

/** The place on a rule's page where the readings of one outcome stand. */
export function outcomeAnchor(outcome: Outcome): string {
  return `readings-${outcome.replaceAll(" ", "-")}`;
}

/** How many readings came out each way, in the order of `outcomes`. */
export function outcomeCounts(
  readings: readonly JudgedReading[],
  hrefOf: (anchor: string) => string,
): readonly OutcomeCount[] {
  const found = readings.map(outcomeOf);
  return outcomes.map((outcome) => {
    const count = found.filter((each) => each === outcome).length;
    const text = String(count);
    return {
      outcome,
      count: count === 0 ? { text } : { text, href: hrefOf(outcomeAnchor(outcome)) },
      wants: count > 0 && (outcome === "out" || outcome === "undecided"),
    };
  });
}

/** The readings of one outcome. */
export interface OutcomeGroup {
  readonly anchor: string;
  /** `Out, 2`. */
  readonly title: string;
  readonly readings: readonly ReadingView[];
}

/** Readings under their outcomes, in the order of `outcomes`; none is empty. */
export function outcomeGroups(
  readings: readonly JudgedReading[],
  viewOf: (judged: JudgedReading) => ReadingView,
): readonly OutcomeGroup[] {
  return outcomes.flatMap((outcome) => {
    const those = readings.filter((each) => outcomeOf(each) === outcome);
    if (those.length === 0) return [];
    return [
      {
        anchor: outcomeAnchor(outcome),
        title: `${outcomeHeads[outcome]}, ${those.length}`,
        readings: those.map(viewOf),
      },
    ];
  });
}
