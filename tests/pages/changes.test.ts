// What has changed since a reader's last look: kept in the browser alone, and only when asked.

import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchChromium } from "../support/chromium.ts";
import { hostDemo } from "../support/demo-site.ts";

let browser: Browser;
let host: { address: string; close: () => void };

beforeAll(async () => {
  [browser, host] = await Promise.all([launchChromium(), hostDemo()]);
});

afterAll(async () => {
  await browser?.close();
  host?.close();
});

test("nothing is kept until the reader asks, and nothing after it is forgotten", async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const asked: string[] = [];
  await page.goto(`${host.address}changes/index.html`);
  page.on("request", (request) => asked.push(request.url()));
  const kept = () => page.evaluate(() => ({ ...localStorage }));
  const status = page.getByRole("status");
  await expect
    .poll(() => status.textContent())
    .toBe("Nothing is remembered of what you have seen.");
  expect(await kept()).toEqual({});

  await page.getByRole("button", { name: "I have seen these" }).click();
  expect(await status.textContent()).toBe("Nothing has changed since you had seen all.");
  const [[name, value] = []] = Object.entries(await kept());
  expect(Number(value)).toBeGreaterThan(100);

  // As if three sheets ago.
  await page.evaluate(([key, number]) => localStorage.setItem(String(key), String(number)), [
    name,
    Number(value) - 3,
  ] as const);
  await page.reload();
  await expect.poll(() => status.textContent()).toBe("3 changes since you had seen all.");
  expect(await page.locator(".changes mark").count()).toBe(3);
  expect(await page.locator(".changes li").first().textContent()).toContain("new to you");

  await page.getByRole("button", { name: "Forget that" }).click();
  expect(await kept()).toEqual({});
  expect(await context.cookies()).toEqual([]);
  expect(asked.filter((url) => !url.startsWith(host.address))).toEqual([]);
  await context.close();
});

test("without a script the list is whole, and the button is not there", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${host.address}changes/index.html`);
  expect(await page.locator(".changes li").count()).toBe(60);
  expect(await page.getByRole("button").count()).toBe(0);
  await context.close();
});
