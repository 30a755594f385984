import type { Check } from "../check.ts";
import { claimWithoutEvidence } from "./claim-without-evidence.ts";
import { creditForSalvage } from "./credit-for-salvage.ts";
import { deviationWithoutDisposition } from "./deviation-without-disposition.ts";
import { emptyWeightNotAboveZero } from "./empty-weight-not-above-zero.ts";
import { expiredLot } from "./expired-lot.ts";
import { futureDate } from "./future-date.ts";
import { holdOnClosedStep } from "./hold-on-closed-step.ts";
import { impossibleOrder } from "./impossible-order.ts";
import { inspectionMissingBeforeClosing } from "./inspection-missing-before-closing.ts";
import { kitShareWithoutSource } from "./kit-share-without-source.ts";
import { lapsedCalibration } from "./lapsed-calibration.ts";
import { layoutBreaksRule } from "./layout-breaks-rule.ts";
import { limitsNotKnown } from "./limits-not-known.ts";
import { loadingOutsideEnvelope } from "./loading-outside-envelope.ts";
import { moreThanADay } from "./more-than-a-day.ts";
import { openSquawkOnClosedStep } from "./open-squawk-on-closed-step.ts";
import { outsideTheTable } from "./outside-the-table.ts";
import { overlappingSessions } from "./overlapping-sessions.ts";
import { paidShareDiffersFromHelp } from "./paid-share-differs-from-help.ts";
import { paidWorkWithoutShare } from "./paid-work-without-share.ts";
import { readingNotProven } from "./reading-not-proven.ts";
import { readingOutOfLimits } from "./reading-out-of-limits.ts";
import { rowDoesNotFit } from "./row-does-not-fit.ts";
import { sealedTotalDiffers } from "./sealed-total-differs.ts";
import { stageGoingBack } from "./stage-going-back.ts";
import { totalDiffers } from "./total-differs.ts";
import { workBeforeCure } from "./work-before-cure.ts";
import { workOnInapplicableTask } from "./work-on-inapplicable-task.ts";
import { workUnlikeTheClaim } from "./work-unlike-the-claim.ts";

/**
 * Every check by name, in the order they run: first whether the journal can be believed
 * (errors), then what the aircraft wants looked at (findings).
 */
export const checks = {
  "future-date": futureDate,
  "impossible-order": impossibleOrder,
  "overlapping-sessions": overlappingSessions,
  "more-than-a-day": moreThanADay,
  "total-differs": totalDiffers,
  "sealed-total-differs": sealedTotalDiffers,
  "limits-not-known": limitsNotKnown,
  "empty-weight-not-above-zero": emptyWeightNotAboveZero,
  "reading-out-of-limits": readingOutOfLimits,
  "reading-not-proven": readingNotProven,
  "outside-the-table": outsideTheTable,
  "row-does-not-fit": rowDoesNotFit,
  "layout-breaks-rule": layoutBreaksRule,
  "lapsed-calibration": lapsedCalibration,
  "expired-lot": expiredLot,
  "work-before-cure": workBeforeCure,
  "stage-going-back": stageGoingBack,
  "inspection-missing-before-closing": inspectionMissingBeforeClosing,
  "hold-on-closed-step": holdOnClosedStep,
  "open-squawk-on-closed-step": openSquawkOnClosedStep,
  "deviation-without-disposition": deviationWithoutDisposition,
  "loading-outside-envelope": loadingOutsideEnvelope,
  "claim-without-evidence": claimWithoutEvidence,
  "work-unlike-the-claim": workUnlikeTheClaim,
  "paid-work-without-share": paidWorkWithoutShare,
  "paid-share-differs-from-help": paidShareDiffersFromHelp,
  "credit-for-salvage": creditForSalvage,
  "kit-share-without-source": kitShareWithoutSource,
  "work-on-inapplicable-task": workOnInapplicableTask,
} as const satisfies Readonly<Record<string, Check>>;

/** The name of a check, which is also the code of its diagnostics. */
export type CheckName = keyof typeof checks;
