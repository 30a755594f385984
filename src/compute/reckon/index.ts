import { balanceSum } from "./balance.ts";
import { ballastSum } from "./ballast.ts";
import { bendAllowanceSum } from "./bend-allowance.ts";
import { conformitySum } from "./conformity.ts";
import { convertSum } from "./convert.ts";
import { countersinkSum } from "./countersink.ts";
import { cureSum } from "./cure.ts";
import { drainSum } from "./drain.ts";
import { drillSum } from "./drill.ts";
import { flatPatternSum } from "./flat-pattern.ts";
import { inspectionRiskSum } from "./inspection-risk.ts";
import { meanChordSum } from "./mean-chord.ts";
import { minimumFuelSum } from "./minimum-fuel.ts";
import { rivetLengthSum } from "./rivet-length.ts";
import { rivetRowSum } from "./rivet-row.ts";
import { setbackSum } from "./setback.ts";
import { shelfLifeSum } from "./shelf-life.ts";
import { shopHeadSum } from "./shop-head.ts";
import { spliceSum } from "./splice.ts";
import type { Sum } from "./sum.ts";
import { torqueSum } from "./torque.ts";
import { travelSum } from "./travel.ts";
import { weightShiftSum } from "./weight-shift.ts";
import { wheelBalanceSum } from "./wheel-balance.ts";

/** Every sum, in the order in which they are listed. */
export const sums: readonly Sum[] = [
  convertSum,
  drillSum,
  rivetLengthSum,
  rivetRowSum,
  shopHeadSum,
  spliceSum,
  countersinkSum,
  setbackSum,
  bendAllowanceSum,
  flatPatternSum,
  torqueSum,
  travelSum,
  cureSum,
  shelfLifeSum,
  conformitySum,
  inspectionRiskSum,
  balanceSum,
  wheelBalanceSum,
  weightShiftSum,
  ballastSum,
  meanChordSum,
  drainSum,
  minimumFuelSum,
];
