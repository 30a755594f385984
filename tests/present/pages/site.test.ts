import { describe, expect, test } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import type { CalendarDate } from "../../../src/model/calendar.ts";
import type { Picture, Pictures } from "../../../src/present/pages/picture.ts";
import { type Site, type SitePages, sitePages } from "../../../src/present/pages/site.ts";
import { reportUrl } from "../../../src/present/report/month-report.ts";
import { eventfulAnalysis, privateWords } from "../../support/eventful-build.ts";
import { asOf, day, photo, project, session, smallBuild } from "../../support/small-build.ts";

const analysis = eventfulAnalysis();
const pictures: Pictures = new Map([["2026-03-14/rib4.jpg", picture("rib4")]]);

const made = (edition: "public" | "private", base?: string) =>
  sitePages({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures,
    edition,
    ...(base === undefined ? {} : { base }),
  });
const open = made("public");
const whole = made("private");

describe("editions", () => {
  test.each(privateWords)("%s is in the private edition only", (word) => {
    expect(JSON.stringify(open)).not.toContain(word);
    expect(JSON.stringify(whole)).toContain(word);
  });

  test("a private day has a page in the private edition only", () => {
    expect(open.pages.day.map(({ date }) => date)).toEqual(["2026-03-14", "2026-03-15"]);
    expect(whole.pages.day.map(({ date }) => date)).toContain("2026-03-20");
  });

  test("a sheet has one number in both", () => {
    const numbers = (site: Site) => site.pages.day.map(({ block }) => block.number);
    expect(numbers(open)).toEqual(["sheet 1 of 3", "sheet 2 of 3"]);
    expect(numbers(whole).slice(0, 2)).toEqual(numbers(open));
  });

  test("the last public sheet does not lead to the private one", () => {
    expect(open.pages.day.at(-1)?.turn?.next).toBeUndefined();
    expect(whole.pages.day.at(1)?.turn?.next?.text).toBe("sheet 3, Fri 20 Mar");
  });

  test("the private day stands on the timeline by its hours alone", () => {
    const row = open.pages.month[0]?.rows.at(-1);
    expect(row).toMatchObject({ kind: "day", date: "2026-03-20", hours: "0:50", apart: "1:30" });
    expect(row).not.toHaveProperty("href");
    expect(row).not.toHaveProperty("excerpt");
  });

  test("hours are the same in both", () => {
    expect(open.pages.hours[0]?.total).toEqual(whole.pages.hours[0]?.total);
  });

  test("each says which it is", () => {
    expect(open.shell.editionNote).toMatch(/^Public edition/);
    expect(whole.shell.editionNote).toMatch(/^Private edition/);
  });
});

describe("addresses", () => {
  test("no two pages are written to one file", () => {
    const urls = pagesOf(open).map(({ url }) => url);
    expect(new Set(urls).size).toBe(urls.length);
  });

  test("every link is relative, names a file, and leads to a page and a place on it", () => {
    const files = new Map<string, ReturnType<typeof anchorsOf>>([
      ...pagesOf(open).map((page) => [fileOf(page.url), anchorsOf(page)] as const),
      ...open.reports.map(({ month }) => [reportUrl(month), anchorsOf({})] as const),
    ]);
    for (const page of pagesOf(open).filter(({ kind }) => kind !== "not found")) {
      for (const href of hrefsOf(page)) {
        expect(href).not.toMatch(/^(?:\/|[a-z]+:)/);
        const target = new URL(href, `file:///${fileOf(page.url)}`);
        const anchors = files.get(target.pathname.slice(1));
        expect(anchors, `${href} on ${page.url}`).toBeDefined();
        // Sections of a page have their ids from the layout; what is checked here is things.
        if (/^#(?:reading|deviation|squawk)-/.test(target.hash)) {
          expect(anchors).toContain(target.hash.slice(1));
        }
      }
    }
  });

  test("enough links were followed to mean something", () => {
    expect(pagesOf(open).flatMap(hrefsOf).length).toBeGreaterThan(200);
  });

  test("the page for a wrong address links from the base, or from the host's root", () => {
    const links = (base?: string) => made("public", base).pages.notFound[0]?.ways[0]?.href;
    expect(links()).toBe("/index.html");
    expect(links("/journal/")).toBe("/journal/index.html");
  });

  test("every page has a description and a title", () => {
    for (const { description, title } of pagesOf(open)) {
      expect(description).not.toBe("");
      expect(title).not.toBe("");
    }
  });
});

describe("sums", () => {
  const minutes = (text: string) => {
    const [hours = 0, rest = 0] = text.split(":").map(Number);
    return hours * 60 + rest;
  };
  const sum = (texts: readonly string[]) => texts.map(minutes).reduce((a, b) => a + b, 0);
  const total = analysis.hours.total.build;

  test("the sessions of a sheet add up to its hours, build and apart", () => {
    for (const page of whole.pages.day) {
      const rows = (apart: boolean) =>
        page.sessions
          .filter(({ kind }) => ["study", "shop"].includes(kind) === apart)
          .map(({ hours }) => hours);
      expect(sum(rows(false))).toBe(minutes(page.hours.build));
      expect(sum(rows(true))).toBe(minutes(page.hours.apart ?? "0:00"));
    }
  });

  test("the days on the timeline add up to their month, the months to the whole", () => {
    for (const page of open.pages.month) {
      const rows = page.rows.flatMap((row) => (row.kind === "day" ? [row.hours] : []));
      expect(sum(rows)).toBe(minutes(page.dimension?.figure ?? ""));
    }
    expect(sum(open.pages.month.map(({ dimension }) => dimension?.figure ?? ""))).toBe(total);
  });

  test("each table of hours adds up to the whole", () => {
    for (const table of open.pages.hours[0]?.tables ?? []) {
      expect(sum(table.rows.filter(({ depth }) => depth === 0).map(({ build }) => build))).toBe(
        total,
      );
    }
  });

  test("an assembly's own hours and its parts add up to it, its days to its own hours", () => {
    for (const page of open.pages.assembly) {
      expect(sum([page.own, ...page.parts.map(({ hours }) => hours)])).toBe(minutes(page.total));
      const sessions = page.days.flatMap(({ days }) => days.flatMap((day) => day.sessions));
      expect(sum(sessions.map(({ text }) => text))).toBe(minutes(page.own));
    }
  });
});

describe("a day's sheet", () => {
  const sheet = found(open.pages.day[0]);

  test("what the sheet before left over stands on the next", () => {
    expect(open.pages.day[1]?.leftOff).toEqual({
      day: { text: "14 Mar", href: "../../../2026/03/14/index.html" },
      items: ["HS-08 drive the second row"],
    });
  });

  test("a correction stands on both sheets", () => {
    expect(sheet.corrected.map(({ was, now }) => [was, now])).toContainEqual(["1:15", "1:45"]);
    expect(open.pages.day[1]?.amendments.map(({ day: { text } }) => text)).toContain(
      "14 March 2026",
    );
  });

  test("a late entry says by how much", () => {
    expect(sheet.late).toBeUndefined();
    expect(open.pages.day[1]?.late).toBe("4 days");
  });

  test("two people at a session are a product", () => {
    expect(sheet.sessions[1]).toMatchObject({ hours: "3:30", product: "1:45 × 2" });
  });

  test("a session over midnight says so and is cut off on the strip", () => {
    const night = sheet.sessions.find(({ when }) => when?.includes("next day"));
    expect(night?.when).toBe("23:10 to 01:20 next day");
    expect(sheet.strip?.bars.find(({ number }) => number === night?.number)?.cut).toBe(true);
  });

  test("sessions without times are named as not on the strip", () => {
    expect(sheet.offStrip).toContain(2);
    expect(sheet.strip?.bars.map(({ number }) => number)).not.toContain(2);
  });

  test("a photograph that could not be read stays, without a picture", () => {
    const without = sitePages({
      analysis,
      diagnostics: [],
      pictures: new Map(),
      edition: "public",
    });
    expect(sheet.photos[0]?.picture?.avif).toBe(
      "../../../photos/rib4-480.avif 480w, ../../../photos/rib4-800.avif 800w",
    );
    expect(without.pages.day[0]?.photos[0]?.caption).toBe("Row A driven");
    expect(without.pages.day[0]?.photos[0]?.picture).toBeUndefined();
  });

  test("the search index sees assembly, month, kind and date", () => {
    expect(sheet.search?.filters).toEqual(
      expect.arrayContaining([
        ["sheet", "day"],
        ["month", "2026-03"],
        ["assembly", "stabilizer"],
        ["kind", "study"],
      ]),
    );
    expect(sheet.search?.sort).toEqual({
      date: "2026-03-14",
      hours: analysis.hours.byDate.get("2026-03-14")?.build,
    });
  });
});

describe("a journal with nothing in it yet", () => {
  const empty = sitePages({
    analysis: analyze(smallBuild({ days: [] }), asOf("2026-03-14")),
    diagnostics: [],
    pictures: new Map(),
    edition: "public",
  });

  test("has every page there is one of, and no day", () => {
    expect(empty.pages.day).toEqual([]);
    expect(empty.pages.month).toEqual([]);
    expect(empty.pages.home[0]?.latest).toBeUndefined();
    expect(empty.pages.hours[0]?.chart).toBeUndefined();
    expect(empty.pages.open[0]?.findings).toEqual([]);
  });
});

test("a stretch without an entry is a break in the line", () => {
  const site = siteOf(["2026-03-01", "2026-03-06", "2026-03-12"]);
  expect(
    site.pages.month[0]?.rows.map((row) => (row.kind === "gap" ? row.text : row.label)),
  ).toEqual(["Sun 1", "Fri 6", "5 days without an entry", "Thu 12"]);
});

test("the home page shows the newest day and the six before it, newest first", () => {
  const site = siteOf(Array.from({ length: 9 }, (_, index) => `2026-03-0${index + 1}`));
  const home = found(site.pages.home[0]);
  expect(home.latest?.day.href).toBe("2026/03/09/index.html");
  expect(home.newest?.rows.map((row) => (row.kind === "day" ? row.label : "gap"))).toEqual([
    "8 Mar",
    "7 Mar",
    "6 Mar",
    "5 Mar",
    "4 Mar",
    "3 Mar",
  ]);
});

test("photographs are paged by month", () => {
  const site = siteOf(["2026-02-28", "2026-03-01"]);
  expect(site.pages.photographMonth.map(({ url }) => url)).toEqual([
    "photographs/2026/02/",
    "photographs/2026/03/",
  ]);
  expect(site.pages.photographMonth[0]?.turn?.next?.href).toBe(
    "../../../photographs/2026/03/index.html",
  );
});

function siteOf(dates: readonly CalendarDate[]): Site {
  const days = dates.map((date) =>
    day({ date, sessions: [session({ date })], photos: [photo({ date })] }),
  );
  return sitePages({
    analysis: analyze(
      smallBuild({ days, project: project({ begun: dates[0] ?? "2026-03-01" }) }),
      asOf("2026-03-31"),
    ),
    diagnostics: [],
    pictures: new Map(),
    edition: "public",
  });
}

function pagesOf(site: Site) {
  return (Object.values(site.pages) as SitePages[keyof SitePages][]).flatMap((list) => [...list]);
}

function fileOf(url: string): string {
  return url === "" || url.endsWith("/") ? `${url}index.html` : url;
}

function hrefsOf(value: unknown): string[] {
  return valuesOf(value, "href");
}

function anchorsOf(value: unknown): string[] {
  return valuesOf(value, "anchor");
}

function valuesOf(value: unknown, key: string): string[] {
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, inner]) =>
    name === key && typeof inner === "string" ? [inner] : valuesOf(inner, key),
  );
}

function picture(name: string): Picture {
  const files = (ending: string) =>
    [480, 800].map((width) => ({
      width,
      height: width * 0.75,
      url: `photos/${name}-${width}.${ending}`,
    }));
  return { width: 800, height: 600, avif: files("avif"), jpeg: files("jpg") };
}

function found<Item>(item: Item | undefined): Item {
  if (item === undefined) throw new Error("not there");
  return item;
}
