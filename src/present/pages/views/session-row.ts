import { kindsApart, type Session } from "../../../model/session.ts";
import { hoursText } from "../../format/hours.ts";
import type { Links } from "../links.ts";
import type { Link, Mention, Sum } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";
import { lotText } from "./cure-view.ts";
import { type Struck, struck } from "./struck.ts";

/** One session as a row of a table. */
export interface SessionRow {
  readonly number: number;
  /** Where it stands on the sheet of its day: `s-3`. */
  readonly anchor: string;
  /** The day, leading to the session's row on its sheet. */
  readonly day: Mention;
  /** `18:40 to 21:05`, `23:10 to 00:30 next day`; absent when only hours were typed. */
  readonly when?: string;
  readonly assembly: Link;
  readonly step?: Link;
  readonly stepTitle?: string;
  /** Each with the role, when it is not the builder's. */
  readonly who: readonly string[];
  readonly kind: Session["kind"];
  /** Minutes times people, `2:30`: what the session adds to the totals. */
  readonly hours: string;
  /** Which total that is. */
  readonly of: Sum["of"];
  /** How it comes about, when more than one were present: `1:15 × 2`. */
  readonly product?: string;
  readonly stage?: string;
  readonly lots: readonly string[];
  readonly note?: string;
  /** What stood here before, by the value's name in the entry: `hours`. */
  readonly struck: readonly Struck[];
}

/** A session as the pages show it; `number` counts those of one page from 1. */
export function sessionRow(
  record: RecordIndex,
  links: Links,
  session: Session,
  number: number,
): SessionRow {
  const { from, to, step, who, minutes, stage, note } = session;
  const { build } = record.analysis;
  const anchor = record.anchorOfSession.get(session) ?? "";
  const stepTitle = step === undefined ? undefined : build.steps.get(step)?.title;
  return {
    number,
    anchor,
    day: links.day(session.date, anchor),
    ...(from && to ? { when: spanText(from.local, to.local) } : {}),
    assembly: links.assembly(session.assembly),
    ...(step === undefined ? {} : { step: links.step(step) }),
    ...(stepTitle === undefined ? {} : { stepTitle }),
    who: who.map(({ person, role }) => {
      const name = record.person(person, role);
      return role === "builder" || name === role ? name : `${name} (${role})`;
    }),
    kind: session.kind,
    hours: hoursText(minutes * who.length),
    of: kindsApart.includes(session.kind) ? "apart" : "build",
    ...(who.length > 1 ? { product: `${hoursText(minutes)} × ${who.length}` } : {}),
    ...(stage === undefined ? {} : { stage }),
    lots: session.lots.map((lot) => lotText(record, lot)),
    ...(note === undefined ? {} : { note }),
    struck: (record.amendmentsBySession.get(session) ?? []).map((each) => struck(links, each)),
  };
}

/** Two clock times of the shop, the second marked when it is on the next day. */
export function spanText(from: string, to: string): string {
  const next = from.slice(0, 10) === to.slice(0, 10) ? "" : " next day";
  return `${from.slice(11)} to ${to.slice(11)}${next}`;
}
