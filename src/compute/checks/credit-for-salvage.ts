import type { Diagnostic } from "../../model/diagnostic.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import type { Ledgers } from "../check.ts";

/**
 * Reports each task made from a used or salvaged type-certificated assembly of which the builder
 * claims a share. Using, rebuilding or altering such an assembly earns none (AC 20-27G, its
 * paragraph on salvaged assemblies, as others quote it).
 */
export function* creditForSalvage({ portion }: Ledgers): Generator<Diagnostic> {
  for (const { task, current, conflicts } of portion?.tasks.values() ?? []) {
    if (!current?.split || !conflicts.includes("credit for a salvaged assembly")) continue;
    const { assembly, fabrication } = current.split;
    yield {
      code: "credit-for-salvage",
      severity: "finding",
      span: current.span,
      message: `the builder has ${tenthsText(assembly + fabrication)} of task \`${task.id}\`, which is made from a salvaged assembly`,
      label: "`salvage: true`",
      notes: [
        task.title,
        "using, rebuilding or altering a used type-certificated assembly earns the builder nothing: AC 20-27G, as quoted by others, the text itself was not seen",
      ],
      help: [
        "give the whole point to `kit` and say `why`; or take `salvage` out, if it was made new",
        "if in doubt, ask whoever will inspect the aircraft before the work",
      ],
    };
  }
}
