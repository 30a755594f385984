import type { Diagnostic } from "../../model/diagnostic.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each divided task whose share of the kit is not the one that the list gives, with
 * nothing that says what it rests on. Where the list gives none, none is expected.
 */
export function* kitShareWithoutSource({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, conflicts } of portion?.tasks.values() ?? []) {
    if (!current?.split || !conflicts.includes("kit's share without a source")) continue;
    yield {
      code: "kit-share-without-source",
      severity: "finding",
      span: current.span,
      message: `the kit has ${tenthsText(current.split.kit)} of task \`${task.id}\`, and nothing says what that rests on`,
      label: "no `source`",
      notes: [
        task.title,
        task.listed === undefined
          ? "the list gives no share for the kit"
          : `the list gives the kit ${tenthsText(task.listed)}`,
      ],
      help: [
        "write under `source` what it rests on: an evaluation of the kit, an invoice, a record of the part",
        ...(task.listed === undefined ? [] : ["or keep to the share that the list gives"]),
      ],
    };
  }
}
