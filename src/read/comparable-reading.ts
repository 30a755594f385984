import type { Day } from "../model/day.ts";
import type { Governed } from "../model/governing-rule.ts";
import type { MeasuredValue, Reading } from "../model/measurement.ts";
import type { Quantity } from "../model/quantity.ts";
import { type Bound, expressionDimension, type ToleranceRule } from "../model/tolerance.ts";
import type { Dimension } from "../model/unit.ts";
import { dimensionWords } from "./dimension-words.ts";
import type { Faults } from "./faults.ts";

/**
 * Whether a reading and the rule that governs it measure the same thing; adds the fault if not.
 * @param values What is judged: the reading's own values, or those that its figure is made of.
 */
export function isComparable(
  reading: Day["readings"][number],
  governed: Governed | undefined,
  values: readonly MeasuredValue[],
  faults: Faults,
): boolean {
  const rule = governed?.rule;
  const bound = rule?.lower ?? rule?.upper;
  if (!rule || !bound) return true;
  const sizes = sizesFor(rule, reading);
  const wanted = expressionDimension(bound.expression, sizes);
  if (wanted.kind === "unknown size")
    return addUnknownSize(wanted.name, rule, bound, reading, faults);
  if (wanted.kind !== "dimension") {
    // Otherwise the rule has a fault of its own.
    const ofTheSizes = expressionDimension(bound.expression, rule.sizes).kind === "unknown size";
    const words = ofTheSizes ? dimensionWords(wanted, bound.typed) : undefined;
    if (words) {
      faults.add("wrong-dimension", reading.span, {
        message: `with the sizes given here, ${words.message}`,
        notes: [`the limit is that of rule \`${rule.id}\``],
        help: ["correct `sizes` of this reading"],
      });
    }
    return false;
  }
  const others = values.filter(
    ({ quantity }) => judgedDimension(quantity, rule) !== wanted.dimension,
  );
  for (const { quantity, span } of others) {
    const judged = judgedDimension(quantity, rule);
    faults.add("wrong-dimension", span, {
      message: rule.judges
        ? `a ${rule.judges} of values such as \`${quantity.typed}\` is a ${judged}, and rule \`${rule.id}\` limits a ${wanted.dimension}`
        : `\`${quantity.typed}\` is a ${judged}, and rule \`${rule.id}\` limits a ${wanted.dimension}`,
      notes: [`the limit is \`${bound.typed}\``],
      help: ["correct the unit, or name the rule that was meant"],
    });
  }
  return others.length === 0;
}

function sizesFor(rule: ToleranceRule, { sizes, temperature }: Reading): Map<string, Quantity> {
  const all = new Map([...rule.sizes, ...sizes]);
  if (temperature) all.set("temperature", temperature.quantity);
  return all;
}

// What is held against the limits: temperatures lie a temperature difference apart.
function judgedDimension({ unit }: Quantity, { judges }: ToleranceRule): Dimension {
  return judges !== undefined && unit.dimension === "temperature"
    ? "temperature difference"
    : unit.dimension;
}

function addUnknownSize(
  name: string,
  rule: ToleranceRule,
  bound: Bound,
  { span }: Reading,
  faults: Faults,
): false {
  const entered = rule.table?.by === name;
  faults.add("unknown-name", span, {
    message: `rule \`${rule.id}\` is ${entered ? "a table by" : "in terms of"} \`${name}\`, and nothing says what that is`,
    notes: [`the limit is \`${bound.typed}\``],
    help: [
      entered && name === "temperature"
        ? "add `temperature: …` to this reading, or `conditions: { temperature: … }` to the day"
        : `add \`sizes: { ${name}: … }\` to this reading or to the rule`,
    ],
  });
  return false;
}
