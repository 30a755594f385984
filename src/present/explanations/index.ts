import { aliasOrAnchor } from "./alias-or-anchor.ts";
import { amendmentDoesNotMatch } from "./amendment-does-not-match.ts";
import { claimWithoutEvidence } from "./claim-without-evidence.ts";
import { codeFrontMatter } from "./code-front-matter.ts";
import { commentSwallowsText } from "./comment-swallows-text.ts";
import { creditForSalvage } from "./credit-for-salvage.ts";
import { dateDiffersFromFileName } from "./date-differs-from-file-name.ts";
import { deviationWithoutDisposition } from "./deviation-without-disposition.ts";
import { duplicateDay } from "./duplicate-day.ts";
import { duplicateId } from "./duplicate-id.ts";
import { duplicateKey } from "./duplicate-key.ts";
import { duplicateRow } from "./duplicate-row.ts";
import { emptyDay } from "./empty-day.ts";
import { emptyWeightNotAboveZero } from "./empty-weight-not-above-zero.ts";
import { entryAfterSeal } from "./entry-after-seal.ts";
import { expiredLot } from "./expired-lot.ts";
import type { Explanation } from "./explanation.ts";
import { forbiddenKey } from "./forbidden-key.ts";
import { frontMatterMissing } from "./front-matter-missing.ts";
import { frontMatterTooLarge } from "./front-matter-too-large.ts";
import { futureDate } from "./future-date.ts";
import { holdOnClosedStep } from "./hold-on-closed-step.ts";
import { identityDiffers } from "./identity-differs.ts";
import { impossibleOrder } from "./impossible-order.ts";
import { inspectionMissingBeforeClosing } from "./inspection-missing-before-closing.ts";
import { kitShareWithoutSource } from "./kit-share-without-source.ts";
import { lapsedCalibration } from "./lapsed-calibration.ts";
import { layoutBreaksRule } from "./layout-breaks-rule.ts";
import { limitsNotKnown } from "./limits-not-known.ts";
import { loadingOutsideEnvelope } from "./loading-outside-envelope.ts";
import { missingFile } from "./missing-file.ts";
import { missingKey } from "./missing-key.ts";
import { missingPhoto } from "./missing-photo.ts";
import { missingVideo } from "./missing-video.ts";
import { moreThanADay } from "./more-than-a-day.ts";
import { nameNotPortable } from "./name-not-portable.ts";
import { notAChoice } from "./not-a-choice.ts";
import { notADate } from "./not-a-date.ts";
import { notADuration } from "./not-a-duration.ts";
import { notALayout } from "./not-a-layout.ts";
import { notALink } from "./not-a-link.ts";
import { notANumber } from "./not-a-number.ts";
import { notAQuantity } from "./not-a-quantity.ts";
import { notASeal } from "./not-a-seal.ts";
import { notAShare } from "./not-a-share.ts";
import { notASplit } from "./not-a-split.ts";
import { notATable } from "./not-a-table.ts";
import { notATime } from "./not-a-time.ts";
import { notAZone } from "./not-a-zone.ts";
import { notAnAlteration } from "./not-an-alteration.ts";
import { notAnExpression } from "./not-an-expression.ts";
import { notAnId } from "./not-an-id.ts";
import { notCsv } from "./not-csv.ts";
import { notYaml } from "./not-yaml.ts";
import { openSquawkOnClosedStep } from "./open-squawk-on-closed-step.ts";
import { outsideTheTable } from "./outside-the-table.ts";
import { overlappingSessions } from "./overlapping-sessions.ts";
import { paidShareDiffersFromHelp } from "./paid-share-differs-from-help.ts";
import { paidWorkWithoutShare } from "./paid-work-without-share.ts";
import { pathLeavesJournal } from "./path-leaves-journal.ts";
import { portionOfAnAlteration } from "./portion-of-an-alteration.ts";
import { readingNotProven } from "./reading-not-proven.ts";
import { readingOutOfLimits } from "./reading-out-of-limits.ts";
import { rowDoesNotFit } from "./row-does-not-fit.ts";
import { ruleDoesNotWin } from "./rule-does-not-win.ts";
import { sealChainBroken } from "./seal-chain-broken.ts";
import { sealedEntryDiffers } from "./sealed-entry-differs.ts";
import { sealedEntryMissing } from "./sealed-entry-missing.ts";
import { sealedPhotoDiffers } from "./sealed-photo-differs.ts";
import { sealedPhotoMissing } from "./sealed-photo-missing.ts";
import { sealedTotalDiffers } from "./sealed-total-differs.ts";
import { stageGoingBack } from "./stage-going-back.ts";
import { timeInFold } from "./time-in-fold.ts";
import { timeInGap } from "./time-in-gap.ts";
import { totalDiffers } from "./total-differs.ts";
import { unknownKey } from "./unknown-key.ts";
import { unknownName } from "./unknown-name.ts";
import { unknownRuleSet } from "./unknown-rule-set.ts";
import { unmatchedReadings } from "./unmatched-readings.ts";
import { unpublishableVideo } from "./unpublishable-video.ts";
import { unreadablePhoto } from "./unreadable-photo.ts";
import { workBeforeCure } from "./work-before-cure.ts";
import { workOnInapplicableTask } from "./work-on-inapplicable-task.ts";
import { workUnlikeTheClaim } from "./work-unlike-the-claim.ts";
import { wrongDimension } from "./wrong-dimension.ts";
import { wrongShape } from "./wrong-shape.ts";

/**
 * Every page: what reading finds, then what checks find, each in the order they run, then what
 * the photographs show.
 */
export const allExplanations: readonly Explanation[] = [
  missingFile,
  frontMatterMissing,
  frontMatterTooLarge,
  codeFrontMatter,
  notYaml,
  duplicateKey,
  forbiddenKey,
  aliasOrAnchor,
  commentSwallowsText,
  unknownKey,
  missingKey,
  wrongShape,
  notADate,
  notATime,
  timeInGap,
  timeInFold,
  notADuration,
  notANumber,
  notAChoice,
  notAnId,
  notAQuantity,
  notAnExpression,
  notATable,
  notAZone,
  wrongDimension,
  unknownName,
  unknownRuleSet,
  ruleDoesNotWin,
  unmatchedReadings,
  notALayout,
  duplicateId,
  duplicateDay,
  dateDiffersFromFileName,
  pathLeavesJournal,
  missingPhoto,
  missingVideo,
  notALink,
  nameNotPortable,
  emptyDay,
  amendmentDoesNotMatch,
  identityDiffers,
  notCsv,
  duplicateRow,
  notAShare,
  notASplit,
  portionOfAnAlteration,
  notAnAlteration,
  notASeal,
  sealChainBroken,
  sealedEntryDiffers,
  sealedEntryMissing,
  entryAfterSeal,
  sealedPhotoDiffers,
  sealedPhotoMissing,
  futureDate,
  impossibleOrder,
  overlappingSessions,
  moreThanADay,
  totalDiffers,
  sealedTotalDiffers,
  limitsNotKnown,
  emptyWeightNotAboveZero,
  readingOutOfLimits,
  readingNotProven,
  outsideTheTable,
  rowDoesNotFit,
  layoutBreaksRule,
  lapsedCalibration,
  expiredLot,
  workBeforeCure,
  stageGoingBack,
  inspectionMissingBeforeClosing,
  holdOnClosedStep,
  openSquawkOnClosedStep,
  deviationWithoutDisposition,
  loadingOutsideEnvelope,
  claimWithoutEvidence,
  workUnlikeTheClaim,
  paidWorkWithoutShare,
  paidShareDiffersFromHelp,
  creditForSalvage,
  kitShareWithoutSource,
  workOnInapplicableTask,
  unreadablePhoto,
  unpublishableVideo,
];

const byCode = new Map(allExplanations.map((explanation) => [explanation.code, explanation]));

/**
 * The page about one kind of diagnostic.
 * @param code As printed in brackets: `expired-lot`.
 * @returns `undefined` for a code that is not known.
 */
export function explanationOf(code: string): Explanation | undefined {
  return byCode.get(code);
}
