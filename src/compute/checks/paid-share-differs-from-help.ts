import type { Diagnostic } from "../../model/diagnostic.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each divided task whose share of paid help is not the one that the rows of help come
 * to, in tenths. Without a register of help every share of paid help stands alone.
 */
export function* paidShareDiffersFromHelp({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, help, conflicts } of portion?.tasks.values() ?? []) {
    if (!current?.split || !conflicts.includes("paid share differs from the help received"))
      continue;
    const { paid } = current.split;
    const rows = help.rows.map((id) => `\`${id}\``).join(", ");
    yield {
      code: "paid-share-differs-from-help",
      severity: "finding",
      span: current.span,
      message:
        help.rows.length === 0
          ? `paid help has ${tenthsText(paid)} of task \`${task.id}\`, and no row of help says so`
          : `paid help has ${tenthsText(paid)} of task \`${task.id}\` on the sheet, and ${tenthsText(help.tenths)} in the help received`,
      label: help.rows.length === 0 ? "who helped?" : "differs",
      notes: [task.title, ...(rows === "" ? [] : [`rows of help: ${rows}`])],
      help: [
        "say in help.yaml who was paid for what and when, with the task under `shares`",
        "or divide the task anew in portion.yaml and say `why`",
      ],
    };
  }
}
