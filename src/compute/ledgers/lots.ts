import type { Build } from "../../model/build.ts";
import type { AsOf } from "../../model/calendar.ts";
import { daysBetween } from "../../model/calendar.ts";
import { expiryOn } from "../../model/lot.ts";
import type { LotState } from "../analysis.ts";

/**
 * Every declared lot as known on the day of judgement, in the order declared, with the days it
 * was used: by sessions and by cures, oldest first. The day of expiry itself is still good.
 *
 * @param build Days oldest first.
 */
export function lotsLedger(build: Build, asOf: AsOf): LotState[] {
  const uses = new Map<string, LotState["uses"][number][]>();
  for (const id of build.lots.keys()) uses.set(id, []);
  for (const { sessions, cures } of build.days) {
    for (const { date, lots, lotSpans, span } of sessions) {
      lots.forEach((id, index) => {
        uses.get(id)?.push({ date, span: lotSpans[index] ?? span });
      });
    }
    for (const { date, lot, lotSpan, span } of cures) {
      if (lot !== undefined) uses.get(lot)?.push({ date, span: lotSpan ?? span });
    }
  }
  return Array.from(build.lots.values(), (lot) => {
    const expiry = expiryOn(lot, asOf.date);
    const known = { lot, uses: uses.get(lot.id) ?? [] };
    if (expiry === undefined) return { ...known, expired: false };
    return {
      ...known,
      expiry,
      expired: expiry < asOf.date,
      daysLeft: daysBetween(asOf.date, expiry),
    };
  });
}
