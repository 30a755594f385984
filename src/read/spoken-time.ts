import { addDays, type CalendarDate, isCalendarDate } from "../model/calendar.ts";

/**
 * Reads a time of day as people type it in a hurry: `18:40`, `1840`, `7.30`, `7,30`, `730p`,
 * `7:30 pm`, `19h`, `7`. Without a `p` or an `a` it is on the 24-hour clock.
 * @returns `HH:MM`, with `24:00` for midnight at the end of the day; `undefined` when it is no
 *   time of day.
 */
export function spokenTime(text: string): string | undefined {
  const typed = /^(\d{1,2}?)(?:[:.,h ]?(\d{2})|h)?\s*(?:([ap])\.?(?:m\.?)?)?$/i.exec(text.trim());
  if (!typed) return undefined;
  const half = typed[3]?.toLowerCase();
  let hour = Number(typed[1]);
  const minute = Number(typed[2] ?? 0);
  if (half && (hour < 1 || hour > 12)) return undefined;
  if (half === "p" && hour < 12) hour += 12;
  if (half === "a" && hour === 12) hour = 0;
  if (minute > 59 || hour > 24 || (hour === 24 && minute > 0)) return undefined;
  return `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

/**
 * Reads a duration as people type it: `1:15`, `1h15`, `1 h 15 min`, `90min`, `2h`, `1.25`, `1,5`.
 * A number alone is hours. Whether `1.30` is an hour and a half or 78 minutes nobody can tell:
 * of what could be minutes behind a point, only the quarters of an hour are read.
 * @returns `H:MM`, or `undefined` when it is none, nothing, doubtful, or not in whole minutes.
 */
export function spokenDuration(text: string): string | undefined {
  const minutes = minutesSpoken(text.trim().toLowerCase());
  if (minutes === undefined || !Number.isInteger(minutes) || minutes === 0) return undefined;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

function minutesSpoken(typed: string): number | undefined {
  const clock = /^(\d{0,3}):([0-5]\d)$/.exec(typed);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2]);
  const both =
    /^(\d{1,3}) ?(?:h|hrs?|hours?)(?: ?and)? ?(\d{1,2})(?: ?(?:m|mins?|minutes?))?$/.exec(typed);
  if (both) return Number(both[2]) < 60 ? Number(both[1]) * 60 + Number(both[2]) : undefined;
  const minutes = /^(\d{1,4}) ?(?:m|mins?|minutes?)$/.exec(typed);
  if (minutes) return Number(minutes[1]);
  const hours = /^(\d{1,3})(?:[.,](\d{1,2}))? ?(?:h|hrs?|hours?)?$/.exec(typed);
  if (!hours) return undefined;
  if (isDoubtful(hours[2] ?? "") && !/h/.test(typed)) return undefined;
  // Hundredths of an hour, so that nothing is rounded: 1.25 h is 75 minutes, 1.33 h is none.
  const hundredths = Number(hours[1]) * 100 + Number((hours[2] ?? "").padEnd(2, "0"));
  return (hundredths * 3) / 5;
}

// Two digits that could be minutes as well as hundredths.
function isDoubtful(digits: string): boolean {
  return digits.length === 2 && Number(digits) < 60 && !["00", "25", "50"].includes(digits);
}

/**
 * Reads a day as people name it: `2026-03-14`, `today`, `yesterday`.
 * @param today What `today` means, as `YYYY-MM-DD`.
 * @returns The date, or `undefined` when it is none of these, or does not exist.
 */
export function spokenDate(text: string, today: CalendarDate): CalendarDate | undefined {
  const typed = text.trim().toLowerCase();
  if (typed === "today") return today;
  if (typed === "yesterday") return addDays(today, -1);
  return isCalendarDate(typed) ? typed : undefined;
}
