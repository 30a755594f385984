import type { CalendarMonth } from "../../../model/calendar.ts";
import { shortSeal } from "../../../model/seal.ts";
import { placeLink } from "../links.ts";
import type { Link } from "../page.ts";
import type { RecordIndex } from "../record-index.ts";

/** The short seal of a month, and the way to what it proves. */
export interface SealMention {
  /** `3f2a91c07be4`. */
  readonly short: string;
  readonly means: Link;
}

/**
 * The seal of a month as its page and the sheet of its last day show it.
 * @param root From the page back to the site's root.
 * @returns `undefined` while the month is not sealed.
 */
export function sealMention(
  record: RecordIndex,
  root: string,
  month: CalendarMonth,
): SealMention | undefined {
  const seal = record.sealByMonth.get(month);
  return (
    seal && {
      short: shortSeal(seal),
      means: placeLink(root, "record", "what a seal proves, and what it does not"),
    }
  );
}
