import type { CalendarDate } from "../../model/calendar.ts";

/** What a page may be narrowed down by. */
export const searchFilters = ["sheet", "assembly", "month", "kind", "finding"] as const;
export type SearchFilter = (typeof searchFilters)[number];

/** What the search index sees of a page, beside the words in its main part. */
export interface SearchRecord {
  /** `[filter, value]`, a filter as often as it has values; `month` is `YYYY-MM`. */
  readonly filters: readonly (readonly [SearchFilter, string])[];
  /** What the result shows. */
  readonly meta: {
    readonly title: string;
    /** As printed: `14 March 2026`. */
    readonly date?: string;
    /** From the site's root, without a leading slash. */
    readonly image?: string;
    readonly imageAlt?: string;
  };
  /** For ordering. `hours` are whole minutes. */
  readonly sort: {
    readonly date?: CalendarDate;
    readonly hours?: number;
  };
}
