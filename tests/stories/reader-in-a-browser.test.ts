// What a reader does with the sample site, in a real Chromium.

import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "../support/chromium.ts";
import { demoSite, hostDemo, pageKinds } from "../support/demo-site.ts";

let browser: Browser;
let host: { address: string; close: () => void };

beforeAll(async () => {
  [browser, host] = await Promise.all([launchChromium(), hostDemo()]);
});

afterAll(async () => {
  await browser?.close();
  host?.close();
});

/** Opens a page and keeps everything it says or asks for. */
async function open(address: string, options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const said: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => said.push(`error: ${error.message}`));
  page.on("request", (request) => requests.push(request.url()));
  page.on("requestfailed", (request) => said.push(`failed: ${request.url()}`));
  await page.goto(address, { waitUntil: "networkidle" });
  return { page, said, requests, close: () => context.close() };
}

async function violations(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target}`));
}

/** How far the page is wider than its window; only what scrolls on its own may be. */
function overhang(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

describe.each(Object.entries(pageKinds))("%s", (_kind, path) => {
  test.each([
    ["light, 1280 px", { colorScheme: "light" }],
    ["dark, 320 px", { colorScheme: "dark", viewport: { width: 320, height: 700 } }],
  ] as const)("is accessible, silent and from one origin: %s", async (_how, options) => {
    const { page, said, requests, close } = await open(host.address + path, options);
    expect(await violations(page)).toEqual([]);
    expect(said).toEqual([]);
    expect(
      requests.filter((url) => !url.startsWith(host.address) && !url.startsWith("data:")),
    ).toEqual([]);
    expect(await overhang(page)).toBeLessThanOrEqual(0);
    await close();
  });
});

test("text at twice its size overlaps nothing and hides nothing", async () => {
  const { page, close } = await open(`${host.address}2026/03/14/index.html`);
  await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
  expect(await violations(page)).toEqual([]);
  expect(await overhang(page)).toBeLessThanOrEqual(0);
  await close();
});

describe("the search", () => {
  async function search(
    words: string,
  ): Promise<{ page: Page; titles: string[]; close: () => Promise<void> }> {
    const { page, said, requests, close } = await open(`${host.address}search/index.html`);
    await page.getByLabel("Words, a part number, a size").fill(words);
    await page.locator(".results li").first().waitFor();
    expect(said).toEqual([]);
    expect(requests.filter((url) => !url.startsWith(host.address))).toEqual([]);
    const titles = await page.locator(".results h2").allTextContents();
    return { page, titles, close };
  }

  test("typed words are answered with days, and an answer opens its day", async () => {
    const { page, titles, close } = await search("cigarette papers");
    expect(titles).toContain("Doublers, and the worth of a long bench");
    expect(await violations(page)).toEqual([]);
    await page
      .getByRole("link", { name: "Doublers, and the worth of a long bench" })
      .first()
      .click();
    await page.waitForURL(/\/2026\/03\/14\//);
    expect(await page.locator("h1").textContent()).toBe("Doublers, and the worth of a long bench");
    await close();
  });

  // What is asked in a shop, and a sheet that has to be among the first ten.
  test.each([
    ["AN470AD4-5", "First real rivets"],
    ["AN470", "Two hundred and eighty-four rivets"],
    ["AN426AD3-3.5", "HS-08: Close the skins"],
    ["AN3-5A", "Right aileron closed"],
    ["3/32", "Edge distance, 3/32 rivet"],
    ["1/8", "Rivet pitch, 1/8 rivet"],
    [".032", "Hoops"],
    [".125", "Rivet through a hollow tube: at least an eighth"],
    ["No. 30", "No. 30"],
    ["#30", "No. 30"],
    ["torque", "Recommended torque for nuts and bolts"],
    ["lbf·in", "AN3 bolt with a tension nut"],
    ["2024-T3", "HS-01: Check the parts against the list"],
    ["WS-01", "Lower row"],
    ["LS-01", "LS-01: Main spar: caps, web and doublers"],
    ["D-004", "A row I reject myself"],
    ["edge distance", "Edge distance, 1/8 rivet"],
    ["dimple", "A thousand dimples"],
  ])("%s is found: %s", async (words, title) => {
    const { titles, close } = await search(words);
    expect(titles.length).toBeGreaterThan(0);
    expect(titles.join("\n")).toContain(title);
    await close();
  });

  test("a filter narrows the answers", async () => {
    const { page, close } = await search("spar");
    const all = await page.locator(".count").textContent();
    await page.getByLabel("Month", { exact: true }).selectOption({ index: 1 });
    await expect.poll(() => page.locator(".count").textContent()).not.toBe(all);
    await close();
  });

  test("answers have their date and picture, and can be put in the order of days or hours", async () => {
    const { page, close } = await search("torque");
    expect(await page.locator(".results li:has(small) img[alt]").count()).toBeGreaterThan(3);
    const dates = async () =>
      (await page.locator(".results small").allTextContents()).map((text) => Date.parse(text));
    const first = page.locator(".results h2").first();
    const fit = await first.textContent();
    await page.getByLabel("In order of").selectOption("date desc");
    await expect.poll(() => first.textContent()).not.toBe(fit);
    const newest = await dates();
    expect(newest).toEqual(newest.toSorted((one, other) => other - one));
    const before = await first.textContent();
    await page.getByLabel("In order of").selectOption("hours desc");
    await expect.poll(() => first.textContent()).not.toBe(before);
    await close();
  });

  test("the first search loads at most 200 kB", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    let bytes = 0;
    page.on("response", async (response) => {
      if (!response.url().includes("/pagefind/")) return;
      bytes += (await response.body().catch(() => Buffer.alloc(0))).length;
    });
    await page.goto(`${host.address}search/index.html`, { waitUntil: "networkidle" });
    await page.getByLabel("Words, a part number, a size").fill("torque");
    await page.locator(".results li").first().waitFor();
    await page.waitForLoadState("networkidle");
    expect(bytes).toBeGreaterThan(10_000);
    expect(bytes).toBeLessThanOrEqual(200_000);
    await context.close();
  });

  test("without a script there are lists by month and assembly instead", async () => {
    const { page, close } = await open(`${host.address}search/index.html`, {
      javaScriptEnabled: false,
    });
    expect(await page.locator(".search").isVisible()).toBe(false);
    expect(await page.getByRole("link", { name: "March 2026" }).count()).toBeGreaterThan(0);
    await close();
  });
});

test("every page reads without a script", async () => {
  const { page, said, close } = await open(host.address, { javaScriptEnabled: false });
  await page.getByRole("link", { name: "Hours", exact: true }).first().click();
  expect(await page.locator("h1").textContent()).toBe("Hours");
  expect(said).toEqual([]);
  await close();
});

test("the site reads below a sub-path", async () => {
  const below = await hostDemo("/a/b/");
  const { page, said, requests, close } = await open(below.address);
  await page.getByRole("link", { name: "Assemblies", exact: true }).first().click();
  expect(page.url()).toBe(`${below.address}assemblies/index.html`);
  expect(said).toEqual([]);
  expect(requests.filter((url) => !url.startsWith(below.address))).toEqual([]);
  await close();
  below.close();
});

test("the site reads straight from the disk", async () => {
  const { page, close } = await open(`file://${demoSite}/index.html`);
  const background = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
  expect(background).toContain("B612");
  await page.getByRole("link", { name: "Readings", exact: true }).first().click();
  expect(await page.locator("h1").textContent()).toBe("Readings");
  expect(page.url()).toBe(`file://${demoSite}/readings/index.html`);
  await close();
});

test("the keyboard reaches everything in order, and shows where it is", async () => {
  const { page, close } = await open(host.address);
  await page.keyboard.press("Tab");
  const first = await page.evaluate(() => document.activeElement?.textContent?.trim());
  expect(first).toMatch(/skip/i);
  for (let step = 0; step < 25; step++) {
    await page.keyboard.press("Tab");
    const focus = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement;
      const { width, height, top, bottom } = element.getBoundingClientRect();
      const style = getComputedStyle(element);
      return {
        seen: width > 0 && height > 0 && bottom > 0 && top < window.innerHeight,
        marked: style.outlineStyle !== "none" || style.boxShadow !== "none",
        what: element.outerHTML.slice(0, 80),
      };
    });
    expect(focus, focus.what).toMatchObject({ seen: true, marked: true });
  }
  await close();
});

test("a photograph is shown upright, in a size that fits, and its original is nowhere", async () => {
  const { page, requests, close } = await open(`${host.address}2026/03/14/index.html`);
  const picture = page.locator("main img").first();
  await picture.scrollIntoViewIfNeeded();
  await expect
    .poll(() => picture.evaluate((image: HTMLImageElement) => image.naturalWidth))
    .toBeGreaterThan(300);
  expect(requests.some((url) => /\/photos\/[0-9a-f]+-\d+\.(avif|jpg)$/.test(url))).toBe(true);
  await close();
});
