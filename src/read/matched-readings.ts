import type { Reading } from "../model/measurement.ts";
import type { FigureKind, ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";

/**
 * Whether the values that a figure is to be made of can be taken together; adds the fault if
 * not. A difference wants two values, or two readings with as many values each; a range and a
 * run-out want two values or more. All have to measure the same.
 * @param sources What the figure is made of; the reading itself when it has values of its own.
 */
export function areMatched(
  reading: Reading,
  rule: ToleranceRule,
  kind: FigureKind,
  sources: readonly Reading[],
  faults: Faults,
): boolean {
  const span = reading.of?.[0]?.span ?? reading.span;
  const add = (message: string, help: string) => {
    faults.add("unmatched-readings", span, {
      message,
      notes: [`rule \`${rule.id}\` judges a ${kind}`],
      help: [help],
    });
    return false;
  };
  const counts = sources.map(({ values }) => values.length);
  const total = counts.reduce((sum, each) => sum + each, 0);
  const values = sources.flatMap((each) => each.values);
  const [first] = values;
  const odd = values.find(
    ({ quantity }) => quantity.unit.dimension !== first?.quantity.unit.dimension,
  );
  if (first && odd) {
    faults.add("wrong-dimension", reading.of ? span : odd.span, {
      message: `\`${first.quantity.typed}\` is a ${first.quantity.unit.dimension} and \`${odd.quantity.typed}\` a ${odd.quantity.unit.dimension}: they have no ${kind}`,
      help: ["take together only what was measured in units of one kind"],
    });
    return false;
  }
  if (kind !== "difference") {
    if (total >= 2) return true;
    return add(
      `a ${kind} needs two values or more, and here ${total === 1 ? "is one" : "are none"}`,
      reading.of
        ? "name more readings in `of`, or one with several values"
        : "write all values of the series: `values: [0.750, 0.752] in`",
    );
  }
  if (!reading.of) {
    return (
      total === 2 ||
      add(
        `a difference is taken between two values, and here ${total === 1 ? "is one" : `are ${total}`}`,
        "write `values: [14.381, 14.372] in`, or name two readings as `of: [R-1, R-2]`",
      )
    );
  }
  if (counts.length !== 2) {
    return add(
      `a difference is taken between two readings, and \`of\` names ${counts.length === 1 ? "one" : counts.length}`,
      "name two readings, as in `of: [R-1, R-2]`",
    );
  }
  const [left, right] = sources;
  return (
    counts[0] === counts[1] ||
    add(
      `\`${left?.id}\` has ${valuesText(counts[0])} and \`${right?.id}\` has ${valuesText(counts[1])}: they cannot be taken in pairs`,
      "take a difference between readings with as many values each, in the same order",
    )
  );
}

function valuesText(count: number | undefined): string {
  return count === 1 ? "one value" : `${count ?? 0} values`;
}
