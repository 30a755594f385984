import type { EnvelopeVerdict, LimitMargin } from "../../compute/envelope.ts";
import { excessText, roomText } from "../format/balance.ts";

/** Where a loading lies, in words. */
export interface VerdictWords {
  readonly verdict: "inside the limits given" | "outside" | "no limits given" | "no weight";
  /** What is broken and by how much, or how much room is left. */
  readonly says: readonly string[];
}

const broken: Record<LimitMargin["limit"], string> = {
  "greatest weight": "too heavy by",
  forward: "ahead of the forward limit by",
  aft: "behind the aft limit by",
};

const left: Record<LimitMargin["limit"], string> = {
  "greatest weight": "below the greatest weight",
  forward: "behind the forward limit",
  aft: "ahead of the aft limit",
};

/** A verdict in words: room is rounded down, and what is over is rounded up. */
export function verdictWords({ kind, margins, beyond }: EnvelopeVerdict): VerdictWords {
  if (kind === "no limits") return { verdict: "no limits given", says: [] };
  if (kind === "no weight")
    return { verdict: "no weight", says: ["all together weighs nothing: look at the signs"] };
  if (kind === "inside") {
    return {
      verdict: "inside the limits given",
      says: margins.map(({ limit, room }) =>
        room.amount.equals(0) ? `on the ${limitName(limit)}` : `${roomText(room)} ${left[limit]}`,
      ),
    };
  }
  return {
    verdict: "outside",
    says: [
      ...margins
        .filter(({ room }) => room.amount.lt(0))
        .map(({ limit, room }) => `${broken[limit]} ${excessText(room)}`),
      ...beyond.map(
        ({ limit, side, end, by }) =>
          `${excessText(by)} ${side} ${end.typed}, where the ${limit} limit ends`,
      ),
    ],
  };
}

function limitName(limit: LimitMargin["limit"]): string {
  return limit === "greatest weight" ? limit : `${limit} limit`;
}
