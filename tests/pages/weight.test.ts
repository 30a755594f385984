// What a reader has to load. Bars are bytes as they cross the line: text packed with gzip, as
// every static host does, pictures and faces as they are. Text is held unpacked as well, so that
// packing hides no growth; DEVELOPERS.md says why those two bars differ.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoBuilt } from "../support/build-demo.ts";
import { launchChromium } from "../support/chromium.ts";
import { demoSite, hostDemo, hostSite, pageKinds } from "../support/demo-site.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { projectFolder, shop, witness } from "../support/witness.ts";

const packed = (bytes: Uint8Array) => gzipSync(bytes).length;

describe("files", () => {
  beforeAll(demoBuilt);

  test("every page is at most 20 kB, and most are so before packing", () => {
    const pages = filesIn(demoSite)
      .filter((name) => name.endsWith(".html"))
      .map((name) => ({ name, bytes: readFileSync(join(demoSite, name)) }));
    expect(pages.length).toBeGreaterThan(300);
    expect(pages.filter(({ bytes }) => packed(bytes) > 20_000)).toEqual([]);
    // What is longer holds many readings, sessions or photographs of one thing.
    expect(pages.filter(({ bytes }) => bytes.length > 45_000).map(({ name }) => name)).toEqual([]);
    const long = pages.filter(({ bytes }) => bytes.length > 20_000);
    expect(long.length / pages.length).toBeLessThan(0.1);
  });

  test("the style sheets of any page are at most 14 kB, and of most pages before packing", () => {
    const bytes = (name: string) => readFileSync(join(demoSite, "assets", name));
    const common = ["tokens.css", "sheet.css"].map(bytes);
    const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
    expect(sum(common.map((each) => each.length))).toBeLessThanOrEqual(14_000);
    const all = filesIn(join(demoSite, "assets")).filter((name) => name.endsWith(".css"));
    expect(sum(all.map((name) => packed(bytes(name))))).toBeLessThanOrEqual(14_000);
  });

  test("the faces are at most 50 kB", () => {
    const faces = filesIn(join(demoSite, "assets")).filter((name) => name.endsWith(".woff2"));
    const bytes = faces.map((name) => readFileSync(join(demoSite, "assets", name)).length);
    expect(faces).toHaveLength(4);
    expect(bytes.reduce((all, each) => all + each, 0)).toBeLessThanOrEqual(50_000);
  });
});

describe("views", () => {
  let browser: Browser;
  let host: { address: string; close: () => void };

  beforeAll(async () => {
    [browser, host] = await Promise.all([launchChromium(), hostDemo()]);
  });

  afterAll(async () => {
    await browser?.close();
    host?.close();
  });

  /** Bytes over the line for a page in a fresh browser, and how many requests they took. */
  async function loaded(
    address: string,
    window: { width: number; height: number; scale: number },
    scrolled = false,
  ): Promise<{ bytes: number; requests: number }> {
    const { width, height, scale } = window;
    const context = await browser.newContext({
      viewport: { width, height },
      deviceScaleFactor: scale,
    });
    const page = await context.newPage();
    const line = await context.newCDPSession(page);
    await line.send("Network.enable");
    let bytes = 0;
    let requests = 0;
    line.on("Network.loadingFinished", ({ encodedDataLength }) => {
      bytes += encodedDataLength;
      requests += 1;
    });
    await page.goto(address, { waitUntil: "networkidle" });
    await page.evaluate(async () => void (await document.fonts.ready));
    if (scrolled) {
      for (const image of await page.locator("main img").all()) {
        await image.scrollIntoViewIfNeeded();
        await image.evaluate((each: HTMLImageElement) => each.decode());
      }
      await page.waitForLoadState("networkidle");
    }
    await context.close();
    return { bytes, requests };
  }

  const desk = { width: 1280, height: 900, scale: 1 };
  const phone = { width: 412, height: 823, scale: 1.75 };

  test.each(Object.entries(pageKinds))("the first view of %s is at most 200 kB", async (_, at) => {
    const views = await Promise.all(
      [desk, phone].map((window) => loaded(host.address + at, window)),
    );
    for (const { bytes, requests } of views) {
      // The page and its style sheets at the least; a busy machine may be late with the rest.
      expect(requests).toBeGreaterThanOrEqual(3);
      expect(bytes).toBeGreaterThan(5_000);
      expect(bytes).toBeLessThanOrEqual(200_000);
    }
  });

  test.each(["index.html", "2026/03/index.html", "2025/10/index.html"])(
    "the first view of the timeline %s is at most 150 kB",
    async (at) => {
      for (const window of [desk, phone]) {
        const { bytes } = await loaded(host.address + at, window);
        expect(bytes).toBeGreaterThan(30_000);
        expect(bytes).toBeLessThanOrEqual(150_000);
      }
    },
  );

  test("a day with eight photographs is at most 600 kB when all have been seen", async () => {
    // The heaviest of the sample journal, so that the bar is not kept by small ones.
    const photos = join(projectFolder, "site-demo", "photos");
    const heaviest = filesIn(photos)
      .map((name) => readFileSync(join(photos, name)))
      .sort((one, other) => other.length - one.length)
      .slice(0, 8);
    const lines = heaviest.map(
      (_, index) => `  - { file: p${index}.jpg, caption: Picture ${index} }`,
    );
    const { cwd, file } = shop({
      ...Object.fromEntries(heaviest.map((bytes, index) => [`photos/p${index}.jpg`, bytes])),
      "days/2026-03-14.md": `---\ndate: 2026-03-14\ntitle: Eight\nphotos:\n${lines.join("\n")}\n---\n\nEight.\n`,
    });
    const built = await witness(["build"], { cwd });
    expect(built.stdout).toContain("8 photographs");
    const site = await hostSite(file("out/content/site"));
    for (const window of [desk, phone]) {
      const { bytes, requests } = await loaded(
        `${site.address}2026/03/14/index.html`,
        window,
        true,
      );
      expect(requests).toBeGreaterThan(12);
      expect(bytes).toBeLessThanOrEqual(600_000);
    }
    site.close();
  });
});
