import { DateTime, IANAZone } from "luxon";
import {
  type AsOf,
  addDays,
  type CalendarDate,
  type Minutes,
  type Moment,
} from "../model/calendar.ts";
import type { Span } from "../model/diagnostic.ts";
import type { ClockNode } from "./clock-syntax.ts";
import type { Faults } from "./faults.ts";

/** Turns the wall clock of one IANA zone into points in time, and never guesses. */
export class ZoneClock {
  readonly #dayStarts = new Map<CalendarDate, Minutes>();

  /** @param zone A zone that `isZone` accepts. */
  constructor(readonly zone: string) {}

  /**
   * A time of day on a date.
   * @returns `undefined` with a fault when the clock skips that time (`time-in-gap`), or shows
   *   it twice and no offset says which is meant (`time-in-fold`).
   */
  moment(date: CalendarDate, clock: ClockNode, faults: Faults): Moment | undefined {
    const days = clock.minuteOfDay === 1440 ? 1 : 0;
    const on = addDays(date, days);
    const minuteOfDay = clock.minuteOfDay - days * 1440;
    // On a day without a change of the clocks, minutes simply count from its beginning.
    if (this.dayLength(on) === 1440 && clock.offset === undefined) {
      return {
        epochMinutes: this.#dayStart(on) + minuteOfDay,
        local: `${on} ${twoDigits(Math.floor(minuteOfDay / 60))}:${twoDigits(minuteOfDay % 60)}`,
      };
    }
    const wall = this.#wall(on, minuteOfDay);
    const { span, text } = clock.node;
    if (wall.hour * 60 + wall.minute !== minuteOfDay) {
      return faults.add("time-in-gap", span, {
        message: `the clocks in ${this.zone} skip \`${text}\` on ${on}`,
        label: "this time does not exist",
        help: [
          "write the time that the shop clock showed, or give `hours` in place of `from` and `to`",
        ],
      });
    }
    const possible = wall.getPossibleOffsets();
    if (clock.offset !== undefined) return this.#withOffset(possible, clock.offset, span, faults);
    if (possible.length > 1) {
      const offsets = possible.map((each) => each.toFormat("ZZ"));
      return faults.add("time-in-fold", span, {
        message: `the clocks in ${this.zone} show \`${text}\` twice on ${on}`,
        label: "the first or the second time?",
        help: [
          `write the offset behind it: \`"${wall.toFormat("HH:mm")}${offsets[0]}"\` for the first, \`"${wall.toFormat("HH:mm")}${offsets[1]}"\` for the second`,
          "or give `hours` in place of `from` and `to`",
        ],
      });
    }
    return momentOf(wall);
  }

  /** How many minutes the day has: 1440, or an hour less or more when the clocks change. */
  dayLength(date: CalendarDate): Minutes {
    return this.#dayStart(addDays(date, 1)) - this.#dayStart(date);
  }

  /** The day a journal is judged on, with its end in this zone. */
  asOf(date: CalendarDate): AsOf {
    return { date, endEpochMinutes: this.#dayStart(addDays(date, 1)) };
  }

  #withOffset(
    possible: readonly DateTime[],
    offset: Minutes,
    span: Span,
    faults: Faults,
  ): Moment | undefined {
    const meant = possible.find((each) => each.offset === offset);
    if (meant) return momentOf(meant);
    const offsets = possible.map((each) => each.toFormat("ZZ")).join(" or ");
    return faults.add("not-a-time", span, {
      message: `${this.zone} is not at that offset then`,
      notes: [`the offset is ${offsets}`],
      help: [`write ${offsets}, or leave the offset out`],
    });
  }

  #dayStart(date: CalendarDate): Minutes {
    let start = this.#dayStarts.get(date);
    if (start === undefined) {
      start = Math.floor(this.#wall(date, 0).startOf("day").toMillis() / 60_000);
      this.#dayStarts.set(date, start);
    }
    return start;
  }

  #wall(date: CalendarDate, minuteOfDay: Minutes): DateTime {
    const [year, month, day] = date.split("-").map(Number) as [number, number, number];
    return DateTime.fromObject(
      { year, month, day, hour: Math.floor(minuteOfDay / 60), minute: minuteOfDay % 60 },
      { zone: this.zone },
    );
  }
}

function twoDigits(number: number): string {
  return String(number).padStart(2, "0");
}

/** Whether this machine knows an IANA zone of that name. */
export function isZone(name: string): boolean {
  return IANAZone.isValidZone(name);
}

/** The calendar date it is now in a zone. `now` comes from the caller: reading has no clock. */
export function dateIn(zone: string, now: Date): CalendarDate {
  return DateTime.fromJSDate(now, { zone }).toFormat("yyyy-MM-dd");
}

/**
 * The wall clock in a zone as `YYYY-MM-DD HH:MM`, as an entry says it: with the offset behind it
 * in the hour that the clock shows twice. `now` comes from the caller.
 */
export function clockIn(zone: string, now: Date): string {
  const wall = DateTime.fromJSDate(now, { zone });
  const twice = wall.getPossibleOffsets().length > 1;
  return wall.toFormat(twice ? "yyyy-MM-dd HH:mmZZ" : "yyyy-MM-dd HH:mm");
}

function momentOf(at: DateTime): Moment {
  return {
    epochMinutes: Math.floor(at.toMillis() / 60_000),
    local: at.toFormat("yyyy-MM-dd HH:mm"),
  };
}
