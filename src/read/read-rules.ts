import type { Citation } from "../model/citation.ts";
import type { Quantity } from "../model/quantity.ts";
import { type Bound, expressionDimension, type ToleranceRule } from "../model/tolerance.ts";
import type { Faults } from "./faults.ts";
import { readBound } from "./quantity-shape.ts";
import { readSizes } from "./read-sizes.ts";
import { unique } from "./registers.ts";
import { rulesShape } from "./registers-schema.ts";
import { ruleFromSet } from "./rule-from-set.ts";
import { given } from "./shape.ts";
import type { MapNode, TextNode } from "./typed-tree.ts";

export type TypedRule = NonNullable<ReturnType<typeof rulesShape>>["rules"][number];

/** Reads `rules.yaml`: limits written out, or taken from a shipped rule set. */
export function readRules(tree: MapNode | undefined, faults: Faults): Map<string, ToleranceRule> {
  const typed = tree && rulesShape(tree, faults);
  const rules = new Map<string, ToleranceRule>();
  for (const rule of unique(typed?.rules ?? [], "rule", faults)) {
    const read = rule.set ? ruleFromSet(rule, rule.set, faults) : ruleWrittenOut(rule, faults);
    if (read) rules.set(read.id, read);
  }
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
    sizes,
    decision: typed.decision?.value ?? "simple",
    addsDrag: false,
    advice: typed.advice?.map(({ text }) => text) ?? [],
    span: typed.id.span,
  };
}

interface WrittenLimits {
  readonly lower?: Bound;
  readonly upper?: Bound;
  readonly nominal?: Bound;
}

function readLimits(
  typed: TypedRule,
  sizes: ReadonlyMap<string, Quantity>,
  faults: Faults,
): WrittenLimits | undefined {
  const read = (node: TextNode | undefined) => node && readBound(node, sizes.keys(), faults);
  const lower = read(typed["at-least"]);
  const upper = read(typed["at-most"]);
  const nominal = read(typed.nominal);
  const plus = read(typed.tolerance?.plus);
  const minus = read(typed.tolerance?.minus);
  const known = faults.found.length;
  if (typed.nominal || typed.tolerance) {
    if (!typed.nominal || !typed.tolerance || typed["at-least"] || typed["at-most"]) {
      return faults.add("missing-key", (typed.nominal ?? typed.id).span, {
        message: "`nominal` and `tolerance` stand together, without `at-least` and `at-most`",
        help: ["write `nominal: 12.500 in` and `tolerance: 0.015 in`"],
      });
    }
    if (!nominal || !plus || !minus) return undefined;
    return {
      nominal,
      lower: {
        typed: `${nominal.typed} - ${minus.typed}`,
        expression: { kind: "difference", left: nominal.expression, right: minus.expression },
      },
      upper: {
        typed: `${nominal.typed} + ${plus.typed}`,
        expression: { kind: "sum", left: nominal.expression, right: plus.expression },
      },
    };
  }
  if (!typed["at-least"] && !typed["at-most"]) {
    return faults.add("missing-key", typed.id.span, {
      message: `rule \`${typed.id.text}\` has no limit`,
      help: ["write `at-least`, `at-most` or both; or `nominal` and `tolerance`"],
    });
  }
  checkSameDimension(typed, lower, upper, sizes, faults);
  return faults.found.length > known ? undefined : given({ lower, upper });
}

function checkSameDimension(
  typed: TypedRule,
  lower: Bound | undefined,
  upper: Bound | undefined,
  sizes: ReadonlyMap<string, Quantity>,
  faults: Faults,
): void {
  const low = lower && expressionDimension(lower.expression, sizes);
  const high = upper && expressionDimension(upper.expression, sizes);
  for (const [side, node] of [
    [low, typed["at-least"]],
    [high, typed["at-most"]],
  ] as const) {
    if (side?.kind !== "mixed" || !node) continue;
    faults.add("wrong-dimension", node.span, {
      message: `\`${node.text}\` joins a ${side.left} with a ${side.right}`,
      help: ["write both parts in units of the same kind"],
    });
  }
  if (low?.kind !== "dimension" || high?.kind !== "dimension") return;
  if (low.dimension === high.dimension) return;
  const node = typed["at-most"] ?? typed.id;
  faults.add("wrong-dimension", node.span, {
    message: `\`at-least\` is a ${low.dimension}, \`at-most\` is a ${high.dimension}`,
    help: ["write both limits in units of the same kind"],
  });
}
