import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { assemblyFeeds, feedOf } from "../../../src/present/feeds/feed-of.ts";
import { timestamp } from "../../../src/present/feeds/timestamp.ts";
import { sitePages } from "../../../src/present/pages/site.ts";
import { eventfulAnalysis, privateWords } from "../../support/eventful-build.ts";
import { asOf, day, moment, seal, session, smallBuild } from "../../support/small-build.ts";

const analysis = eventfulAnalysis();
const feed = feedOf(
  sitePages({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures: new Map(),
    edition: "public",
  }),
);

describe("a feed", () => {
  test("holds the newest days first, private ones left out", () => {
    expect(feed.entries.map(({ id }) => id)).toEqual(["2026-03-15", "2026-03-14"]);
    for (const word of privateWords) expect(JSON.stringify(feed)).not.toContain(word);
  });

  test("the last entry of a sealed month carries the short seal, and no other does", () => {
    const dates = ["2026-03-10", "2026-03-14", "2026-04-02"];
    const sealed = sitePages({
      analysis: analyze(
        smallBuild({
          days: dates.map((date) => day({ date })),
          seals: [seal({ month: "2026-03", digest: `0123456789ab${"f".repeat(52)}` })],
        }),
        asOf("2026-04-30"),
      ),
      diagnostics: [],
      pictures: new Map(),
      edition: "public",
    });
    const carrying = feedOf(sealed).entries.filter(({ html }) => html.includes("0123456789ab"));
    expect(carrying.map(({ id }) => id)).toEqual(["2026-03-14"]);
    expect(carrying[0]?.html).not.toContain("0123456789abf");
  });

  test("keeps twenty", () => {
    const days = Array.from({ length: 25 }, (_, index) =>
      day({ date: `2026-03-${String(index + 1).padStart(2, "0")}` }),
    );
    const long = sitePages({
      analysis: analyze(smallBuild({ days }), asOf("2026-03-31")),
      diagnostics: [],
      pictures: new Map(),
      edition: "public",
    });
    expect(feedOf(long).entries).toHaveLength(20);
    expect(feedOf(long).entries[0]?.id).toBe("2026-03-25");
  });

  test("has absolute links only", () => {
    for (const { html } of feed.entries) {
      for (const [, url] of html.matchAll(/(?:href|src)="([^"]*)"/g)) {
        expect(url).toMatch(/^https:\/\/journal\.example\//);
      }
    }
  });

  test("an entry that was amended was updated when the amendment was written", () => {
    const first = feed.entries.find(({ id }) => id === "2026-03-14");
    expect(first?.published).toBe("2026-03-14T21:40:00Z");
    // By the last of them, of 20 March: the day is private, the correction of hours is not.
    expect(first?.updated).toBe("2026-03-20T12:00:00Z");
  });

  test("a day of which no time is known stands at noon", () => {
    const site = sitePages({
      analysis: analyze(
        smallBuild({ days: [day({ sessions: [session({ minutes: 10 })] })] }),
        asOf("2026-03-31"),
      ),
      diagnostics: [],
      pictures: new Map(),
      edition: "public",
    });
    expect(feedOf(site).entries[0]?.published).toBe("2026-03-14T12:00:00Z");
  });
});

test.each([
  ["2026-03-16 20:10", 0, "2026-03-16T20:10:00Z"],
  ["2026-03-16 20:10", -360, "2026-03-16T20:10:00-06:00"],
  ["2026-03-16 20:10", 345, "2026-03-16T20:10:00+05:45"],
])("%s, %d minutes from UTC, is %s", (local, offset, expected) => {
  const { epochMinutes } = moment(local);
  expect(timestamp({ local, epochMinutes: epochMinutes - offset })).toBe(expected);
});

describe("feeds of assemblies", () => {
  const days = Array.from({ length: 12 }, (_, index) =>
    day({
      date: `2026-03-${String(index + 1).padStart(2, "0")}`,
      prose: "See [the day](#top).",
      private: index === 11,
      sessions: [session({ assembly: index % 2 === 0 ? "stabilizer" : "rudder", minutes: 30 })],
    }),
  );
  const site = sitePages({
    analysis: analyze(smallBuild({ days }), asOf("2026-03-31")),
    diagnostics: [],
    pictures: new Map(),
    edition: "public",
  });
  const feeds = new Map(assemblyFeeds(site).map((each) => [each.info.of, each]));

  test("hold the days of an assembly and of its parts, newest first, ten at most, none private", () => {
    const dates = (of: string) => feeds.get(of)?.entries.map(({ id }) => id.slice(8));
    expect(dates("assembly rudder")).toEqual(["10", "08", "06", "04", "02"]);
    expect(dates("assembly stabilizer")).toEqual(["11", "09", "07", "05", "03", "01"]);
    expect(dates("assembly empennage")).toEqual([
      "11",
      "10",
      "09",
      "08",
      "07",
      "06",
      "05",
      "04",
      "03",
      "02",
    ]);
  });

  test("their pages name them, and no other page does", () => {
    const named = site.pages.assembly.filter(({ feed: own }) => own);
    expect(named.map(({ id }) => `assembly ${id}`).sort()).toEqual([...feeds.keys()].sort());
    for (const { url, feed: own } of named) {
      const found = [...feeds.values()].find(({ info }) => info.url === url);
      expect(found?.info.title).toBe(own?.title);
    }
  });

  test("hold the same entries as the feed of the record, with links from where they stand", () => {
    const whole = new Map(feedOf(site).entries.map((each) => [each.id, each]));
    for (const { entries, info } of feeds.values()) {
      const up = "../".repeat(info.url.split("/").length - 1);
      for (const each of entries) {
        const same = whole.get(each.id);
        expect({ ...each, html: "" }).toEqual({ ...same, html: "" });
        expect(each.html).toBe(same?.html.replaceAll('href="2026', `href="${up}2026`));
      }
    }
  });
});
