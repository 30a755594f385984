import { grouped } from "../../compute/grouped.ts";
import { authorityText } from "../../compute/limits-text.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { ToleranceRule } from "../../model/tolerance.ts";
import type { RecordIndex } from "../pages/record-index.ts";
import { boundsText } from "../pages/views/bounds-text.ts";

/** A rule that readings were judged by. */
export interface RuleUsed {
  readonly rule: ToleranceRule;
  /** As typed, no size filled in. */
  readonly limits: string;
  /** Sizes that the rule declares: `D = 3/32 in`. */
  readonly sizes: readonly string[];
  /** Who says so, where, and how far the copy was checked. */
  readonly source: string;
  readonly readings: number;
  /** Of them: outside, not replaced by a later one and not accounted for by a deviation. */
  readonly out: number;
  /** Days of the readings, oldest first. */
  readonly dates: readonly CalendarDate[];
}

/** The rules that at least one reading was judged by, in the order declared. */
export function rulesUsed({ analysis }: RecordIndex): RuleUsed[] {
  const byRule = grouped(analysis.readings, ({ rule }) => rule?.id);
  return [...analysis.build.rules.values()].flatMap((rule) => {
    const readings = byRule.get(rule.id);
    if (!readings) return [];
    return [
      {
        rule,
        limits: boundsText(rule),
        sizes: [...rule.sizes].map(([name, { typed }]) => `${name} = ${typed}`),
        source: authorityText(rule),
        readings: readings.length,
        out: readings.filter(({ standing }) => standing === "out").length,
        dates: [...new Set(readings.map(({ reading }) => reading.date))],
      },
    ];
  });
}
