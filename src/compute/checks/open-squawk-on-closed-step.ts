import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { closedStage } from "../ledgers/steps.ts";

/** Reports each squawk that nobody has closed although its step is. */
export function* openSquawkOnClosedStep({ squawks, steps }: Ledgers): Generator<Diagnostic> {
  for (const { squawk, standing } of squawks) {
    const { id, step, found, fixed, span } = squawk;
    const state = step === undefined ? undefined : steps.get(step);
    if (standing === "closed" || state?.stage !== closedStage) continue;
    yield {
      code: "open-squawk-on-closed-step",
      severity: "finding",
      span,
      message: `squawk \`${id}\` is ${standing}, but \`${step}\` is closed`,
      label: "not closed",
      notes: [
        `found: ${found}`,
        ...(fixed ? [`fixed on ${fixed.date}: ${fixed.text}`] : []),
        `\`${step}\` was closed on ${state.stageDate}`,
      ],
      help: [
        ...(fixed ? [] : ["say what was done under `fixes`, as `did:`"]),
        "when somebody has looked at it, name them under `fixes` as `closed-by:`",
      ],
    };
  }
}
