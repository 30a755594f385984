import type { Build } from "../model/build.ts";
import type { AsOf } from "../model/calendar.ts";
import type { Day } from "../model/day.ts";
import { byPlace, type Diagnostic } from "../model/diagnostic.ts";
import type { Analysis } from "./analysis.ts";
import type { Ledgers } from "./check.ts";
import { checks } from "./checks/index.ts";
import { alterationLedger } from "./ledgers/alteration.ts";
import { balanceLedger } from "./ledgers/balance.ts";
import { curesLedger } from "./ledgers/cures.ts";
import { deviationsLedger } from "./ledgers/deviations.ts";
import { helpLedger } from "./ledgers/help.ts";
import { holdsLedger } from "./ledgers/holds.ts";
import { hoursLedger } from "./ledgers/hours.ts";
import { instrumentsLedger } from "./ledgers/instruments.ts";
import { layoutsLedger } from "./ledgers/layouts.ts";
import { lotsLedger } from "./ledgers/lots.ts";
import { portionLedger } from "./ledgers/portion.ts";
import { readingsLedger } from "./ledgers/readings.ts";
import { squawksLedger } from "./ledgers/squawks.ts";
import { stepsLedger } from "./ledgers/steps.ts";

/**
 * Computes everything there is to show from a build: runs the ledgers, then the checks. The one
 * way in. The build is left as it was, and the same build gives the same analysis whatever the
 * order of its days.
 *
 * Amendments are expected to be in force already: the values of a build are the corrected ones.
 *
 * @param build What reading returned. Every reading and its rule measure the same dimension;
 *   reading reports and leaves out the others.
 * @param asOf The day of judgement, for cures, lots, instruments and dates in the future.
 * @returns The analysis; its `build` has the days oldest first, its diagnostics are in order of
 *   place. Those from a private day are private.
 */
export function analyze(build: Build, asOf: AsOf): Analysis {
  const ordered = inOrderOfDate(build);
  const hours = hoursLedger(ordered);
  const portion = portionLedger(ordered);
  const help = helpLedger(ordered, hours.lines);
  const balance = ordered.balance && balanceLedger(ordered.balance);
  const alteration = alterationLedger(ordered, balance);
  const ledgers: Ledgers = {
    build: ordered,
    asOf,
    hours,
    readings: readingsLedger(ordered),
    cures: curesLedger(ordered, asOf),
    holds: holdsLedger(ordered),
    squawks: squawksLedger(ordered),
    deviations: deviationsLedger(ordered),
    steps: stepsLedger(ordered),
    layouts: layoutsLedger(ordered),
    lots: lotsLedger(ordered, asOf),
    instruments: instrumentsLedger(ordered, asOf),
    ...(balance ? { balance } : {}),
    ...(portion ? { portion } : {}),
    ...(help ? { help } : {}),
    ...(alteration ? { alteration } : {}),
  };
  const privateFiles = new Set(ordered.days.filter((day) => day.private).map(({ file }) => file));
  const diagnostics: Diagnostic[] = [];
  for (const check of Object.values(checks)) {
    for (const found of check(ledgers)) {
      diagnostics.push(privateFiles.has(found.span.file) ? { ...found, private: true } : found);
    }
  }
  return { ...ledgers, diagnostics: diagnostics.sort(byPlace) };
}

function inOrderOfDate(build: Build): Build {
  return { ...build, days: build.days.toSorted(byDate) };
}

function byDate(a: Day, b: Day): number {
  if (a.date === b.date) return 0;
  return a.date < b.date ? -1 : 1;
}
