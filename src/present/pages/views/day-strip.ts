import type { Day } from "../../../model/day.ts";
import type { Session, WorkKind } from "../../../model/session.ts";
import { type Percent, percent } from "./measurement-strip.ts";

/** One session on the strip, numbered as in the table below it. */
export interface StripBar {
  readonly number: number;
  readonly x: Percent;
  readonly width: Percent;
  /** Where its number stands. */
  readonly middle: Percent;
  readonly kind: WorkKind;
  /** Row on the strip, from 0: sessions at the same time lie above one another. */
  readonly lane: number;
  /** True when it went on after midnight and is cut off at the day's end. */
  readonly cut: boolean;
}

/** A calendar day, midnight to midnight on the shop's clock, and who worked when. */
export interface DayStrip {
  /** Every sixth hour, by its number. */
  readonly hours: readonly { readonly x: Percent; readonly label: string }[];
  readonly bars: readonly StripBar[];
  readonly lanes: number;
}

/**
 * The strip of a day; `undefined` when no session says when it was.
 *
 * The hours are the wall clock's. A day on which the clocks change is drawn as 24 hours all
 * the same: a bar then begins and ends where the clock stood.
 *
 * @param sessions Those to be drawn, with the numbers of their rows.
 */
export function dayStrip(
  day: Day,
  sessions: readonly { readonly number: number; readonly session: Session }[],
): DayStrip | undefined {
  const bars: StripBar[] = [];
  const laneEnds: number[] = [];
  for (const { number, session } of sessions) {
    const { from, to, kind } = session;
    if (!from || !to) continue;
    const begins = minuteOfDay(from.local);
    const cut = to.local.slice(0, 10) !== day.date;
    const ends = cut ? 1440 : minuteOfDay(to.local);
    const free = laneEnds.findIndex((end) => end <= begins);
    const lane = free === -1 ? laneEnds.length : free;
    laneEnds[lane] = ends;
    bars.push({
      number,
      x: percent(begins / 14.4),
      width: percent(Math.max(0.4, (ends - begins) / 14.4)),
      middle: percent((begins + ends) / 28.8),
      kind,
      lane,
      cut,
    });
  }
  if (bars.length === 0) return undefined;
  return {
    hours: [0, 6, 12, 18, 24].map((hour) => ({
      x: percent(hour / 0.24),
      label: String(hour).padStart(2, "0"),
    })),
    bars,
    lanes: laneEnds.length,
  };
}

function minuteOfDay(local: string): number {
  return Number(local.slice(11, 13)) * 60 + Number(local.slice(14, 16));
}
