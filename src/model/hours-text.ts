import type { Minutes } from "./calendar.ts";

/**
 * Hours and minutes as they are typed in an entry: `412:35`, `0:05`. Nothing is rounded.
 *
 * @param minutes Whole minutes; a negative number gets a leading `-`.
 * @example hoursText(24755) // "412:35"
 */
export function hoursText(minutes: Minutes): string {
  const size = Math.abs(minutes);
  const clock = `${Math.floor(size / 60)}:${String(size % 60).padStart(2, "0")}`;
  return minutes < 0 ? `-${clock}` : clock;
}
