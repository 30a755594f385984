// A photograph over the whole window, by keyboard and by mouse, and without a script.

import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
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

async function opened(at: string, script = true): Promise<{ page: Page; said: string[] }> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    javaScriptEnabled: script,
  });
  const page = await context.newPage();
  const said: string[] = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  await page.goto(host.address + at, { waitUntil: "networkidle" });
  return { page, said };
}

describe("a photograph", () => {
  test("opens with Enter, turns with the arrows, closes with Escape, and the focus is back", async () => {
    const { page, said } = await opened("2026/03/14/index.html");
    await page.locator(".photo > a").first().focus();
    await page.keyboard.press("Enter");
    const view = page.getByRole("dialog", { name: "Photograph" });
    await view.waitFor();
    const status = view.getByRole("status");
    expect(await status.textContent()).toBe("1 of 2: Left spar with 160 clecos in two rows");
    await page.keyboard.press("ArrowRight");
    expect(await status.textContent()).toMatch(/^2 of 2: Doubler blank/);
    await page.keyboard.press("ArrowRight");
    expect(await status.textContent()).toMatch(/^2 of 2/);
    const { violations } = await new AxeBuilder({ page }).include(".view").analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    const box = await view.locator("img").boundingBox();
    expect(box?.width).toBeGreaterThan(300);
    expect((box?.x ?? -1) >= 0 && (box?.x ?? 0) + (box?.width ?? 0) <= 360).toBe(true);
    await page.keyboard.press("Escape");
    expect(await view.count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.closest("figure")?.id)).toBe(
      "photo-2",
    );
    expect(said).toEqual([]);
    await page.context().close();
  });

  test("Tab stays in the view, and its buttons turn it", async () => {
    const { page } = await opened("photographs/2026/03/index.html");
    await page.locator(".photo > a").nth(1).click();
    const view = page.getByRole("dialog", { name: "Photograph" });
    expect(await view.getByRole("status").textContent()).toMatch(/^2 of \d+: /);
    await view.getByRole("button", { name: "Before" }).press("Enter");
    expect(await view.getByRole("status").textContent()).toMatch(/^1 of \d+: /);
    for (let step = 0; step < 6; step += 1) {
      await page.keyboard.press("Tab");
      // Past the last button the browser's own window has the focus, never the page behind.
      const where = await page.evaluate(
        () =>
          document.activeElement === document.body || !!document.activeElement?.closest(".view"),
      );
      expect(where).toBe(true);
    }
    await view.getByRole("button", { name: "Close" }).click();
    expect(await view.count()).toBe(0);
    await page.context().close();
  });

  test("without a script the link opens the picture itself", async () => {
    const { page } = await opened("2026/03/14/index.html", false);
    await page.locator(".photo > a").first().click();
    await page.waitForURL(/\/photos\/[0-9a-f]+-1200\.jpg$/);
    await page.context().close();
  });
});
