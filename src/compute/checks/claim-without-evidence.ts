import type { Diagnostic } from "../../model/diagnostic.ts";
import { tenthsText } from "../../model/tenths-text.ts";
import type { Ledgers } from "../check.ts";
import { claimDates } from "../claim-dates.ts";
import type { EvidenceGap, TaskState } from "../ledgers/portion.ts";

/**
 * Reports each task of which the builder claims a share and whose evidence has a gap: no entry
 * by a builder or an unpaid helper, or none of these entries with a place, a text or a
 * photograph. The newest division counts.
 */
export function* claimWithoutEvidence({ portion }: Ledgers): Generator<Diagnostic> {
  for (const state of portion?.tasks.values() ?? []) {
    const { task, current, claims, gaps } = state;
    if (!current?.split || gaps.length === 0) continue;
    const { assembly, fabrication } = current.split;
    const own = claims.filter(({ amateur }) => amateur);
    yield {
      code: "claim-without-evidence",
      severity: "finding",
      span: current.span,
      message: `the builder has ${tenthsText(assembly + fabrication)} of task \`${task.id}\`, and ${lacksText(state)}`,
      label: gaps.join(", "),
      notes: [
        task.title,
        ...(own.length > 0 ? [`by a builder or an unpaid helper: ${claimDates(own)}`] : []),
        ...(own.length === 0 && claims.length > 0 ? [`by others: ${claimDates(claims)}`] : []),
      ],
      help: gaps.map((gap) => remedies[gap](task.id)),
    };
  }
}

function lacksText({ gaps }: TaskState): string {
  if (gaps.includes("no entry")) return "no entry shows it";
  if (gaps.includes("no entry by a builder")) return "no entry by a builder shows it";
  const lacking = gaps.map((gap) => gap.replace("no ", "a "));
  const last = lacking.at(-1) ?? "";
  const list = lacking.length > 1 ? `${lacking.slice(0, -1).join(", ")} or ${last}` : last;
  return `no entry that shows it has ${list}`;
}

const claiming = (task: string) =>
  `name the task in the session that did it, \`tasks: [${task}]\`, or its steps under \`claims\` in portion.yaml`;
const remedies: Readonly<Record<EvidenceGap, (task: string) => string>> = {
  "no entry": claiming,
  "no entry by a builder": claiming,
  "no place": () => "say in the entry, under `place`, where it was done",
  "no text": () => "say in the entry in words what was done and how",
  "no photograph": () =>
    "if there is a photograph of the work, list it under `photos` of the entry",
};
