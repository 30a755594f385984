import type { CalendarDate, Moment } from "../../model/calendar.ts";

/**
 * A point in time as RFC 3339 with the shop's own offset.
 * @example timestamp({ epochMinutes: 29561890, local: "2026-03-16 20:10" }) // "2026-03-16T20:10:00-06:00"
 */
export function timestamp({ epochMinutes, local }: Moment): string {
  const asIfUtc = Date.parse(`${local.replace(" ", "T")}:00Z`) / 60_000;
  const offset = asIfUtc - epochMinutes;
  const size = Math.abs(offset);
  const two = (value: number) => String(value).padStart(2, "0");
  const zone =
    offset === 0 ? "Z" : `${offset < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return `${local.replace(" ", "T")}:00${zone}`;
}

/** Noon UTC of a date: for a day of which no clock time is known anywhere. */
export function noonOf(date: CalendarDate): string {
  return `${date}T12:00:00Z`;
}
