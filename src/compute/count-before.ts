import type { CalendarDate } from "../model/calendar.ts";

/**
 * How many of some dated things are dated before a day, which is also the index of the first
 * one on or after it.
 *
 * @param things Oldest first.
 */
export function countBefore(
  things: readonly { readonly date: CalendarDate }[],
  date: CalendarDate,
): number {
  let low = 0;
  let high = things.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((things[middle]?.date ?? date) < date) low = middle + 1;
    else high = middle;
  }
  return low;
}
