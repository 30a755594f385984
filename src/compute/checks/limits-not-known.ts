import type { Diagnostic, Span } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import { asTyped } from "../../model/quantity.ts";
import type { ToleranceRule } from "../../model/tolerance.ts";
import type { Ledgers } from "../check.ts";
import { sizesOf } from "../ledgers/readings.ts";
import { boundValue, type LimitsFault, limitsOf, type Sizes } from "../limits.ts";

const noSizes: Sizes = new Map();

/**
 * Reports each rule whose lower limit lies above its upper one or that is a multiple of nothing, and each reading whose limits
 * cannot be worked out with its sizes and drag: nothing could be judged by them.
 */
export function* limitsNotKnown({ build, readings }: Ledgers): Generator<Diagnostic> {
  const hopeless = new Set<string>();
  for (const rule of build.rules.values()) {
    const result = limitsOf(rule, noSizes);
    if (result.ok || (result.fault.kind !== "crossed ends" && result.fault.kind !== "no size"))
      continue;
    hopeless.add(rule.id);
    yield {
      ...diagnostic(rule, rule.span, result.fault),
      help: [
        result.fault.kind === "no size"
          ? `correct \`sizes\`: \`${result.fault.name}\` has to be above zero`
          : "correct the limits: `at-least` is the lower one, `at-most` the upper one",
      ],
    };
  }
  for (const { reading, rule, fault } of readings) {
    if (!rule || !fault || fault.kind === "outside the table" || hopeless.has(rule.id)) continue;
    if (isReported(rule, sizesOf(reading))) continue;
    yield {
      ...diagnostic(rule, reading.span, fault),
      help: ["correct `sizes` or `drag` of this reading, or name the rule that was meant"],
      ...(reading.private ? { private: true } : {}),
    };
  }
}

// Another check reports what lies outside a table: the limits are in order, the day was not.
type Fault = Exclude<LimitsFault, { readonly kind: "outside the table" }>;

function diagnostic(rule: ToleranceRule, span: Span, fault: Fault): Diagnostic {
  return {
    code: "limits-not-known",
    severity: "error",
    span,
    message: `the limits of rule \`${rule.id}\` cannot be worked out: ${why(fault)}`,
    label: "nothing to judge by",
    notes: span === rule.span ? [] : [`the rule: ${placeText(rule.span)}`],
    help: [],
  };
}

function why(fault: Fault): string {
  switch (fault.kind) {
    case "unknown size":
      return `nothing says what \`${fault.name}\` is`;
    case "no size":
      return `\`${fault.name}\` is ${asTyped(fault.size)}, and a multiple of it is no limit`;
    case "wrong dimension":
      return `a ${fault.left} and a ${fault.right} do not go together`;
    case "crossed ends":
      return `the lower one, ${asTyped(fault.lower)}, lies above the upper one, ${asTyped(fault.upper)}`;
  }
}

// A size missing from the first end is reported when the reading is read.
function isReported(rule: ToleranceRule, sizes: Sizes): boolean {
  const first = rule.lower ?? rule.upper;
  const value = first && boundValue(first.expression, new Map([...rule.sizes, ...sizes]));
  return value?.ok === false && value.fault.kind === "unknown size";
}
