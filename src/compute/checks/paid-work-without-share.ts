import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { claimDates } from "../claim-dates.ts";

/** Reports each divided task that paid help worked on and has no share of. */
export function* paidWorkWithoutShare({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, claims, conflicts } of portion?.tasks.values() ?? []) {
    if (!current || !conflicts.includes("paid help at work without a share")) continue;
    const paid = claims.filter((claim) => claim.paid);
    yield {
      code: "paid-work-without-share",
      severity: "finding",
      span: current.span,
      message: `paid help worked on task \`${task.id}\` and has no share of it`,
      label: "no `paid`",
      notes: [task.title, `paid help was at it: ${claimDates(paid)}`],
      help: [
        "divide the task anew in portion.yaml with a share under `paid`, say `why`, and put the share in the row of help.yaml",
        "if the session was on something else, or the role was not `paid help`, correct the entry",
      ],
    };
  }
}
