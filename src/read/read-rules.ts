import type { Step } from "../model/assembly.ts";
import type { Citation } from "../model/citation.ts";
import type { Quantity } from "../model/quantity.ts";
import { expressionDimension, figureKinds, type ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import { readLimits, type WrittenLimits } from "./read-limits.ts";
import { readSizes } from "./read-sizes.ts";
import { unique } from "./registers.ts";
import { rulesShape } from "./registers-schema.ts";
import { ruleFromSet } from "./rule-from-set.ts";
import { readPrecedence } from "./rule-precedence.ts";
import { given } from "./shape.ts";
import type { MapNode } from "./typed-tree.ts";

export type TypedRule = NonNullable<ReturnType<typeof rulesShape>>["rules"][number];

/** Reads `rules.yaml`: limits written out, or taken from a shipped rule set. */
export function readRules(
  tree: MapNode | undefined,
  steps: ReadonlyMap<string, Step>,
  faults: Faults,
): Map<string, ToleranceRule> {
  const typed = tree && rulesShape(tree, faults);
  const rules = new Map<string, ToleranceRule>();
  const all = unique(typed?.rules ?? [], "rule", faults);
  for (const rule of all) {
    const read = rule.set ? ruleFromSet(rule, rule.set, faults) : ruleWrittenOut(rule, faults);
    if (read) rules.set(read.id, read);
  }
  readPrecedence(all, rules, steps, faults);
  return rules;
}

function ruleWrittenOut(typed: TypedRule, faults: Faults): ToleranceRule | undefined {
  if (!typed.authority || !typed.source) {
    return faults.add("missing-key", typed.id.span, {
      message: `rule \`${typed.id.text}\` needs \`authority\` and \`source\`, or a \`set\``,
      help: [
        "write who says so: `authority: drawing`, `source: { document: HS-03, edition: rev C }`",
        "or name a shipped rule set: `set: edge-distance-2d`, `with: { D: 1/8 in }`",
      ],
    });
  }
  const sizes = readSizes(typed.sizes, faults);
  const limits = readLimits(typed, sizes, faults);
  if (!limits) return undefined;
  const { document, edition, place } = typed.source;
  const citation: Citation = {
    document: document.text,
    ...given({ edition: edition?.text, place: place?.text }),
  };
  return {
    id: typed.id.text,
    title: typed.title.text,
    authority: typed.authority.value,
    citation,
    ...limits,
    ...given({ judges: figureKinds.find((kind) => kind === typed.judges?.value) }),
    sizes,
    decision: typed.decision?.value ?? "simple",
    addsDrag: readAddsDrag(typed, limits, sizes, faults),
    advice: typed.advice?.map(({ text }) => text) ?? [],
    span: typed.id.span,
  };
}

// Drag is a torque, so that it can only be added to limits of one.
function readAddsDrag(
  typed: TypedRule,
  { lower, upper }: WrittenLimits,
  sizes: ReadonlyMap<string, Quantity>,
  faults: Faults,
): boolean {
  const bound = lower ?? upper;
  if (!typed["adds-drag"] || !bound) return false;
  const of = expressionDimension(bound.expression, sizes);
  if (of.kind !== "dimension" || of.dimension === "torque") return true;
  faults.add("wrong-dimension", typed.node.entries.get("adds-drag")?.key.span ?? typed.id.span, {
    message: `friction drag is a torque, and \`${bound.typed}\` is a ${of.dimension}`,
    help: ["leave `adds-drag` out"],
  });
  return false;
}
