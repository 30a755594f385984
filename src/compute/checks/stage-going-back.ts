import { sessionsOf } from "../../model/build.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Ledgers } from "../check.ts";
import { grouped } from "../grouped.ts";
import { closedStage } from "../ledgers/steps.ts";

/** Stages at which a joint is fastened for good and comes apart only by undoing it. */
const lastingStages = ["riveted", "bonded", "sealed"];

/**
 * Reports each step that goes back from fastened for good, or from closed, to an earlier stage
 * in a session that is not `rework`. Going back and forth before that is ordinary work: a row is
 * clecoed, drilled, taken apart, deburred, primed and clecoed again. So is riveting what was
 * sealed.
 */
export function* stageGoingBack({ build }: Ledgers): Generator<Diagnostic> {
  const ranks = new Map(build.project.stages.map((stage, rank) => [stage, rank]));
  const rankOf = (stage: string | undefined) =>
    stage === undefined ? -1 : (ranks.get(stage) ?? -1);
  const lasting = Math.min(
    ...lastingStages.map((stage) => ranks.get(stage) ?? Number.POSITIVE_INFINITY),
  );

  for (const [step, sessions] of grouped(sessionsOf(build), (session) => session.step)) {
    const staged = sessions.filter(({ stage }) => stage !== undefined);
    for (const [index, session] of staged.entries()) {
      const before = staged[index - 1];
      const from = rankOf(before?.stage);
      const to = rankOf(session.stage);
      if (!before || session.kind === "rework" || to < 0 || to >= from) continue;
      const undone = from >= lasting && to < lasting;
      if (!undone && before.stage !== closedStage) continue;
      yield {
        code: "stage-going-back",
        severity: "finding",
        span: session.stageSpan ?? session.span,
        message: `\`${step}\` goes back from ${before.stage} to ${session.stage} without rework`,
        label: `was ${before.stage} on ${before.date}`,
        notes: [`${before.stage}: ${placeText(before.stageSpan ?? before.span)}`],
        help: [
          "if the joint was undone, book the session as `kind: rework`",
          "if only part of the step had come so far, correct the earlier `stage`, or split the step",
        ],
        ...(session.private ? { private: true } : {}),
      };
    }
  }
}
