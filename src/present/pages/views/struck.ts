import type { Amendment } from "../../../model/amendment.ts";
import type { Links } from "../links.ts";
import type { Mention } from "../page.ts";

/** What stood in a session or a reading before it was amended. */
export interface Struck {
  /** The value's name in the entry: `hours`, `values`. */
  readonly value: string;
  /** Empty where nothing stood there. */
  readonly was: string;
  readonly now: string;
  /** The day that amended it. */
  readonly on: Mention;
}

/** A correction as it stands beside what it corrected. */
export function struck(links: Links, { field, was, now, date }: Amendment): Struck {
  return {
    value: field.replace(/^([a-z]+)s\[\d+\](\.?)/, (_, one, dot) => (dot ? "" : one)),
    was,
    now,
    on: links.shortDay(date),
  };
}
