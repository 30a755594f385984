import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** A later expiry given to a lot, and why. */
export interface LotExtension {
  readonly on: CalendarDate;
  readonly until: CalendarDate;
  readonly why: string;
}

/** A batch of rivets, sheet, sealant or primer. */
export interface Lot {
  readonly id: string;
  readonly title: string;
  readonly material: string;
  /** Maker's date. */
  readonly made?: CalendarDate;
  /** Last day of use as marked by the maker (inclusive); absent: does not expire. */
  readonly expires?: CalendarDate;
  readonly extensions: readonly LotExtension[];
  readonly private: boolean;
  readonly span: Span;
}

/**
 * The last day on which the lot may be used, as known on a given day: an extension counts
 * from the day it was given.
 * @returns `undefined` for a lot that does not expire.
 */
export function expiryOn(lot: Lot, date: CalendarDate): CalendarDate | undefined {
  return lot.extensions
    .filter(({ on }) => on <= date)
    .reduce((latest, { until }) => (latest && until > latest ? until : latest), lot.expires);
}
