import type { Build } from "../../model/build.ts";
import { curesOf, sessionsOf } from "../../model/build.ts";
import type { AsOf } from "../../model/calendar.ts";
import { addDays } from "../../model/calendar.ts";
import type { Cure } from "../../model/cure.ts";
import type { Session, WorkKind } from "../../model/session.ts";
import type { CureState } from "../analysis.ts";
import { countBefore } from "../count-before.ts";
import { grouped } from "../grouped.ts";

/** Kinds of work that do not load a joint. */
const idleKinds: readonly WorkKind[] = ["study", "inspect"];

/**
 * Every cure as of the end of the day of judgement, in the order entered.
 *
 * A cure is broken by a session on the same step that begins once the joint is closed (after
 * the mix, where no closing is given) and before the cure is ready; beginning at the very
 * minute it is ready is in time. Work between mix and closing is the fastening itself. Study
 * and inspection load nothing. A session with hours alone counts as beginning with its day: on
 * the day of the mix it is the work that led to it, on a later day nothing shows that it waited.
 *
 * @param build Days oldest first.
 */
export function curesLedger(build: Build, asOf: AsOf): CureState[] {
  const working = sessionsOf(build).filter(({ kind }) => !idleKinds.includes(kind));
  const byStep = grouped(working, ({ step }) => step);
  return curesOf(build).map((cure) => ({
    cure,
    over: cure.ready.epochMinutes < asOf.endEpochMinutes,
    brokenBy: sessionsAround(cure, byStep.get(cure.step) ?? []).filter((session) =>
      beginsDuring(session, cure),
    ),
  }));
}

// A session may begin after midnight of the day it is entered under, hence one day of slack.
function sessionsAround(cure: Cure, sessions: readonly Session[]): readonly Session[] {
  const first = addDays(cure.mixed.local.slice(0, 10), -1);
  const last = cure.ready.local.slice(0, 10);
  return sessions.slice(countBefore(sessions, first), countBefore(sessions, addDays(last, 1)));
}

function beginsDuring(session: Session, { mixed, closed, ready }: Cure): boolean {
  if (session.from) {
    const begun = session.from.epochMinutes;
    if (begun >= ready.epochMinutes) return false;
    return closed ? begun >= closed.epochMinutes : begun > mixed.epochMinutes;
  }
  const begun = `${session.date} 00:00`;
  if (begun >= ready.local) return false;
  return closed ? begun >= closed.local : begun > mixed.local;
}
