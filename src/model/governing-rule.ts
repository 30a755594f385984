import type { ToleranceRule } from "./tolerance.ts";

/** What a reading is judged by. */
export interface Governed {
  readonly rule: ToleranceRule;
  /** The general rule that was named, where `rule` wins over it. */
  readonly over?: ToleranceRule;
}

/**
 * Finds the rule that governs a reading: the one it names or, where a rule says that it wins
 * over that one on the reading's step, the winner. A winner for named steps comes before one
 * for all, and may itself be won over.
 * @returns A function of the rule's id and the step's; `undefined` for a rule that is not there.
 * @example governingRule(build.rules)("edge-1-8", "LS-01")?.rule.id // "cap-edge"
 */
export function governingRule(
  rules: ReadonlyMap<string, ToleranceRule>,
): (named: string | undefined, step: string | undefined) => Governed | undefined {
  const winners = new Map<string, ToleranceRule[]>();
  for (const rule of rules.values()) {
    if (!rule.over) continue;
    const known = winners.get(rule.over.rule);
    if (known) known.push(rule);
    else winners.set(rule.over.rule, [rule]);
  }
  const winnerOf = ({ id }: ToleranceRule, step: string | undefined) => {
    const all = winners.get(id) ?? [];
    return (
      all.find(({ over }) => step !== undefined && over?.steps?.includes(step)) ??
      all.find(({ over }) => over?.steps === undefined)
    );
  };
  return (named, step) => {
    const typed = named === undefined ? undefined : rules.get(named);
    if (!typed) return undefined;
    let rule = typed;
    // Reading refuses a circle of winners; a build made otherwise must not hang.
    const seen = new Set([typed.id]);
    for (let next = winnerOf(rule, step); next && !seen.has(next.id); next = winnerOf(rule, step)) {
      seen.add(next.id);
      rule = next;
    }
    return rule === typed ? { rule } : { rule, over: typed };
  };
}
