import type { CalendarDate, Minutes, Moment } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";
import type { Role } from "./person.ts";

/** Which kind of work a session was. */
export const workKinds = ["fabricate", "assemble", "inspect", "rework", "study", "shop"] as const;
export type WorkKind = (typeof workKinds)[number];

/** Kinds that are totalled apart from the hours of the build itself. */
export const kindsApart: readonly WorkKind[] = ["study", "shop"];

/** One person at one session, in one role. */
export interface Attendance {
  readonly person: string;
  readonly role: Role;
}

/** Who worked on what, from when to when, and as which kind of work. */
export interface Session {
  readonly date: CalendarDate;
  readonly assembly: string;
  readonly step?: string;
  readonly who: readonly Attendance[];
  readonly kind: WorkKind;
  /** Elapsed minutes; each person present is credited with all of them. */
  readonly minutes: Minutes;
  /** Both or neither. `to` may fall on the next day. */
  readonly from?: Moment;
  readonly to?: Moment;
  /** How far the step's joint was at the end. */
  readonly stage?: string;
  /** Ids of lots used up in this session. */
  readonly lots: readonly string[];
  /** Ids of the tasks of the major-portion sheet that the session is evidence of; absent: none. */
  readonly tasks?: readonly string[];
  readonly note?: string;
  readonly private: boolean;
  readonly span: Span;
  /** Where the stage was typed, when there is one. */
  readonly stageSpan?: Span;
  /** Where the hours, or the `from`, were typed. */
  readonly minutesSpan: Span;
  /** Where each lot was typed, in the order of `lots`. */
  readonly lotSpans: readonly Span[];
}
