import type { Step } from "../model/assembly.ts";
import { authorities, type Precedence, type ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import type { TypedRule } from "./read-rules.ts";
import { nameOf } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/**
 * Reads which rules win over which, and puts it into them. Only a limit of the drawing or the
 * manual wins, over one that has less authority or, for named steps, over a general one that has
 * as much. On one step one rule wins.
 * @param rules Those that could be read; changed in place.
 */
export function readPrecedence(
  typed: readonly TypedRule[],
  rules: Map<string, ToleranceRule>,
  steps: ReadonlyMap<string, Step>,
  faults: Faults,
): void {
  const taken = new Map<string, string>();
  const declared = new Map(typed.map(({ id }) => [id.text, id]));
  for (const each of typed) {
    const { over, id } = each;
    if (!over) {
      if (each.steps) addStepsAlone(each, faults);
      continue;
    }
    if (!nameOf("rule", "rules.yaml", declared)(over, faults)) continue;
    const known = (each.steps ?? []).map((step) =>
      nameOf("step", "assemblies.yaml", steps)(step, faults),
    );
    const [rule, other] = [rules.get(id.text), rules.get(over.text)];
    if (!rule || !other || known.includes(undefined)) continue;
    const precedence: Precedence = {
      rule: over.text,
      ...(each.steps ? { steps: each.steps.map(({ text }) => text) } : {}),
    };
    if (
      mayWin(rule, other, precedence, over, faults) &&
      isAlone(precedence, id, over, taken, faults)
    )
      rules.set(rule.id, { ...rule, over: precedence });
  }
  refuseCircles(typed, rules, faults);
}

function addStepsAlone({ steps, id }: TypedRule, faults: Faults): void {
  faults.add("missing-key", (steps?.[0] ?? id).span, {
    message: "`steps` says where a rule wins over another, and no `over` says which",
    help: ["write `over: edge-1-8`, or leave `steps` out: a reading names its rule itself"],
  });
}

function mayWin(
  rule: ToleranceRule,
  other: ToleranceRule,
  { steps }: Precedence,
  place: TextNode,
  faults: Faults,
): boolean {
  const rank = ({ authority }: ToleranceRule) => authorities.indexOf(authority);
  const strong = rule.authority === "drawing" || rule.authority === "manual";
  const ahead = rank(rule) < rank(other) || (rank(rule) === rank(other) && steps !== undefined);
  if (strong && ahead && rule.id !== other.id) return true;
  const limit = ({ authority }: ToleranceRule) =>
    authority === "drawing" || authority === "manual" ? `the ${authority}'s` : authority;
  faults.add("rule-does-not-win", place.span, {
    message:
      rule.id === other.id
        ? `rule \`${rule.id}\` cannot win over itself`
        : `rule \`${rule.id}\` is ${limit(rule)}, and does not win over \`${other.id}\`, which is ${limit(other)}`,
    notes: ["a limit of the drawing comes before one of the manual, and both before general ones"],
    help: [
      ...(strong && rank(rule) === rank(other) && rule.id !== other.id
        ? ["if it is for some steps only, name them: `steps: [HS-07]`"]
        : []),
      "leave `over` out, and name the rule that is meant in each reading",
    ],
  });
  return false;
}

function isAlone(
  { rule, steps }: Precedence,
  id: TextNode,
  place: TextNode,
  taken: Map<string, string>,
  faults: Faults,
): boolean {
  for (const step of steps ?? [""]) {
    const first = taken.get(`${rule} ${step}`);
    if (first !== undefined) {
      faults.add("rule-does-not-win", place.span, {
        message: `\`${first}\` wins over \`${rule}\` ${step === "" ? "everywhere" : `on step \`${step}\``} already`,
        help: [
          step === ""
            ? "name the steps on which this one wins: `steps: [HS-07]`"
            : `leave step \`${step}\` out of one of the two`,
        ],
      });
      return false;
    }
    taken.set(`${rule} ${step}`, id.text);
  }
  return true;
}

// Rules of one authority could each win over the other on their own steps.
function refuseCircles(
  typed: readonly TypedRule[],
  rules: Map<string, ToleranceRule>,
  faults: Faults,
): void {
  for (const { id, over } of typed) {
    const rule = rules.get(id.text);
    const passed = new Set<string>();
    let next = rule?.over?.rule;
    while (next !== undefined && next !== id.text && !passed.has(next)) {
      passed.add(next);
      next = rules.get(next)?.over?.rule;
    }
    if (!rule || !over || next !== id.text) continue;
    const { over: _over, ...rest } = rule;
    rules.set(rule.id, rest);
    faults.add("rule-does-not-win", over.span, {
      message: `\`${id.text}\` and \`${over.text}\` win over each other in a circle`,
      help: ["leave `over` out of one of them"],
    });
  }
}
