import { type Governed, governingRule } from "./governing-rule.ts";
import { type Layout, type LayoutSubject, layoutSizes, type NamedRule } from "./layout.ts";
import { ruleSets } from "./published/rule-sets.ts";
import type { RuleSet, RuleSetArgument, RuleSetFault } from "./rule-set.ts";
import type { ToleranceRule } from "./tolerance.ts";

/** The rule that a layout is held against, or why a shipped set cannot be one. */
export type LayoutRule = ({ readonly ok: true } & Governed) | RuleSetFault;

const prefixes: Partial<Record<LayoutSubject, RegExp>> = {
  edge: /^edge-distance-/,
  pitch: /^pitch-/,
};

/** Names of the shipped rule sets that speak of one thing, in alphabetical order. */
export function setsAbout(subject: LayoutSubject): readonly string[] {
  const prefix = prefixes[subject];
  return prefix ? [...ruleSets.keys()].filter((name) => prefix.test(name)) : [];
}

/**
 * Finds what a layout is held against under a name: a rule of the journal, or the one that wins
 * over it on the layout's step, or else a shipped rule set with the layout's own sizes.
 * @returns A function that gives `undefined` for a name that is neither.
 */
export function layoutRule(
  rules: ReadonlyMap<string, ToleranceRule>,
): (
  named: NamedRule,
  subject: LayoutSubject,
  layout: Pick<Layout, "piece" | "sheet" | "step">,
) => LayoutRule | undefined {
  const governs = governingRule(rules);
  return (named, subject, layout) => {
    const governed = governs(named.name, layout.step);
    if (governed) return { ok: true, ...governed };
    const set = setsAbout(subject).includes(named.name) ? ruleSets.get(named.name) : undefined;
    return set && ruleOfSet(set, layout, named);
  };
}

function ruleOfSet(
  set: RuleSet,
  layout: Pick<Layout, "piece" | "sheet">,
  { span }: NamedRule,
): LayoutRule {
  const sizes = layoutSizes(layout);
  const given = new Map<string, RuleSetArgument>();
  for (const { kind, name } of set.parameters) {
    const size = sizes.get(name);
    if (kind === "size" && size) given.set(name, size);
    // A row is one of fasteners; nothing else that a set asks can be known here.
    if (kind === "choice" && name === "between") given.set(name, "rivets");
  }
  const limits = set.limits(given);
  if (!limits.ok) return limits;
  const { lower, upper, nominal } = limits;
  return {
    ok: true,
    rule: {
      id: set.name,
      title: set.title,
      authority: set.authority,
      citation: set.citation,
      set: set.name,
      ...(lower ? { lower } : {}),
      ...(upper ? { upper } : {}),
      ...(nominal ? { nominal } : {}),
      sizes: limits.sizes,
      decision: "simple",
      addsDrag: set.addsDrag,
      advice: [...limits.notes, ...set.advice],
      span,
    },
  };
}
