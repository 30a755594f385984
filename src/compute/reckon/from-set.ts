import type { Citation } from "../../model/citation.ts";
import { citationText } from "../../model/citation.ts";
import { ruleSets } from "../../model/published/rule-sets.ts";
import type { Quantity } from "../../model/quantity.ts";
import type { RuleSetArgument } from "../../model/rule-set.ts";
import type { Bound } from "../../model/tolerance.ts";
import { boundValue } from "../limits.ts";

/** What a shipped rule set says about one case, every size filled in. */
export interface SetLimits {
  readonly set: string;
  readonly title: string;
  readonly lower?: Quantity;
  readonly upper?: Quantity;
  /** A value to aim at, without limits. */
  readonly nominal?: Quantity;
  readonly citation: Citation;
  readonly notes: readonly string[];
  readonly advice: readonly string[];
}

/**
 * The limits of a shipped rule set.
 * @returns `undefined` when the set has no row for what was asked.
 * @throws RangeError for a set that is not shipped, and for a limit in sizes that were not
 *   given: faults of this program.
 */
export function fromSet(
  name: string,
  given: Readonly<Record<string, RuleSetArgument>>,
): SetLimits | undefined {
  const set = ruleSets.get(name);
  if (!set) throw new RangeError(`no rule set is called ${name}`);
  const limits = set.limits(new Map(Object.entries(given)));
  if (!limits.ok) return undefined;

  const filled = (bound: Bound): Quantity => {
    const value = boundValue(bound.expression, limits.sizes);
    if (!value.ok) throw new RangeError(`${name} speaks of a size that was not given`);
    return value.quantity;
  };
  const { lower, upper, nominal } = limits;
  return {
    set: name,
    title: set.title,
    ...(lower ? { lower: filled(lower) } : {}),
    ...(upper ? { upper: filled(upper) } : {}),
    ...(nominal ? { nominal: filled(nominal) } : {}),
    citation: set.citation,
    notes: limits.notes,
    advice: set.advice,
  };
}

const standing = { read: "", secondary: ", as quoted by others", memory: ", not read in a source" };

/** A source in one line, saying so when it was not read itself. */
export function sourceText(citation: Citation): string {
  const text = citationText(citation);
  const hedge = standing[citation.status ?? "read"];
  return text.includes("as quoted") ? text : `${text}${hedge}`;
}
