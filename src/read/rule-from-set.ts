import type { ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import type { TypedRule } from "./read-rules.ts";
import type { TextNode } from "./typed-tree.ts";

export function ruleFromSet(
  typed: TypedRule,
  set: TextNode,
  faults: Faults,
): ToleranceRule | undefined {
  return faults.add("unknown-rule-set", set.span, { message: `no rule set ${typed.id.text}` });
}
