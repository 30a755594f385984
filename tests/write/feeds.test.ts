import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { parseAtomFeed, parseJsonFeed } from "feedsmith";
import { describe, expect, test } from "vitest";
import type { Feed, FeedEntry, FeedInfo } from "../../src/present/feeds/feed.ts";
import { atomText, jsonFeedText, mostBytes, writeFeeds } from "../../src/write/feeds.ts";
import { scratchFolder } from "../support/scratch-folder.ts";

const info: FeedInfo = {
  url: "",
  title: 'Two-seat aeroplane "Bracken" & floats',
  subtitle: "A build of <two> seats",
  language: "en",
  identity: "LB-2 0047 2025-09-06",
  address: "https://journal.example/build/",
  author: "Ada Someone",
  begun: "2025-09-06T00:00:00-06:00",
};

function entry(number: number, more: Partial<FeedEntry> = {}): FeedEntry {
  const date = `2026-03-${String(number).padStart(2, "0")}`;
  return {
    id: date,
    url: `${date.replaceAll("-", "/")}/`,
    title: `Day ${number}`,
    published: `${date}T21:40:00-06:00`,
    updated: `${date}T21:40:00-06:00`,
    summary: "Ribs riveted.",
    html: `<p>Ribs riveted.</p><img src="https://journal.example/build/photos/a-800.jpg" alt="">`,
    ...more,
  };
}

const feed = (entries: readonly FeedEntry[], more: Partial<FeedInfo> = {}): Feed => ({
  info: { ...info, ...more },
  entries,
});

describe("read back", () => {
  const tricky = entry(14, {
    title: '5/8 < 3/4 & "tight" ]]> \'',
    summary: "a & b < c",
    html: "<p>a &amp; b &lt; c ]]&gt; 31 lbf·in ½</p>",
    updated: "2026-04-01T08:00:00-06:00",
  });

  test("Atom has everything that was put in", () => {
    const atom = parseAtomFeed(atomText(feed([tricky, entry(13)])));
    expect(atom.title?.value).toBe(info.title);
    expect(atom.subtitle?.value).toBe(info.subtitle);
    expect(atom.authors).toEqual([{ name: info.author }]);
    expect(Date.parse(atom.updated ?? "")).toBe(Date.parse(tricky.updated));
    expect(atom.links?.map(({ rel, href }) => [rel, href])).toEqual([
      ["self", "https://journal.example/build/feed.xml"],
      ["alternate", "https://journal.example/build/"],
    ]);
    expect(atom.entries).toHaveLength(2);
    const [first] = atom.entries ?? [];
    expect(first?.title?.value).toBe(tricky.title);
    expect(first?.summary?.value).toBe(tricky.summary);
    expect(first?.content).toEqual({ value: tricky.html, type: "html" });
    expect(first?.links?.[0]?.href).toBe("https://journal.example/build/2026/03/14/");
    expect(Date.parse(first?.published ?? "")).toBe(Date.parse(tricky.published));
    expect(Date.parse(first?.updated ?? "")).toBe(Date.parse(tricky.updated));
    expect(first?.published).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/);
  });

  test("JSON Feed 1.1 has everything that was put in", () => {
    const text = jsonFeedText(feed([tricky, entry(13)]));
    expect(JSON.parse(text)).toMatchObject({ version: "https://jsonfeed.org/version/1.1" });
    const json = parseJsonFeed(text);
    expect(json.title).toBe(info.title);
    expect(json.feed_url).toBe("https://journal.example/build/feed.json");
    expect(json.items?.[0]).toMatchObject({
      url: "https://journal.example/build/2026/03/14/",
      title: tricky.title,
      summary: tricky.summary,
      content_html: tricky.html,
    });
    expect(Date.parse(json.items?.[0]?.date_modified ?? "")).toBe(Date.parse(tricky.updated));
  });

  test("any text at all comes back from Atom, white space and control characters aside", () => {
    const plain = (text: string): string => text.replace(/\s+/g, " ").trim();
    const printable = fc.string({ unit: "grapheme", minLength: 1 }).map((text) => `x${text}x`);
    fc.assert(
      fc.property(printable, printable, (title, html) => {
        const atom = parseAtomFeed(atomText(feed([entry(1, { title, html })])));
        expect(plain(atom.entries?.[0]?.title?.value ?? "")).toBe(plain(title));
        expect(plain(atom.entries?.[0]?.content?.value ?? "")).toBe(plain(html));
      }),
      { numRuns: 200 },
    );
  });
});

describe("ids", () => {
  const ids = (of: Feed): (string | undefined)[] => {
    const atom = parseAtomFeed(atomText(of));
    const json = parseJsonFeed(jsonFeedText(of));
    expect(json.items?.map((item) => item?.id)).toEqual(atom.entries?.map((item) => item?.id));
    return [atom.id, ...(atom.entries ?? []).map((item) => item?.id)];
  };

  test("are the same in both feeds, and differ between entries and from the feed's own", () => {
    const all = ids(feed([entry(14), entry(13)]));
    expect(new Set(all).size).toBe(3);
    for (const id of all) {
      expect(id).toMatch(
        /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
      );
    }
  });

  test("never change: not with the address, the title or the text", () => {
    const before = ids(feed([entry(14)]));
    // As another program makes them from the same names (RFC 9562, version 5).
    expect(before).toEqual([
      "urn:uuid:f782f932-e38d-59e0-a927-7a23723c441d",
      "urn:uuid:fe2d2c76-46d5-5702-a3d3-561f4680e738",
    ]);
    const moved = { address: "https://elsewhere.example/", title: "Another title" };
    expect(ids(feed([entry(14, { title: "Corrected", html: "" })], moved))).toEqual(before);
    expect(ids(feed([entry(14)], { identity: "another project" }))).not.toEqual(before);
  });
});

describe("how much is kept", () => {
  test("the newest 20", () => {
    const many = Array.from({ length: 28 }, (_, i) => entry(28 - i));
    const atom = parseAtomFeed(atomText(feed(many)));
    expect(atom.entries?.map((item) => item?.title?.value)).toEqual(
      Array.from({ length: 20 }, (_, i) => `Day ${28 - i}`),
    );
  });

  test("fewer when they are long, the oldest going first", () => {
    const many = Array.from({ length: 10 }, (_, i) => entry(10 - i, { html: "é".repeat(30_000) }));
    for (const text of [atomText(feed(many)), jsonFeedText(feed(many))]) {
      expect(Buffer.byteLength(text)).toBeLessThan(mostBytes);
      expect(text).toContain("Day 10");
      expect(text).toContain("Day 7");
      expect(text).not.toContain("Day 5<");
      expect(Buffer.byteLength(text)).toBeGreaterThan(mostBytes - 70_000);
    }
  });

  test("one that is longer than a feed may be keeps its title and summary", () => {
    const long = [entry(2, { html: "x".repeat(mostBytes) }), entry(1)];
    const atom = parseAtomFeed(atomText(feed(long)));
    expect(atom.entries?.[0]?.summary?.value).toBe("Ribs riveted.");
    expect(Buffer.byteLength(atomText(feed(long)))).toBeLessThan(mostBytes);
  });

  test("none yet: the feed is dated by the day the project was begun", () => {
    const atom = parseAtomFeed(atomText(feed([])));
    expect(Date.parse(atom.updated ?? "")).toBe(Date.parse(info.begun));
    expect(JSON.parse(jsonFeedText(feed([])))).toMatchObject({ items: [] });
  });
});

test("without an address links start at the site's root and the feed does not name itself", () => {
  const { address: _, ...homeless } = info;
  const of = { info: homeless, entries: [entry(14)] };
  const atom = parseAtomFeed(atomText(of));
  expect(atom.links?.map(({ rel, href }) => [rel, href])).toEqual([["alternate", "./"]]);
  expect(atom.entries?.[0]?.links?.[0]?.href).toBe("2026/03/14/");
  const json = parseJsonFeed(jsonFeedText(of));
  expect([json.feed_url, json.items?.[0]?.url]).toEqual([undefined, "2026/03/14/"]);
});

test("both are written to the site's root", async () => {
  const folder = scratchFolder();
  const written = await writeFeeds(folder, feed([entry(14)]));
  expect(written).toEqual(["feed.xml", "feed.json"]);
  expect(readFileSync(join(folder, "feed.xml"), "utf8")).toBe(atomText(feed([entry(14)])));
  expect(readFileSync(join(folder, "feed.json"), "utf8")).toBe(jsonFeedText(feed([entry(14)])));
});

describe("the feed of an assembly", () => {
  const of = { url: "assemblies/rudder/", of: "assembly rudder" };

  test("stands beside its page and names itself by that place", async () => {
    const folder = scratchFolder();
    const names = await writeFeeds(folder, feed([entry(14)], of));
    expect(names).toEqual(["assemblies/rudder/feed.xml", "assemblies/rudder/feed.json"]);
    const [atomFile = "", jsonFile = ""] = names.map((name) =>
      readFileSync(join(folder, name), "utf8"),
    );
    const json = parseJsonFeed(jsonFile);
    expect(json.feed_url).toBe("https://journal.example/build/assemblies/rudder/feed.json");
    expect(json.home_page_url).toBe("https://journal.example/build/assemblies/rudder/");
    expect(parseAtomFeed(atomFile).links?.map(({ href }) => href)).toEqual([
      "https://journal.example/build/assemblies/rudder/feed.xml",
      "https://journal.example/build/assemblies/rudder/",
    ]);
  });

  test("has an id of its own, and its entries those that they have everywhere", () => {
    const own = parseAtomFeed(atomText(feed([entry(14)], of)));
    const whole = parseAtomFeed(atomText(feed([entry(14)])));
    expect(own.id).not.toBe(whole.id);
    expect(own.entries?.[0]?.id).toBe(whole.entries?.[0]?.id);
  });

  test("without an address its links begin where it stands", () => {
    const { address: _address, ...unplaced } = info;
    const atom = parseAtomFeed(atomText({ info: { ...unplaced, ...of }, entries: [entry(14)] }));
    expect(atom.links?.map(({ href }) => href)).toEqual(["./"]);
    expect(atom.entries?.[0]?.links?.[0]?.href).toBe("../../2026/03/14/");
  });
});
