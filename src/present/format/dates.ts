import type { CalendarDate, CalendarMonth, Moment } from "../../model/calendar.ts";
import { daysBetween } from "../../model/calendar.ts";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];
const weekdays = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/**
 * A date in words.
 * @example dateText("2026-03-14") // "14 March 2026"
 */
export function dateText(date: CalendarDate): string {
  return `${Number(date.slice(8, 10))} ${monthText(date.slice(0, 7))}`;
}

/**
 * A date in words with its day of the week.
 * @example dateWithWeekday("2026-03-14") // "Saturday 14 March 2026"
 */
export function dateWithWeekday(date: CalendarDate): string {
  return `${weekdayText(date)} ${dateText(date)}`;
}

/**
 * A date without its year, the month cut to three letters, where room is short.
 * @example shortDate("2026-03-14") // "14 Mar"
 */
export function shortDate(date: CalendarDate): string {
  return `${Number(date.slice(8, 10))} ${monthName(date).slice(0, 3)}`;
}

/** The day of the week in the Gregorian calendar: `Saturday`. */
export function weekdayText(date: CalendarDate): string {
  // 1970-01-05 was a Monday.
  const days = daysBetween("1970-01-05", date);
  return weekdays[((days % 7) + 7) % 7] ?? "";
}

/**
 * A month in words.
 * @example monthText("2026-03") // "March 2026"
 */
export function monthText(month: CalendarMonth): string {
  return `${monthName(month)} ${month.slice(0, 4)}`;
}

/**
 * A point in time as the shop's clock showed it, on the 24-hour clock.
 * @example momentText({ epochMinutes: 29561890, local: "2026-03-16 20:10" }) // "16 March 2026, 20:10"
 */
export function momentText({ local }: Moment): string {
  return `${dateText(local.slice(0, 10))}, ${local.slice(11)}`;
}

/**
 * A number of days in words.
 * @example daysText(1) // "1 day"
 */
export function daysText(days: number): string {
  return `${days} ${Math.abs(days) === 1 ? "day" : "days"}`;
}

/**
 * How far one date is from another in words.
 * @example fromThen("2026-03-14", "2026-03-16") // "in 2 days"
 */
export function fromThen(then: CalendarDate, date: CalendarDate): string {
  const days = daysBetween(then, date);
  if (days === 0) return "the same day";
  return days > 0 ? `in ${daysText(days)}` : `${daysText(-days)} ago`;
}

function monthName(date: CalendarDate | CalendarMonth): string {
  return months[Number(date.slice(5, 7)) - 1] ?? "";
}
