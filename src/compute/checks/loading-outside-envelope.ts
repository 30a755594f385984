import { armLimitText } from "../../model/arm-limit.ts";
import type { BalanceLimits } from "../../model/balance.ts";
import { citationText } from "../../model/citation.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { exactText, type Quantity } from "../../model/quantity.ts";
import type { Ledgers } from "../check.ts";
import type { BeyondLimits, EnvelopeVerdict, LimitMargin } from "../envelope.ts";

/**
 * Reports each loading case that is too heavy, whose centre of gravity lies outside its limits,
 * whose weight the limits say nothing about, or that weighs nothing at all. Limits are
 * inclusive. Cases from a projected empty weight are reported too, and say so.
 */
export function* loadingOutsideEnvelope({ balance }: Ledgers): Generator<Diagnostic> {
  if (!balance) return;
  const { register, empty, cases } = balance;
  for (const { loading, verdict, estimated } of cases) {
    if (verdict.kind !== "outside" && verdict.kind !== "no weight") continue;
    const faults = faultsOf(verdict);
    yield {
      code: "loading-outside-envelope",
      severity: "finding",
      span: loading.span,
      message: `loading case \`${loading.id}\`, ${loading.title}: ${faults.join("; ")}`,
      label: verdict.kind === "outside" ? "outside the limits" : "nothing to balance",
      notes: [
        ...(register.limits && verdict.kind === "outside" ? limitNotes(register.limits) : []),
        ...(empty?.basis === "projected"
          ? ["the empty weight is projected, not weighed"]
          : estimated
            ? ["some of its weights are estimates"]
            : []),
      ],
      help: [
        "look at the weights and arms of the case, and at the signs: arms aft of the datum count up",
        "if they are right, the aircraft may not be loaded so: change the loading, or take it up with the designer before flight",
      ],
      ...(loading.private ? { private: true } : {}),
    };
  }
}

function faultsOf({ kind, margins, beyond }: EnvelopeVerdict): string[] {
  if (kind === "no weight") return ["all together weighs nothing, so nothing can be in balance"];
  return [...margins.filter(({ room }) => room.amount.lt(0)).map(broken), ...beyond.map(unsaid)];
}

const words = {
  "greatest weight": "above the greatest weight",
  forward: "its centre of gravity is ahead of the forward limit",
  aft: "its centre of gravity is behind the aft limit",
} as const;

function broken({ limit, room }: LimitMargin): string {
  return `${words[limit]} by ${excessText(room)}`;
}

function unsaid({ limit, side, end, by }: BeyondLimits): string {
  return `${excessText(by)} ${side} ${end.typed}, where the ${limit} limit ends`;
}

// A message rounds nothing: what does not end soon is said to be more than what it begins with.
function excessText({ amount, unit }: Quantity): string {
  const size = amount.abs();
  const exact = exactText(size);
  if (!exact.includes("/") && exact.length <= 7) return `${exact} ${unit.symbol}`;
  const places = [2, 4, 6].find((each) => size.floor(each).gt(0));
  return places === undefined
    ? `less than 0.000001 ${unit.symbol}`
    : `more than ${exactText(size.floor(places))} ${unit.symbol}`;
}

function limitNotes({ citation, maxWeight, forward, aft }: BalanceLimits): string[] {
  const limits = [
    ...(maxWeight ? [`greatest weight ${maxWeight.typed}`] : []),
    ...(forward ? [`forward limit ${armLimitText(forward)}`] : []),
    ...(aft ? [`aft limit ${armLimitText(aft)}`] : []),
  ];
  return [limits.join("; "), `limits from ${citationText(citation)}`];
}
