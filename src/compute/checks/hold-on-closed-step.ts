import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { closedStage } from "../ledgers/steps.ts";

/** Reports each hold that nothing has released although its step is closed. */
export function* holdOnClosedStep({ holds, steps }: Ledgers): Generator<Diagnostic> {
  for (const { hold, released } of holds) {
    const state = steps.get(hold.step);
    if (released || state?.stage !== closedStage) continue;
    const what = `${hold.count === undefined ? "" : `${hold.count} `}${hold.with}`;
    yield {
      code: "hold-on-closed-step",
      severity: "finding",
      span: hold.span,
      message: `hold \`${hold.id}\` (${what}) is still on \`${hold.step}\`, which is closed`,
      label: "not released",
      notes: [
        ...(hold.where === undefined ? [] : [`where: ${hold.where}`]),
        `\`${hold.step}\` was closed on ${state.stageDate}`,
      ],
      help: [
        "if it is gone, say so under `releases` on the day it went",
        "if it is still in there, open the step again: book the work as `rework` with its new `stage`",
      ],
    };
  }
}
