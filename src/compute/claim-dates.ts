import type { TaskClaim } from "./ledgers/portion.ts";

const most = 3;

/**
 * The days of some sessions for a message, each once: the first three by name, the others as a
 * number.
 * @param claims Oldest first.
 * @example "2026-04-18, 2026-04-19"
 */
export function claimDates(claims: readonly Pick<TaskClaim, "date">[]): string {
  const dates = [...new Set(claims.map(({ date }) => date))];
  const rest = dates.length - most;
  return `${dates.slice(0, most).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
}
