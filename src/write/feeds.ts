import { createHash } from "node:crypto";
import path from "node:path";
import { type AtomFeed, generateAtomFeed, generateJsonFeed, type JsonFeed } from "feedsmith";
import type { Feed, FeedEntry, FeedInfo } from "../present/feeds/feed.ts";
import { writeUnflushed } from "./output.ts";

/** Newest entries that a feed keeps. */
export const mostEntries = 20;

/** A feed stays below this many bytes; the oldest of its entries make way. */
export const mostBytes = 300_000;

/** Names of a feed's two files, beside the page that it belongs to. */
export const feedFiles = { atom: "feed.xml", json: "feed.json" } as const;

/**
 * Writes `feed.xml` (Atom, RFC 4287) and `feed.json` (JSON Feed 1.1) into a site, beside the
 * page that the feed belongs to.
 *
 * Ids are `urn:uuid:` names made from the project's identity and the entry's date. They stay
 * the same when the site gets its address later, or moves; a `tag:` name would need a domain
 * from the first day. An entry has the same id in every feed that holds it. Without an address
 * the links in both feeds are relative and resolve against wherever the feed is fetched from; `self` and `feed_url` are left out.
 *
 * @returns The names written.
 * @throws MachineProblem when the site cannot be written.
 */
export async function writeFeeds(folder: string, feed: Feed): Promise<string[]> {
  const { url } = feed.info;
  await writeUnflushed(path.join(folder, url, feedFiles.atom), atomText(feed));
  await writeUnflushed(path.join(folder, url, feedFiles.json), jsonFeedText(feed));
  return Object.values(feedFiles).map((name) => `${url}${name}`);
}

/** The feed as Atom, at most `mostEntries` and below `mostBytes`. */
export function atomText({ info, entries }: Feed): string {
  return fitting(entries, (kept) => generateAtomFeed(atomValue(info, kept)));
}

/** The feed as JSON Feed 1.1, at most `mostEntries` and below `mostBytes`. */
export function jsonFeedText({ info, entries }: Feed): string {
  return fitting(entries, (kept) => {
    const made = generateJsonFeed(jsonValue(info, kept)) as { readonly items?: readonly unknown[] };
    // The generator leaves an empty list out, which JSON Feed requires.
    return `${JSON.stringify({ ...made, items: made.items ?? [] })}\n`;
  });
}

function atomValue(info: FeedInfo, entries: readonly FeedEntry[]): AtomFeed.Feed<string> {
  return {
    id: info.of === undefined ? urn(info.identity) : urn(info.identity, info.of),
    // Plain strings are dropped by the generator without a word: text is always `{ value }`.
    title: { value: info.title },
    subtitle: { value: info.subtitle },
    updated: updatedOf(info, entries),
    authors: [{ name: info.author }],
    xml: { lang: info.language },
    links: [
      ...(info.address === undefined
        ? []
        : [
            {
              rel: "self",
              type: "application/atom+xml",
              href: absolute(info, `${info.url}${feedFiles.atom}`),
            },
          ]),
      { rel: "alternate", type: "text/html", href: absolute(info, info.url) },
    ],
    entries: entries.map((entry) => ({
      id: urn(info.identity, entry.id),
      title: { value: entry.title },
      published: entry.published,
      updated: entry.updated,
      links: [{ rel: "alternate", type: "text/html", href: absolute(info, entry.url) }],
      summary: { value: entry.summary },
      content: { value: entry.html, type: "html" },
    })),
  };
}

function jsonValue(info: FeedInfo, entries: readonly FeedEntry[]): JsonFeed.Feed<string> {
  return {
    title: info.title,
    description: info.subtitle,
    home_page_url: absolute(info, info.url),
    ...(info.address === undefined
      ? {}
      : { feed_url: absolute(info, `${info.url}${feedFiles.json}`) }),
    language: info.language,
    authors: [{ name: info.author }],
    items: entries.map((entry) => ({
      id: urn(info.identity, entry.id),
      url: absolute(info, entry.url),
      title: entry.title,
      summary: entry.summary,
      content_html: entry.html,
      date_published: entry.published,
      date_modified: entry.updated,
    })),
  };
}

/** With an address the whole URL, else relative to the page that the feed stands beside. */
function absolute({ address, url: beside }: FeedInfo, url: string): string {
  if (address === undefined) {
    return url === beside ? "./" : `${"../".repeat(beside.split("/").length - 1)}${url}`;
  }
  return new URL(url, address).href;
}

// The moments compare as points in time: offsets differ between summer and winter.
function updatedOf(info: FeedInfo, entries: readonly FeedEntry[]): string {
  let latest = info.begun;
  for (const { updated } of entries) {
    if (Date.parse(updated) > Date.parse(latest)) latest = updated;
  }
  return latest;
}

function fitting(entries: readonly FeedEntry[], text: (kept: readonly FeedEntry[]) => string) {
  let kept = entries.slice(0, mostEntries);
  for (;;) {
    const result = text(kept);
    if (Buffer.byteLength(result) < mostBytes || kept.length === 0) return result;
    const [only, ...rest] = kept;
    if (only === undefined || rest.length > 0) {
      kept = kept.slice(0, -1);
    } else if (only.html !== "") {
      // One entry larger than the whole feed may be: its summary and link still go out.
      kept = [{ ...only, html: "" }];
    } else kept = [];
  }
}

// RFC 9562, 5.5: a name-based UUID, SHA-1. The first is the name space of this program.
const nameSpace = "7d0c4a52-91a6-5c0e-8f0b-3b5e6f3c9d21";

function urn(...names: readonly string[]): string {
  const digest = createHash("sha1")
    .update(Buffer.from(nameSpace.replaceAll("-", ""), "hex"))
    .update(names.join("\n"))
    .digest()
    .subarray(0, 16);
  digest.writeUInt8((digest.readUInt8(6) & 0x0f) | 0x50, 6);
  digest.writeUInt8((digest.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = digest.toString("hex");
  return `urn:uuid:${[0, 8, 12, 16, 20].map((at, i, all) => hex.slice(at, all[i + 1] ?? 32)).join("-")}`;
}
