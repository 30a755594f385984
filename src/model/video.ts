import type { CalendarDate } from "./calendar.ts";
import type { Span } from "./diagnostic.ts";

/** A length of time in a recording, in whole seconds, and how it was typed. */
export interface Timecode {
  readonly seconds: number;
  /** `1:23`, `1:02:03`. */
  readonly typed: string;
}

/** A place in a recording. */
export interface VideoTime {
  readonly at: Timecode;
  readonly what: string;
  readonly step?: string;
  /** Where a recording that stands elsewhere begins at this place, as typed. */
  readonly link?: string;
}

/** Where a recording is: on another site, or a file of the builder's own. */
export type VideoSource =
  | { readonly kind: "link"; readonly link: string }
  | {
      readonly kind: "file";
      /** Path below the journal's `videos` folder, with `/` between parts. */
      readonly file: string;
      /** Whether the file is published with the site; not unless asked for. */
      readonly host: boolean;
    };

/** A recording named by a day. */
export interface Video {
  readonly date: CalendarDate;
  readonly title: string;
  readonly source: VideoSource;
  /** A photograph of the same day that stands for it, by its `file`. */
  readonly picture?: string;
  readonly step?: string;
  readonly assembly?: string;
  readonly length?: Timecode;
  /** In order. */
  readonly times: readonly VideoTime[];
  readonly private: boolean;
  readonly span: Span;
}
