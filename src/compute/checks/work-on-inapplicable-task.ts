import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { claimDates } from "../claim-dates.ts";

/** Reports each task put aside as not applicable although entries or rows of help claim it. */
export function* workOnInapplicableTask({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, claims, help, conflicts } of portion?.tasks.values() ?? []) {
    if (!current || !conflicts.includes("not applicable but worked on")) continue;
    const rows = help.rows.map((id) => `\`${id}\``).join(", ");
    yield {
      code: "work-on-inapplicable-task",
      severity: "finding",
      span: current.span,
      message: `task \`${task.id}\` is put aside as not applicable, and ${claims.length > 0 ? "entries show work on it" : "help was received for it"}`,
      label: "not applicable",
      notes: [
        task.title,
        ...(claims.length > 0 ? [`worked on: ${claimDates(claims)}`] : []),
        ...(rows === "" ? [] : [`rows of help: ${rows}`]),
      ],
      help: [
        "if it applies after all, divide it in portion.yaml and say `why`",
        "otherwise take the task out of those sessions, of `claims` and of help.yaml",
      ],
    };
  }
}
