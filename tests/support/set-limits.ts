import { type LimitsResult, limitsOf } from "../../src/compute/limits.ts";
import { ruleSets } from "../../src/model/published/rule-sets.ts";
import type { RuleSet } from "../../src/model/rule-set.ts";
import type { Limits } from "../../src/model/tolerance.ts";
import { quantity } from "./typed-quantity.ts";

/** A shipped rule set; throws when there is none of that name. */
export function ruleSetNamed(name: string): RuleSet {
  const set = ruleSets.get(name);
  if (!set) throw new Error(`no rule set ${name}`);
  return set;
}

/** What a set answers to arguments as a builder types them. */
export function askSet(name: string, given: Readonly<Record<string, string>>) {
  const set = ruleSetNamed(name);
  const kinds = new Map(set.parameters.map(({ name, kind }) => [name, kind]));
  return set.limits(
    new Map(
      Object.entries(given).map(([key, typed]) => [
        key,
        kinds.get(key) === "size" ? quantity(typed) : typed,
      ]),
    ),
  );
}

/** The limits of a set with its sizes filled in; throws when there are none. */
export function setLimits(
  name: string,
  given: Readonly<Record<string, string>>,
  drag?: string,
): Limits {
  const row = askSet(name, given);
  if (!row.ok) throw new Error(row.message);
  const result: LimitsResult = limitsOf(
    { ...row, addsDrag: ruleSetNamed(name).addsDrag },
    new Map(),
    drag === undefined ? undefined : quantity(drag),
  );
  if (!result.ok) throw new Error(result.fault.kind);
  return result.limits;
}
