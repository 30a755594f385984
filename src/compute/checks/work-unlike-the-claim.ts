import type { Diagnostic } from "../../model/diagnostic.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import type { Ledgers } from "../check.ts";
import { claimDates } from "../claim-dates.ts";
import type { MissingKind } from "../ledgers/portion.ts";

/**
 * Reports each task with a share of assembly or of fabrication that no entry of that kind of
 * work by a builder or an unpaid helper shows, although there are entries of other kinds.
 */
export function* workUnlikeTheClaim({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, claims, missingKinds } of portion?.tasks.values() ?? []) {
    if (!current?.split) continue;
    const own = claims.filter(({ amateur }) => amateur);
    const kinds = [...new Set(own.map(({ kind }) => kind))];
    for (const missing of missingKinds) {
      const share = shareOf[missing];
      yield {
        code: "work-unlike-the-claim",
        severity: "finding",
        span: current.span,
        message: `the builder has ${tenthsText(current.split[share])} of task \`${task.id}\` for ${share}, and no entry of kind \`${missing}\` shows it`,
        label: `no \`${missing}\` by a builder`,
        notes: [
          task.title,
          `kinds of work there are: ${kinds.map((kind) => `\`${kind}\``).join(", ")}; ${claimDates(own)}`,
        ],
        help: [
          `if that work was done, let the session that did it claim the task, and give it \`kind: ${missing}\``,
          "otherwise divide the task anew in portion.yaml and say `why`",
        ],
      };
    }
  }
}

const shareOf = { assemble: "assembly", fabricate: "fabrication" } as const satisfies Readonly<
  Record<MissingKind, string>
>;
