import type { Minutes } from "../../model/calendar.ts";

export { hoursText } from "../../model/hours-text.ts";

/**
 * Hours and minutes in words, for screen readers and sentences: `1 hour 15 minutes`,
 * `2 hours`, `no time`. Nothing is rounded.
 *
 * @param minutes Whole minutes; a negative number gets a leading `minus`.
 * @example hoursInWords(75) // "1 hour 15 minutes"
 */
export function hoursInWords(minutes: Minutes): string {
  const size = Math.abs(minutes);
  const parts = [counted(Math.floor(size / 60), "hour"), counted(size % 60, "minute")];
  const words = parts.filter((part) => part !== undefined).join(" ") || "no time";
  return minutes < 0 ? `minus ${words}` : words;
}

function counted(count: number, unit: string): string | undefined {
  if (count === 0) return undefined;
  return `${count} ${unit}${count === 1 ? "" : "s"}`;
}
