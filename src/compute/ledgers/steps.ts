import type { Step } from "../../model/assembly.ts";
import type { Build } from "../../model/build.ts";
import { inspectionsOf, sessionsOf } from "../../model/build.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Session } from "../../model/session.ts";
import type { LookState, StepState } from "../analysis.ts";
import { grouped } from "../grouped.ts";

/** The stage from which a step is out of sight, and its looks must be behind it. */
export const closedStage = "closed";

/**
 * Where every declared step stands, by step id, in the order declared. The stage is the last
 * one typed, by date and then by order within the day; `firstDate` and `lastDate` are those of
 * its sessions.
 *
 * @param build Days oldest first.
 */
export function stepsLedger(build: Build): Map<string, StepState> {
  const sessions = grouped(sessionsOf(build), ({ step }) => step);
  const inspections = grouped(inspectionsOf(build), ({ step }) => step);
  return new Map(
    Array.from(build.steps.values(), (step) => [
      step.id,
      stepState(step, sessions.get(step.id) ?? [], inspections.get(step.id) ?? []),
    ]),
  );
}

function stepState(
  step: Step,
  sessions: readonly Session[],
  inspections: readonly Inspection[],
): StepState {
  const staged = sessions.findLast(({ stage }) => stage !== undefined);
  const first = sessions.at(0);
  const last = sessions.at(-1);
  return {
    step: step.id,
    ...(staged?.stage === undefined ? {} : { stage: staged.stage, stageDate: staged.date }),
    looks: step.looks.map((look) => lookState(look, inspections)),
    ...(first ? { firstDate: first.date } : {}),
    ...(last ? { lastDate: last.date } : {}),
  };
}

function lookState(look: string, inspections: readonly Inspection[]): LookState {
  const inspection = inspections.findLast((each) => each.look === look);
  if (!inspection) return { look, done: false };
  return { look, inspection, done: inspection.result === "clear" };
}
