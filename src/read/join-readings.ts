import type { Registers } from "../model/build.ts";
import type { Day } from "../model/day.ts";
import { governingRule } from "../model/governing-rule.ts";
import type { Reading } from "../model/measurement.ts";
import { newestOf, successorsOf } from "../model/successors.ts";
import { isComparable } from "./comparable-reading.ts";
import type { Faults } from "./faults.ts";
import { areMatched } from "./matched-readings.ts";

/**
 * Joins each reading with its rule and with the readings that it is made of.
 * @param days By date, oldest first; names in them have been looked up.
 * @returns A function that gives a day's readings without those at fault, whose faults it adds.
 */
export function joinReadings(
  days: readonly Day[],
  { rules }: Registers,
  faults: Faults,
): (day: Day) => Reading[] {
  const all = days.flatMap((day) => day.readings);
  const byId = new Map(all.map((reading) => [reading.id, reading]));
  const successors = successorsOf(all);
  const governs = governingRule(rules);
  const hidden = new Set(
    days.flatMap((day) => day.readings.filter((each) => day.private || each.private)),
  );

  const joined = (reading: Reading): Reading | undefined => {
    const governed = governs(reading.rule, reading.step);
    const kind = governed?.rule.judges;
    if (!governed || !kind) {
      if (reading.of) return addNoFigure(reading, governed?.rule.id, faults);
      return isComparable(reading, governed, reading.values, faults) ? reading : undefined;
    }
    const named = reading.of?.map((each) => byId.get(each.reading)) ?? [reading];
    const sources = named.filter((each) => each !== undefined);
    if (sources.length < named.length || hasFault(reading, sources, faults)) return undefined;
    const newest = sources.map((each) => newestOf(each, successors));
    if (!areMatched(reading, governed.rule, kind, newest, faults)) return undefined;
    const first = newest.flatMap(({ values }) => values).slice(0, 1);
    const judged = reading.of ? first.map((value) => ({ ...value, span: reading.span })) : first;
    if (!isComparable(reading, governed, judged, faults)) return undefined;
    // What is made of something private tells of it.
    const isHidden = [...sources, ...newest].some((each) => hidden.has(each));
    return isHidden ? { ...reading, private: true } : reading;
  };
  return (day) => day.readings.map(joined).filter((reading) => reading !== undefined);
}

function addNoFigure(reading: Reading, rule: string | undefined, faults: Faults): undefined {
  return faults.add("unmatched-readings", (reading.of?.[0] ?? reading).span, {
    message:
      rule === undefined
        ? "a reading made of others needs a rule that says what is made of them"
        : `rule \`${rule}\` judges each value by itself, so nothing is made of the readings in \`of\``,
    help: [
      "name a rule that has `judges: difference`, `judges: range` or `judges: run-out`",
      "or leave `of` out and write the values",
    ],
  });
}

// A figure of figures would hide what was measured, and one taken twice says nothing.
function hasFault(reading: Reading, sources: readonly Reading[], faults: Faults): boolean {
  for (const [index, source] of sources.entries()) {
    const twice = sources.indexOf(source) < index;
    if (!reading.of || (!source.of && !twice)) continue;
    faults.add("unmatched-readings", (reading.of[index] ?? reading).span, {
      message: twice
        ? `\`${source.id}\` is named twice`
        : `\`${source.id}\` has no values of its own: it is made of other readings`,
      help: [twice ? "name each reading once" : "name readings that have `value` or `values`"],
    });
    return true;
  }
  return false;
}
