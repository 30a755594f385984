import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { analyze } from "../../../src/compute/analyze.ts";
import { assemblyFeeds, feedOf } from "../../../src/present/feeds/feed-of.ts";
import { type SitePages, sitePages } from "../../../src/present/pages/site.ts";
import { renderSite } from "../../../src/write/eleventy/render-site.ts";
import { writeReports } from "../../../src/write/exports/report/write-reports.ts";
import { writeFeeds } from "../../../src/write/feeds.ts";
import { checkOutput } from "../../../src/write/output-checks.ts";
import { writeBadge } from "../../../src/write/share/write-badge.ts";
import { writeShareSheets } from "../../../src/write/share/write-share-sheets.ts";
import { eventfulBuild, privateWords } from "../../support/eventful-build.ts";
import { filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { asOf } from "../../support/small-build.ts";

const prose = 'A {{ x }} and {% raw %} and <script>alert("1")</script> stay as typed.\n';
const build = eventfulBuild();
const analysis = analyze(
  { ...build, days: build.days.map((day, index) => (index === 0 ? { ...day, prose } : day)) },
  asOf("2026-03-25"),
);
const site = sitePages({
  analysis,
  diagnostics: analysis.diagnostics,
  pictures: new Map(),
  edition: "public",
});
const folder = mkdtempSync(join(tmpdir(), "witness-site-"));
const cacheFolder = mkdtempSync(join(tmpdir(), "witness-cache-"));
const said: string[] = [];

beforeAll(async () => {
  const hear = (chunk: unknown) => said.push(String(chunk)) > 0;
  const out = vi.spyOn(process.stdout, "write").mockImplementation(hear);
  const log = vi.spyOn(console, "log").mockImplementation((...words) => void said.push(...words));
  await renderSite(site, folder);
  out.mockRestore();
  log.mockRestore();
  for (const feed of [feedOf(site), ...assemblyFeeds(site)]) await writeFeeds(folder, feed);
  await writeReports(folder, site.reports, { cacheFolder });
  await writeBadge(folder, site.badge);
  await writeShareSheets(folder, site.shareSheets, { cacheFolder });
});

afterAll(() => {
  for (const each of [folder, cacheFolder]) rmSync(each, { recursive: true, force: true });
});

const read = (path: string) => readFileSync(join(folder, path), "utf8");

test("each page is written where it says, and no other", () => {
  const pages = (Object.values(site.pages) as SitePages[keyof SitePages][]).flatMap((list) => [
    ...list,
  ]);
  const files = pages.map(({ url }) =>
    url === "" || url.endsWith("/") ? `${url}index.html` : url,
  );
  expect(filesIn(folder).filter((file) => file.endsWith(".html"))).toEqual(files.toSorted());
});

test("nothing is printed", () => {
  expect(said.join("")).toBe("");
});

test("the output passes the checks that come before publishing", async () => {
  expect((await checkOutput(folder)).problems).toEqual([]);
});

test("what a template language would take for its own is prose", () => {
  expect(read("2026/03/14/index.html")).toContain(
    "A {{ x }} and {% raw %} and &lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; stay as typed.",
  );
});

describe("every page", () => {
  const pages = () => filesIn(folder).filter((file) => file.endsWith(".html"));

  test("states its policy before anything else", () => {
    for (const page of pages()) {
      expect(read(page)).toMatch(
        /^<!DOCTYPE html>\n<html lang="en"><head><meta http-equiv="Content-Security-Policy"/,
      );
    }
  });

  test("has no style and no script in it", () => {
    for (const page of pages()) {
      expect(read(page)).not.toMatch(
        / style=|<style|<script(?! defer src| type="application\/ld\+json")| on\w+=/,
      );
    }
  });

  test("allows WebAssembly only where it searches", () => {
    expect(pages().filter((page) => read(page).includes("wasm-unsafe-eval"))).toEqual([
      "search/index.html",
    ]);
  });

  test("has one heading of the first rank and leaves none out", () => {
    for (const page of pages()) {
      const ranks = [...read(page).matchAll(/<h([1-6])[ >]/g)].map(([, rank]) => Number(rank));
      expect(
        ranks.filter((rank) => rank === 1),
        page,
      ).toHaveLength(1);
      for (const [index, rank] of ranks.entries()) {
        expect(rank - (ranks[index - 1] ?? 0), `${page}: ${ranks.join(" ")}`).toBeLessThanOrEqual(
          1,
        );
      }
    }
  });

  test("has each id once", () => {
    for (const page of pages()) {
      const ids = [...read(page).matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
      expect(new Set(ids).size, page).toBe(ids.length);
    }
  });

  test("keeps private things to itself", () => {
    for (const page of pages()) {
      for (const word of privateWords) expect(read(page), page).not.toContain(word);
    }
  });
});

test("the style sheets of an ordinary page weigh at most 14 KiB as sent", () => {
  const linked = [...read("index.html").matchAll(/<link rel="stylesheet" href="([^"]*)"/g)];
  expect(linked.map(([, file]) => file)).toEqual(["assets/tokens.css", "assets/sheet.css"]);
  const bytes = linked.map(([, file]) => Buffer.byteLength(read(file ?? "")));
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(14 * 1024);
});

test("a second run beside the first writes the same bytes", async () => {
  const again = scratchFolder();
  await renderSite(site, again);
  for (const file of filesIn(again).filter((each) => each.endsWith(".html"))) {
    expect(readFileSync(join(again, file), "utf8"), file).toBe(read(file));
  }
});
