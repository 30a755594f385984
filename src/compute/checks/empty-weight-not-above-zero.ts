import type { Diagnostic, Span } from "../../model/diagnostic.ts";
import { asTyped, type Quantity } from "../../model/quantity.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each weighing, of the whole aircraft or of a part, that comes to nothing or less, and
 * each change that takes out as much as there was or more: a tare or an item was counted wrongly.
 */
export function* emptyWeightNotAboveZero({ balance }: Ledgers): Generator<Diagnostic> {
  if (!balance) return;
  for (const { weighing, sum } of balance.weighings) {
    if (sum.weight.amount.gt(0)) continue;
    yield diagnostic(weighing.span, `weighing \`${weighing.id}\` comes to ${asTyped(sum.weight)}`, [
      "look at `tare` and at what stands under `out`",
    ]);
  }
  let last: Quantity | undefined;
  for (const event of balance.events) {
    const before = last;
    last = event.kind === "change" ? (event.state.after?.weight ?? last) : event.state.sum.weight;
    if (event.kind !== "change" || !last || last.amount.gt(0)) continue;
    // Once it is below zero, every further change is; the first one is to blame.
    if (before?.amount.gt(0) === false) continue;
    yield diagnostic(
      event.state.change.span,
      `change \`${event.state.change.id}\` leaves an empty weight of ${asTyped(last)}`,
      ["look at the weights under `out`, and whether they were ever counted in"],
    );
  }
}

function diagnostic(span: Span, message: string, help: readonly string[]): Diagnostic {
  return {
    code: "empty-weight-not-above-zero",
    severity: "error",
    span,
    message,
    label: "nothing left to fly",
    notes: [],
    help,
  };
}
