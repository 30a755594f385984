// A builder writes rows and cut-outs into an entry; a reader looks at the drawings, and prints.

import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { AxeBuilder } from "@axe-core/playwright";
import { HtmlValidate } from "html-validate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "../support/chromium.ts";
import { pdfPaths } from "../support/pdf-paths.ts";
import { layoutBlock } from "../support/templates.ts";
import { entry, smallRegisters } from "../support/temporary-journal.ts";
import { witness } from "../support/witness.ts";

const row = (title: string, yaml: string) => layoutBlock(`title: ${title}\nrow: { ${yaml} }`);

const prose = `Marked out *six* parts.

${layoutBlock(`title: Spar, <upper> row & "caps"
step: W-1
drawing: W-01 rev B
sheet: 0.032 in
row:
  length: 96.238 in
  fastener: AN470AD4-7
  edge: 5 D
  side: 0.32 in
  count: 118
  check: { edge: [edge, edge-distance-2d], pitch: pitch-3d-navy }`)}
Then words, and another:

${layoutBlock(`title: Skin
row:
  length: 17.250 in
  fastener: AN426AD3-3.5
  edge: 3/8 in
  side: 0.25 in
  width: 5 in
  pitch: 1.1 in
  keep-outs: [{ from: 8.36 in, to: 8.89 in, clear: 1.5 D, what: stringer }]
  check: { edge: edge-distance-2d }`)}
${row("Too close", "length: 3 in, diameter: 5/32 in, edge: 1/4 in, count: 9, check: { edge: edge-distance-2d, pitch: pitch-3d-navy }")}
${row("Brackets", "length: 120 mm, diameter: 3/16 in, edge: 10 mm, count: 5")}
${row("Rivnuts", "length: 4 in, diameter: 1/4 in, edge: 1/2 in, count: 3")}
${row("No room", "length: 1 in, diameter: 1/8 in, edge: 2 D, pitch-min: 3 D, count: 9")}
${layoutBlock(`title: Hatch
cut-out: { shape: rectangle, length: 8 in, width: 5 1/2 in, corner-hole: 7/8 in, check: { corner: edge } }`)}
${layoutBlock("title: Drain\ncut-out: { shape: slot, length: 1 1/2 in, width: 3/8 in }")}
${layoutBlock("title: Hole\ncut-out: { shape: circle, diameter: 2 in }")}
Last words.
`;
const journal = {
  ...smallRegisters,
  "project.yaml": `${smallRegisters["project.yaml"]}address: https://journal.example/\n`,
  "days/2026-03-14.md": entry("title: Marking out\n", prose),
  "days/2026-03-15.md":
    "---\ndate: 2026-03-15\nprivate: true\n---\nQuietly.\n\n" +
    row("Secretbracket", "length: 4 in, diameter: 1/8 in, edge: 1/2 in, count: 3"),
};

const cwd = mkdtempSync(join(tmpdir(), "witness-layouts-"));
const site = join(cwd, "out", "content", "site");
let browser: Browser;

beforeAll(async () => {
  for (const [name, text] of Object.entries(journal)) {
    mkdirSync(dirname(join(cwd, "content", name)), { recursive: true });
    writeFileSync(join(cwd, "content", name), text);
  }
  const [launched, { status, stdout, stderr }] = await Promise.all([
    launchChromium(),
    witness(["build"], { cwd }),
  ]);
  browser = launched;
  expect([status, stderr], stdout).toEqual([0, ""]);
});

afterAll(async () => {
  await browser?.close();
  rmSync(cwd, { recursive: true, force: true });
});

const day = () => join(site, "2026/03/14/index.html");

const looks = [
  { width: 360, colorScheme: "light" },
  { width: 1280, colorScheme: "dark" },
] as const;
type Look = (typeof looks)[number];
const pages = new Map<Look, { readonly page: Page; readonly said: readonly string[] }>();

/** The day's sheet as it was opened, and what it said in the console. */
async function opened(look: Look = looks[1]) {
  const known = pages.get(look);
  if (known) return known;
  const { width, colorScheme } = look;
  const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme });
  const page = await context.newPage();
  const said: string[] = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  await page.goto(pathToFileURL(day()).href);
  // What a checker says later is not the page's.
  const of = { page, said: [...said] };
  pages.set(look, of);
  return of;
}

describe.each(looks)("at $width px, $colorScheme", (look) => {
  test("nothing is amiss for a screen reader, the console or the width", async () => {
    const { page, said } = await opened(look);
    const { violations } = await new AxeBuilder({ page })
      .include("section[aria-labelledby=layouts]")
      .analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
    expect(said).toEqual([]);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);
  });

  test("each drawing is an image with a name and a description", async () => {
    const { page } = await opened(look);
    const drawings = page.locator(".layout svg[role=img]");
    expect(await drawings.count()).toBe(8);
    for (const drawing of await drawings.all()) {
      const named = (await drawing.getAttribute("aria-labelledby"))?.split(" ") ?? [];
      expect(named).toHaveLength(2);
      for (const id of named)
        expect((await page.locator(`#${id}`).textContent())?.length).toBeGreaterThan(10);
    }
  });

  test("no words of a drawing run into each other or off the screen", async () => {
    const { page } = await opened(look);
    const crossed = await page.evaluate(() =>
      [...document.querySelectorAll(".layout svg[role=img]")].flatMap((drawing) => {
        const words = [...drawing.querySelectorAll("text")].map((element) => ({
          text: element.textContent ?? "",
          box: element.getBoundingClientRect(),
        }));
        const off = words.filter(({ box }) => box.left < 0 || box.right > window.innerWidth);
        const met = words.flatMap((one, index) =>
          words
            .slice(index + 1)
            .filter(
              ({ box }) =>
                Math.min(one.box.right, box.right) - Math.max(one.box.left, box.left) > 1 &&
                Math.min(one.box.bottom, box.bottom) - Math.max(one.box.top, box.top) > 3,
            )
            .map((other) => `${one.text} | ${other.text}`),
        );
        return [...off.map(({ text }) => `off: ${text}`), ...met];
      }),
    );
    expect(crossed).toEqual([]);
  });
});

test("marks have a shape and words of their own for each size", async () => {
  const { page } = await opened();
  const legends = await page.locator(".layout .key").allTextContents();
  expect(legends).toEqual([
    "1/8 in: copper cleco, drawn as a filled circle",
    "3/32 in: silver cleco, drawn as a hollow circle",
    "K1: stringer, kept clear by 1.5 D",
    "5/32 in: black cleco, drawn as a square",
    "3/16 in: brass cleco, drawn as a diamond",
    "1/4 in: no colour of its own in the trade's code, drawn as a triangle",
  ]);
  const shapes = await page
    .locator(".layout .key path")
    .evaluateAll((paths) => paths.map((path) => path.getAttribute("d")));
  expect(new Set(shapes).size).toBe(5);
});

test("every place of the drawing stands in the table, and the table is exact", async () => {
  const { page } = await opened();
  const rows = page.locator("#layout-2 table").last().locator("tbody tr");
  expect(await rows.count()).toBe(16);
  expect(await rows.nth(5).locator("th, td").allTextContents()).toEqual([
    "6",
    "5.875",
    "5 7/8",
    "11.375",
    "149.23",
  ]);
  expect(await page.locator("#layout-2 svg[role=img] .cleco").count()).toBe(16);
  expect(await page.locator("#layout-1 table").last().locator("tbody tr").count()).toBe(118);
});

test("what breaks a rule says so in words, and what cannot be laid out says why", async () => {
  const { page } = await opened();
  const close = page.locator("#layout-3");
  expect(await close.locator(".verdict").allTextContents()).toEqual([
    "out: 0.0625 in below",
    "out: 0.1563 in below",
  ]);
  const room = page.locator("#layout-6");
  expect(await room.textContent()).toContain(
    "Cannot be laid out: so many rivets would stand 0.0625 in apart, below the least pitch of 0.375 in.",
  );
  expect(await room.locator("svg[role=img], a[href$=pdf]").count()).toBe(0);
  const findings = await page.locator("section[aria-labelledby=findings]").allTextContents();
  expect(findings.join(" ")).toContain("layout breaks rule");
  expect(findings.join(" ")).toContain("row does not fit");
});

test("in the prose a block is a link to its drawing, also in the feed", async () => {
  const { page } = await opened();
  const links = page.locator(".prose a");
  expect(await links.count()).toBe(9);
  expect(await links.first().textContent()).toBe('Layout 1: Spar, <upper> row & "caps"');
  await links.first().click();
  expect(await page.evaluate(() => location.hash)).toBe("#layout-1");
  const feed = JSON.parse(readFileSync(join(site, "feed.json"), "utf8")) as {
    items: { content_html: string }[];
  };
  expect(feed.items[0]?.content_html).toContain(
    'href="https://journal.example/2026/03/14/#layout-2">Layout 2: Skin</a>',
  );
});

test("the sheets to print are there, on both papers, and only for what can be drawn", async () => {
  const { page } = await opened();
  const hrefs = await page
    .locator(".layout a[href$=pdf]")
    .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
  expect(hrefs).toHaveLength(16);
  for (const href of hrefs) expect(existsSync(join(day(), "..", href))).toBe(true);
  expect(hrefs[2]).toBe("../../../drawings/2026-03-14-2-a4.pdf");
  const sheets = await pdfPaths(readFileSync(join(site, "drawings/2026-03-14-1-letter.pdf")));
  expect(sheets).toHaveLength(11);
});

test("a private day's layouts are in no page and no drawing", () => {
  expect(existsSync(join(site, "drawings/2026-03-15-1-a4.pdf"))).toBe(false);
  expect(readFileSync(join(site, "feed.xml"), "utf8")).not.toContain("Secretbracket");
});

test("the page is valid and has no style of its own", async () => {
  const html = readFileSync(day(), "utf8");
  expect(html).not.toMatch(/\sstyle=/);
  const report = await new HtmlValidate({
    extends: ["html-validate:standard"],
    // `>` may stand in text as it is.
    rules: { "no-raw-characters": "off" },
  }).validateString(html);
  expect(
    report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message }) => `${ruleId}: ${message}`),
    ),
  ).toEqual([]);
});
