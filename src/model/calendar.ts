/** A calendar day as `YYYY-MM-DD`: no clock and no time zone. Compares as text. */
export type CalendarDate = string;

/** A calendar month as `YYYY-MM`. Compares as text. */
export type CalendarMonth = string;

/** Whole minutes; never a fraction of an hour. */
export type Minutes = number;

/** A clock time in the project's zone, resolved to a point in time. */
export interface Moment {
  /** Whole minutes since 1970-01-01T00:00Z. */
  readonly epochMinutes: number;
  /** The wall clock of the project's zone, `YYYY-MM-DD HH:MM`. */
  readonly local: string;
}

/** The day a journal is judged on. */
export interface AsOf {
  readonly date: CalendarDate;
  /** The last minute that belongs to that day in the project's zone (exclusive end). */
  readonly endEpochMinutes: number;
}

/** The month of a day: `2026-03-14` is in `2026-03`. */
export function monthOf(date: CalendarDate): CalendarMonth {
  return date.slice(0, 7);
}

/**
 * Whole days from one date to another: 0 for the same day, negative when `to` is earlier.
 * Counts calendar days, so clock changes do not matter.
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

/**
 * A date moved by whole days.
 * @example addDays("2024-02-28", 2) // "2024-03-01"
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return fromDayNumber(dayNumber(date) + days);
}

/**
 * Whether the text is a date that exists: four, two and two digits, leap years as in the
 * Gregorian calendar (ISO 8601-1:2019, 5.2.2.1, extended format).
 */
export function isCalendarDate(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && fromDayNumber(dayNumber(text)) === text;
}

// Days since 1970-01-01 of the proleptic Gregorian calendar. UTC has no clock changes,
// so the platform's UTC arithmetic is exact here.
function dayNumber(date: CalendarDate): number {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number];
  return Math.round(Date.UTC(year, month - 1, day) / 86_400_000);
}

function fromDayNumber(number: number): CalendarDate {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}
