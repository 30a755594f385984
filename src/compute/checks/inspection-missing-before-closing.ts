import { inspectionsOf, sessionsOf } from "../../model/build.ts";
import { addDays, type CalendarDate } from "../../model/calendar.ts";
import type { Diagnostic } from "../../model/diagnostic.ts";
import { placeText } from "../../model/diagnostic.ts";
import type { Inspection } from "../../model/inspection.ts";
import type { Session } from "../../model/session.ts";
import type { Ledgers } from "../check.ts";
import { countBefore } from "../count-before.ts";
import { grouped } from "../grouped.ts";
import { closedStage } from "../ledgers/steps.ts";

/**
 * Reports each closing of a step before all the looks it declares had come out clear. For each
 * look the newest inspection on or before the day of closing counts: one held after a clear one
 * stands against closing. A clear inspection after closing does not heal this, since the joint
 * was out of sight by then; it is noted.
 */
export function* inspectionMissingBeforeClosing({ build }: Ledgers): Generator<Diagnostic> {
  const sessions = grouped(sessionsOf(build), ({ step }) => step);
  const inspections = grouped(inspectionsOf(build), ({ step }) => step);
  for (const { id, looks } of build.steps.values()) {
    const byLook = grouped(inspections.get(id) ?? [], ({ look }) => look);
    for (const closing of closings(sessions.get(id) ?? [])) {
      const missing = looks
        .map((look) => ({ look, ofLook: byLook.get(look) ?? [] }))
        .filter(({ ofLook }) => newestBy(ofLook, closing.date)?.result !== "clear");
      if (missing.length === 0) continue;
      yield {
        code: "inspection-missing-before-closing",
        severity: "finding",
        span: closing.stageSpan ?? closing.span,
        message: `\`${id}\` was closed on ${closing.date} without a clear inspection of ${missing.map(({ look }) => `\`${look}\``).join(" and ")}`,
        label: "closed too early",
        notes: missing.flatMap(({ ofLook }) => lookNotes(ofLook, closing.date)),
        help: [
          "if somebody looked before it was closed, add that inspection to the entry of that day",
          "otherwise open the step again, have it looked at, and book the work as `rework`",
        ],
        ...(closing.private ? { private: true } : {}),
      };
    }
  }
}

// A run of sessions typed as closed is one closing: the first of them.
function closings(sessions: readonly Session[]): Session[] {
  const staged = sessions.filter(({ stage }) => stage !== undefined);
  return staged.filter(
    ({ stage }, index) => stage === closedStage && staged[index - 1]?.stage !== closedStage,
  );
}

function newestBy(inspections: readonly Inspection[], date: CalendarDate): Inspection | undefined {
  return inspections[countBefore(inspections, addDays(date, 1)) - 1];
}

function lookNotes(inspections: readonly Inspection[], closed: CalendarDate): string[] {
  const newest = newestBy(inspections, closed);
  const later = inspections.find(({ date, result }) => date > closed && result === "clear");
  return [
    ...(newest
      ? [
          `the newest inspection of \`${newest.look}\` by then, on ${newest.date}, held it: ${placeText(newest.span)}`,
        ]
      : []),
    ...(later
      ? [
          `a later inspection of \`${later.look}\`, on ${later.date}, was clear: ${placeText(later.span)}`,
        ]
      : []),
  ];
}
