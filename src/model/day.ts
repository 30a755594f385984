import type { Amendment } from "./amendment.ts";
import type { CalendarDate, Minutes, Moment } from "./calendar.ts";
import type { Cure } from "./cure.ts";
import type { Deviation } from "./deviation.ts";
import type { Span } from "./diagnostic.ts";
import type { Hold, Release } from "./hold.ts";
import type { Inspection } from "./inspection.ts";
import type { Layout } from "./layout.ts";
import type { Reading } from "./measurement.ts";
import type { Photo } from "./photo.ts";
import type { Quantity } from "./quantity.ts";
import type { Session } from "./session.ts";
import type { Squawk } from "./squawk.ts";
import type { Video } from "./video.ts";

/** A total that the builder vouches for, checked against the computed one. */
export interface Assertion {
  /** `total`, or an assembly id (rolled up the tree). */
  readonly of: string;
  /** All minutes of the build up to and including this day. */
  readonly minutes: Minutes;
  readonly span: Span;
}

/** One dated entry. */
export interface Day {
  readonly date: CalendarDate;
  /** When it was written down, if said. */
  readonly written?: Moment;
  /** Where `written` was typed, when it was. */
  readonly writtenSpan?: Span;
  /** Days between the day and its writing down; 0 when not said. */
  readonly late: number;
  /** The file that its hours were imported from, when they were not typed. */
  readonly imported?: string;
  readonly title: string;
  readonly place: string;
  readonly conditions: { readonly temperature?: Quantity; readonly humidity?: Quantity };
  readonly sessions: readonly Session[];
  readonly readings: readonly Reading[];
  readonly cures: readonly Cure[];
  readonly holds: readonly Hold[];
  readonly releases: readonly Release[];
  readonly deviations: readonly Deviation[];
  readonly squawks: readonly Squawk[];
  readonly inspections: readonly Inspection[];
  readonly photos: readonly Photo[];
  /** Recordings: on another site, or files of the builder's own. */
  readonly videos: readonly Video[];
  /** Rows and cut-outs to be marked out: the blocks called `layout` in the prose, in order. */
  readonly layouts: readonly Layout[];
  /** Corrections to earlier days that this entry carries; the values they give are in force. */
  readonly amendments: readonly Amendment[];
  readonly next: readonly string[];
  readonly assertions: readonly Assertion[];
  /** The Markdown below the front matter, as typed. */
  readonly prose: string;
  /** A private day is left out of the public edition, but its hours are in the totals. */
  readonly private: boolean;
  /** How long this calendar day is in the project's zone: 1380, 1440 or 1500. */
  readonly lengthMinutes: Minutes;
  /** Path of the file, relative as in `Span.file`. */
  readonly file: string;
  /** Where the date was typed. */
  readonly span: Span;
}
