import { type Layout, type LayoutSubject, layoutSizes, type NamedRule } from "../model/layout.ts";
import { layoutRule, setsAbout } from "../model/layout-rule.ts";
import { expressionDimension, type ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import { nearestName } from "./nearest-name.ts";

/**
 * Reports the rules named by a layout that are not declared, are not shipped, or do not speak of
 * a length that a layout has.
 */
export function addUnfitRules(
  layout: Layout,
  rules: ReadonlyMap<string, ToleranceRule>,
  faults: Faults,
): void {
  const find = layoutRule(rules);
  const { check } = layout.piece;
  for (const [subject, named] of Object.entries(check) as [LayoutSubject, NamedRule[]][]) {
    for (const each of named) {
      const found = find(each, subject, layout);
      if (!found) addUnknown(each, subject, rules, faults);
      else if (!found.ok) {
        faults.add("unknown-rule-set", each.span, {
          message: `\`${each.name}\` cannot be taken here: ${found.message}`,
          help: [...found.help, "or declare it in rules.yaml with its `with`, and name that rule"],
        });
      } else addUnfit(found.rule, each, layout, faults);
    }
  }
}

function addUnknown(
  { name, span }: NamedRule,
  subject: LayoutSubject,
  rules: ReadonlyMap<string, ToleranceRule>,
  faults: Faults,
): void {
  const sets = setsAbout(subject);
  const nearest = nearestName(name, [...rules.keys(), ...sets]);
  faults.add("unknown-name", span, {
    message: `no rule is called \`${name}\``,
    label: nearest ? `did you mean \`${nearest}\`?` : "not in rules.yaml",
    notes: sets.length > 0 ? [`rule sets about ${subject}: ${sets.join(", ")}`] : [],
    help: [
      ...(nearest ? [`write \`${nearest}\``] : []),
      "if it is a new rule, declare it in rules.yaml",
    ],
  });
}

function addUnfit(rule: ToleranceRule, { span }: NamedRule, layout: Layout, faults: Faults): void {
  if (rule.judges) {
    faults.add("not-a-layout", span, {
      message: `rule \`${rule.id}\` judges a ${rule.judges} of readings, which a layout has not`,
      help: ["name a rule with limits for each value"],
    });
    return;
  }
  const sizes = new Map([...rule.sizes, ...layoutSizes(layout)]);
  for (const bound of [rule.lower, rule.upper]) {
    const of = bound && expressionDimension(bound.expression, sizes);
    if (!of || (of.kind === "dimension" && of.dimension === "length")) continue;
    const why =
      of.kind === "unknown size"
        ? `its limit speaks of \`${of.name}\`, which the layout does not say`
        : of.kind === "dimension"
          ? `it limits a ${of.dimension}, not a length`
          : "its limit cannot be worked out";
    faults.add(of.kind === "unknown size" ? "not-a-layout" : "wrong-dimension", span, {
      message: `rule \`${rule.id}\` does not fit here: ${why}`,
      help: ["name a rule that limits a length, in terms of `D` or `t` at most"],
    });
    return;
  }
}
