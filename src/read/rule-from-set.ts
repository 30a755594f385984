import { ruleSets } from "../model/published/rule-sets.ts";
import type { RuleSet, RuleSetArgument } from "../model/rule-set.ts";
import type { ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";
import { quantity } from "./quantity-shape.ts";
import type { TypedRule } from "./read-rules.ts";
import { given } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/**
 * Reads a rule that takes its limits from a shipped rule set.
 * @returns `undefined` when a fault was added.
 */
export function ruleFromSet(
  typed: TypedRule,
  named: TextNode,
  faults: Faults,
): ToleranceRule | undefined {
  const set = ruleSets.get(named.text);
  if (!set) {
    const nearest = nearestName(named.text, ruleSets.keys());
    const kind = named.text.split(/[^a-z]/i, 1)[0]?.toLowerCase() ?? "";
    const alike = kind ? [...ruleSets.keys()].filter((name) => name.startsWith(kind)) : [];
    return faults.add("unknown-rule-set", named.span, {
      message: `no rule set is called \`${named.text}\``,
      ...(nearest ? { label: `did you mean \`${nearest}\`?` } : {}),
      ...(alike.length > 0 ? { notes: [`sets of that kind: ${alike.join(", ")}`] } : {}),
      help: [
        nearest ? `write \`${nearest}\`` : "name a set that is shipped, or write the limits out",
        `\`witness explain rule-sets\` lists them all`,
      ],
    });
  }
  for (const key of [
    "authority",
    "source",
    "sizes",
    "at-least",
    "at-most",
    "nominal",
    "tolerance",
    "table",
    "judges",
    "adds-drag",
  ]) {
    const entry = typed.node.entries.get(key);
    if (!entry) continue;
    faults.add("unknown-key", entry.key.span, {
      message: `a rule with \`set\` has no \`${key}\`: it comes from the rule set`,
      help: [`leave \`${key}\` out, or leave \`set\` out and write the limits`],
    });
  }
  const parameters = readParameters(typed, set, faults);
  if (!parameters) return undefined;
  const limits = set.limits(parameters);
  if (!limits.ok) {
    const node = typed.with?.get(limits.parameter) ?? named;
    return faults.add("unknown-rule-set", node.span, {
      message: limits.message,
      help: limits.help,
    });
  }
  return {
    id: typed.id.text,
    title: typed.title.text,
    authority: set.authority,
    citation: set.citation,
    set: set.name,
    ...given({ lower: limits.lower, upper: limits.upper, nominal: limits.nominal }),
    sizes: limits.sizes,
    decision: typed.decision?.value ?? "simple",
    addsDrag: set.addsDrag,
    advice: [...limits.notes, ...set.advice, ...(typed.advice?.map(({ text }) => text) ?? [])],
    span: typed.id.span,
  };
}

function readParameters(
  typed: TypedRule,
  set: RuleSet,
  faults: Faults,
): Map<string, RuleSetArgument> | undefined {
  const parameters = new Map<string, RuleSetArgument>();
  const before = faults.found.length;
  for (const [name, node] of typed.with ?? []) {
    const parameter = set.parameters.find((each) => each.name === name);
    if (parameter?.kind === "size") {
      const size = quantity(node, faults);
      if (size) parameters.set(name, size.quantity);
    } else parameters.set(name, node.text);
  }
  return faults.found.length > before ? undefined : parameters;
}
