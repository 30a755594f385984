// A narrow window, large text, the keyboard alone: every kind of page.

import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "../support/chromium.ts";
import { hostDemo, pageKinds } from "../support/demo-site.ts";

let browser: Browser;
let host: { address: string; close: () => void };

beforeAll(async () => {
  [browser, host] = await Promise.all([launchChromium(), hostDemo()]);
});

afterAll(async () => {
  await browser?.close();
  host?.close();
});

async function opened(at: string, options: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 320, height: 700 }, ...options });
  const page = await context.newPage();
  await page.goto(host.address + at, { waitUntil: "networkidle" });
  return page;
}

/** Everything axe has, with the sizes of targets, which it leaves out unless asked. */
async function violations(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({ rules: { "target-size": { enabled: true } } })
    .analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target}`));
}

/** What sticks out of the window, unless it scrolls by itself. */
function sticksOut(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    document.documentElement.scrollWidth <= window.innerWidth
      ? []
      : [...document.querySelectorAll("body *")]
          .filter((each) => each.getBoundingClientRect().right > window.innerWidth + 0.5)
          .map((each) => `${each.tagName} ${each.textContent?.slice(0, 40)}`)
          .slice(0, 5),
  );
}

describe.each(Object.entries(pageKinds))("%s", (_kind, at) => {
  test.each(["light", "dark"] as const)(
    "at 320 px with text of twice its size: %s",
    async (colorScheme) => {
      const page = await opened(at, { colorScheme });
      await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
      expect(await sticksOut(page)).toEqual([]);
      expect(await violations(page)).toEqual([]);
      await page.context().close();
    },
  );

  test("targets are 24 px or stand clear of one another, at 320 and at 1280 px", async () => {
    for (const width of [320, 1280]) {
      const page = await opened(at, { viewport: { width, height: 900 } });
      expect(await violations(page)).toEqual([]);
      await page.context().close();
    }
  });

  test("Tab goes through all of it, in order, and always shows where it is", async () => {
    const page = await opened(at, { viewport: { width: 1280, height: 900 } });
    const count = await page.evaluate(() => {
      const open = (each: Element) =>
        each.checkVisibility({ visibilityProperty: true }) || each.matches(".skip");
      const all = [
        ...document.querySelectorAll("a[href], button, input, select, summary, [tabindex='0']"),
      ];
      return all.filter(open).map((each, index) => each.setAttribute("data-nth", String(index)))
        .length;
    });
    expect(count).toBeGreaterThan(8);
    const wrong: string[] = [];
    for (let step = 0; step < count; step += 1) {
      await page.keyboard.press("Tab");
      const focus = await page.evaluate(() => {
        const element = document.activeElement;
        if (!element) return undefined;
        // Of a link over two lines or around a picture, the first piece that can be seen.
        const pieces = [
          ...element.getClientRects(),
          ...(element.firstElementChild?.getClientRects() ?? []),
        ];
        const box = pieces.find(({ width, height }) => width > 0 && height > 0);
        if (!box) return { nth: element.getAttribute("data-nth"), what: "nothing to be seen" };
        const style = getComputedStyle(element);
        const hit = document.elementFromPoint(
          Math.min(innerWidth - 1, Math.max(0, box.left + Math.min(4, box.width / 2))),
          Math.min(innerHeight - 1, Math.max(0, box.top + Math.min(4, box.height / 2))),
        );
        return {
          nth: element.getAttribute("data-nth"),
          marked: style.outlineStyle !== "none" && Number.parseFloat(style.outlineWidth) >= 2,
          seen: box.bottom > 0 && box.top < innerHeight && box.width > 0,
          covered: hit !== null && !element.contains(hit) && !hit.contains(element),
          what: element.outerHTML.slice(0, 90),
        };
      });
      if (focus?.nth !== String(step)) wrong.push(`${step}: ${focus?.nth} ${focus?.what}`);
      else if (!focus.marked || !focus.seen || focus.covered) wrong.push(JSON.stringify(focus));
    }
    expect(wrong).toEqual([]);
    await page.context().close();
  });
});
