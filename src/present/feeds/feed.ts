/**
 * One day as the feeds show it. Values only: `write/feeds.ts` turns them into Atom and JSON
 * Feed text, makes the lasting ids and puts the address in front of `url`.
 */
export interface FeedEntry {
  /** What tells this entry from the others for as long as the journal lives: its date. */
  readonly id: string;
  /** From the site's root, without a leading slash: `2026/03/14/`. */
  readonly url: string;
  /** Plain text. */
  readonly title: string;
  /** RFC 3339 with the project's zone: `2026-03-14T21:40:00-06:00`. Never the time of the build. */
  readonly published: string;
  /** As `published`; later only when an amendment changed the entry. */
  readonly updated: string;
  /** Plain text, a sentence or two. */
  readonly summary: string;
  /**
   * The whole entry as HTML. With an address every link and picture in it is absolute;
   * without one they are relative to the page that the feed stands beside. Pictures at most
   * 800 px wide.
   */
  readonly html: string;
}

/** What a feed says about itself. */
export interface FeedInfo {
  /** From the site's root, the page that the feed stands beside: "", or `assemblies/rudder/`. */
  readonly url: string;
  /** What tells this feed from the project's others and never changes; absent: it is the first. */
  readonly of?: string;
  /** Plain text. */
  readonly title: string;
  readonly subtitle: string;
  /** The language of titles and prose, such as `en`. */
  readonly language: string;
  /**
   * What tells this project from every other and never changes, not even with the address:
   * designation, serial and the day it was begun. The lasting ids are made from it.
   */
  readonly identity: string;
  /** Where the site stands, with its closing slash; absent while unknown. */
  readonly address?: string;
  /** Who writes, as the public edition may name them. */
  readonly author: string;
  /** Taken as the feed's date while it has no entries; RFC 3339 with zone. */
  readonly begun: string;
}

/** Both, as `writeFeeds` takes them. */
export interface Feed {
  readonly info: FeedInfo;
  /** Newest first. More than 20 may be given; the feeds keep the newest 20. */
  readonly entries: readonly FeedEntry[];
}
