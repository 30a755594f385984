import type { Build } from "../../model/build.ts";
import { holdsOf, releasesOf } from "../../model/build.ts";
import type { Hold, Release } from "../../model/hold.ts";
import type { HoldState } from "../analysis.ts";
import { countBefore } from "../count-before.ts";
import { grouped } from "../grouped.ts";

/**
 * Every hold with the first release that ended it, in the order made. A release that names a
 * step ends all holds of that step made on or before its date; one dated before the hold ends
 * nothing.
 *
 * @param build Days oldest first.
 */
export function holdsLedger(build: Build): HoldState[] {
  const releases = releasesOf(build);
  const byHold = grouped(releases, ({ hold }) => hold);
  const byStep = grouped(releases, ({ step }) => step);
  return holdsOf(build).map((hold) => {
    const own = firstFor(hold, byHold.get(hold.id));
    const ofStep = firstFor(hold, byStep.get(hold.step));
    const released = own && ofStep ? (own.date <= ofStep.date ? own : ofStep) : (own ?? ofStep);
    return { hold, ...(released ? { released } : {}) };
  });
}

function firstFor(hold: Hold, releases: readonly Release[] = []): Release | undefined {
  return releases[countBefore(releases, hold.date)];
}
