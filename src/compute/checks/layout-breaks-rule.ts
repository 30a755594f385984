import type { Diagnostic } from "../../model/diagnostic.ts";
import { layoutSizes } from "../../model/layout.ts";
import { quantityOf } from "../../model/quantity.ts";
import type { Ledgers } from "../check.ts";
import type { LaidOut } from "../laid-out.ts";
import { authorityText, limitsText, precedenceText } from "../limits-text.ts";
import { nearText } from "../near-text.ts";

/**
 * Reports each length of a layout outside the limits of a rule that the layout names, unless it
 * names a deviation with a disposition.
 */
export function* layoutBreaksRule({ layouts }: Ledgers): Generator<Diagnostic> {
  for (const laidOut of layouts) {
    const { layout, checks, standing, deviation } = laidOut;
    if (standing !== "out") continue;
    for (const { what, value, rule, over, limits, verdict, span } of checks) {
      if (!verdict || verdict.kind === "within") continue;
      const { kind, limit, by } = verdict;
      const sizes = layoutSizes(layout);
      yield {
        code: "layout-breaks-rule",
        severity: "finding",
        span,
        message: `${what} of \`${layout.title}\` is ${nearText(value)}, ${kind} the limit of ${limit.typed}`,
        label: `${nearText(quantityOf(by, limit.unit))} ${kind} the limit`,
        notes: [
          `${rule.title}: ${limitsText(limits, rule, sizes)}`,
          authorityText(rule),
          ...(over ? [precedenceText(rule, over)] : []),
          ...rule.advice,
        ],
        help: [...remedy(laidOut), wayOut(laidOut)],
        ...(deviation?.private ? { private: true } : {}),
      };
    }
  }
}

function remedy({ layout: { piece } }: LaidOut): string[] {
  return piece.kind === "row"
    ? [
        "before a hole is drilled: change `count`, `pitch`, `edge` or `side`, as far as the drawing allows it",
      ]
    : ["before it is cut: change the sizes or the finish, as far as the drawing allows it"];
}

function wayOut({ deviation }: LaidOut): string {
  return deviation
    ? `deviation \`${deviation.id}\` accounts for it once it has a disposition`
    : "if it stays as it is, record a deviation and name it in the block as `deviation:`";
}
