// One folder with everything in it, as it lies on somebody's stick: no server, no program.

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoBuilt } from "../support/build-demo.ts";
import { launchChromium } from "../support/chromium.ts";
import { type Element, htmlTree } from "../support/html-tree.ts";
import { identityFaults } from "../support/identity-crawl.ts";
import { pdfText } from "../support/pdf-text.ts";
import { hoursFrom, projectedFrom, type RecordFile, tenthsFrom } from "../support/record-sums.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { projectFolder, shop, type Witnessed, witness } from "../support/witness.ts";

let above: string;
let stick: string;
let made: Witnessed;
beforeAll(async () => {
  // The photographs are then encoded already.
  await demoBuilt();
  above = mkdtempSync(join(tmpdir(), "witness-stick-"));
  made = await witness(["export", "--journal", "site-demo", "--take-away", "--out", above], {
    cwd: projectFolder,
  });
  // Away from where it was made: nothing in it may point back there.
  stick = join(above, "a stick, and a long way off");
  if (made.status === 0) {
    cpSync(join(above, "site-demo", "public-take-away"), stick, { recursive: true });
    rmSync(join(above, "site-demo"), { recursive: true });
  }
}, 600_000);
afterAll(() => rmSync(above, { recursive: true, force: true }));

const textOf = (name: string) => readFileSync(join(stick, name), "utf8");
const recordOf = () => JSON.parse(textOf("record/record.json")) as RecordFile;

describe("the sample journal, taken away", () => {
  test("says where it is and how much, and holds site, book, data, schema and a text to read first", () => {
    expect([made.status, made.stderr]).toEqual([0, ""]);
    expect(made.stdout).toMatch(/^take-away: .*public-take-away\n/);
    expect(made.stdout).toMatch(/ {2}site\/ +[\d.]+ MB {2}\d{4} files\n/);
    expect(readdirSync(stick).sort()).toEqual([
      ".witness-site",
      "READ-FIRST.txt",
      "files.csv",
      "files.sha256",
      "record",
      "site",
    ]);
    expect(filesIn(join(stick, "record"))).toEqual(
      expect.arrayContaining(["book.pdf", "hours.csv", "record.json", "record.schema.json"]),
    );
    expect(textOf("READ-FIRST.txt")).toMatch(/^PUBLIC EDITION\r\n/);
    expect(textOf("READ-FIRST.txt")).not.toContain("journal/");
  });

  test("lists every file with its size and digest, and common tools agree", () => {
    const listed = parse(textOf("files.csv"), { bom: true, columns: true }) as Record<
      "path" | "bytes" | "sha256",
      string
    >[];
    const unlisted = [".witness-site", "files.csv", "files.sha256"];
    expect(listed.map(({ path }) => path)).toEqual(
      filesIn(stick).filter((name) => !unlisted.includes(name)),
    );
    for (const { path, bytes, sha256 } of listed) {
      const data = readFileSync(join(stick, path));
      const digest = createHash("sha256").update(data).digest("hex");
      expect([path, Number(bytes), sha256.replace(/^'/, "")]).toEqual([path, data.length, digest]);
    }
    const list = createHash("sha256").update(textOf("files.sha256")).digest("hex");
    expect(made.stdout).toContain(`files.sha256: SHA-256 ${list}`);
    const checked = () =>
      spawnSync("sha256sum", ["-c", "--quiet", "files.sha256"], { cwd: stick, encoding: "utf8" });
    expect([checked().status, checked().stdout]).toEqual([0, ""]);
    const hours = join(stick, "record", "hours.csv");
    const before = readFileSync(hours);
    writeFileSync(hours, Buffer.concat([before, Buffer.from(" ")]));
    expect(checked().stdout).toContain("record/hours.csv: FAILED");
    writeFileSync(hours, before);
  });

  test("says the same identity on every page of paper, in every text and in all data", async () => {
    const { faults, crawled } = await identityFaults(stick, {
      designation: "OU-2",
      serial: "0031",
      registration: "N00ZL",
      builder: "Tamsin Penhallick",
    });
    expect(faults).toEqual([]);
    expect(crawled).toEqual(
      expect.arrayContaining(["READ-FIRST.txt", "record/book.pdf", "record/portion.pdf"]),
    );
  });

  test("its record.json alone comes to its totals, to the minute", () => {
    const record = recordOf();
    const { byRole, byKind, ...own } = hoursFrom(record);
    const { byRole: roles, byKind: kinds, ...totals } = record.totals;
    expect(own).toEqual(totals);
    // Which roles and kinds there are is known to the program; the data has those that occur.
    const occurring = (rows: unknown) =>
      (rows as { id: string; build: number; apart: number }[])
        .filter(({ build, apart }) => build + apart > 0)
        .toSorted((a, b) => (a.id < b.id ? -1 : 1));
    expect(occurring(byRole)).toEqual(occurring(roles));
    expect(occurring(byKind)).toEqual(occurring(kinds));
    expect(own.total.build).toBeGreaterThan(50_000);
    const [first, ...rest] = record.days;
    expect(first?.sessions.length).toBeGreaterThan(0);
    expect(hoursFrom({ ...record, days: rest }).total).not.toEqual(own.total);
  });

  test("book, CSV and site say the same total, and the book has every day once and in order", async () => {
    const rows = parse(textOf("record/hours.csv"), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    const minutes = rows
      .filter(({ counted }) => counted === "build")
      .reduce((sum, row) => sum + Number(row.minutes), 0);
    const total = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
    expect(recordOf().totals.total).toMatchObject({ build: minutes });
    expect(textOf("site/hours/index.html")).toContain(`data-total="build">${total}<`);
    const book = (await pdfText(readFileSync(join(stick, "record", "book.pdf")))).join(" ");
    expect(book).toContain(`Hours of the build ${total} (${minutes} minutes)`);
    const entries = [
      ...book.matchAll(/Entry (\d+) of \d+ [A-Z][a-z]+day (\d+ [A-Z][a-z]+ \d{4})/g),
    ];
    const { days } = recordOf();
    expect(entries.map(([, number, date]) => [Number(number), inDigits(date ?? "")])).toEqual(
      days.map(({ date }, index) => [index + 1, date]),
    );
    expect(entries.length).toBeGreaterThan(100);
  });

  test("its record.json alone comes to its tenths and its projected empty weight, exactly", () => {
    const record = recordOf();
    expect(record.portion?.sum).toMatchObject(tenthsFrom(record));
    expect(Object.values(tenthsFrom(record)).every((tenths) => tenths > 0)).toBe(true);
    const { weight, moment } = record.balance?.projection ?? {};
    expect(projectedFrom(record, { weight: "lb", arm: "in" })).toEqual({
      weight: weight?.exact,
      moment: moment?.exact,
    });
    expect(Number(weight?.exact.split("/")[0])).toBeGreaterThan(0);
  });

  test("every link of every page leads to a file in the folder, and to a place in it", () => {
    const site = join(stick, "site");
    const pages = filesIn(site).filter((name) => name.endsWith(".html"));
    expect(pages.length).toBeGreaterThan(200);
    const trees = new Map(pages.map((name) => [name, elementsOf(readFileSync(join(site, name)))]));
    const places = new Map(
      [...trees].map(([name, elements]) => [
        name,
        new Set(elements.flatMap(({ attributes }) => attributes.get("id") ?? [])),
      ]),
    );
    const lost: string[] = [];
    let followed = 0;
    for (const [name, elements] of trees) {
      for (const link of elements.flatMap(linksOf)) {
        if (/^(?:https?|mailto|data):/.test(link)) continue;
        followed += 1;
        const [path = "", place] = link.split("#");
        const file =
          path === "" ? name : relative(site, resolve(site, dirname(name), decoded(path)));
        const found = existsSync(join(site, file)) && statSync(join(site, file)).isFile();
        const there = !place || !places.has(file) || places.get(file)?.has(decoded(place));
        if (!found || !there) lost.push(`${name}: ${link}`);
      }
    }
    expect(lost).toEqual([]);
    expect(followed).toBeGreaterThan(10_000);
  });

  test("a browser reads it from the disk: first page, a month, a day, with its pictures", async () => {
    const browser = await launchChromium();
    try {
      const page = await browser.newPage();
      const failed: string[] = [];
      const outside: string[] = [];
      page.on("requestfailed", (request) => failed.push(request.url()));
      page.on("request", (request) => {
        const url = request.url();
        const inside = url.startsWith("file:") && fileURLToPath(url).startsWith(stick);
        if (!inside && !url.startsWith("data:")) outside.push(url);
      });
      await page.goto(pathToFileURL(join(stick, "site", "index.html")).href, {
        waitUntil: "networkidle",
      });
      for (const target of ["2026/03/index.html", "2026/03/14/index.html"]) {
        await page.goto(new URL(target, pathToFileURL(join(stick, "site", "/")).href).href, {
          waitUntil: "networkidle",
        });
        expect(await page.locator("h1").count()).toBe(1);
        const background = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
        expect(background).toMatch(/B612/);
      }
      const pictures = await page.locator("main img").evaluateAll(async (all) => {
        for (const each of all) each.setAttribute("loading", "eager");
        return Promise.all(
          all.map(async (each) => {
            const image = each as HTMLImageElement;
            await image.decode();
            return image.naturalWidth;
          }),
        );
      });
      expect(pictures.length).toBeGreaterThan(0);
      expect(Math.min(...pictures)).toBeGreaterThan(0);
      // Looked at before going on: leaving a page may end what it is still loading.
      expect([failed, outside]).toEqual([[], []]);
      const before = page.url();
      await page.locator("nav a").first().click();
      await page.waitForURL((url) => url.href.split("#")[0] !== before, { waitUntil: "load" });
      expect(await page.locator("h1").count()).toBe(1);
      expect(outside).toEqual([]);
    } finally {
      await browser.close();
    }
  });
});

/** A date in words, in digits. */
function inDigits(words: string): string {
  const [day = "", month = "", year = ""] = words.split(" ");
  const number = new Date(`1 ${month} 2000 UTC`).getUTCMonth() + 1;
  return `${year}-${String(number).padStart(2, "0")}-${day.padStart(2, "0")}`;
}

function elementsOf(html: Buffer): Element[] {
  const found: Element[] = [];
  const visit = (element: Element) => {
    found.push(element);
    for (const child of element.children) if (typeof child !== "string") visit(child);
  };
  visit(htmlTree(html.toString("utf8")));
  return found;
}

function linksOf({ tag, attributes }: Element): string[] {
  // Where the page stands on the web, for machines.
  if (tag === "link" && /canonical|alternate/.test(attributes.get("rel") ?? "")) return [];
  const several = (attributes.get("srcset") ?? "").split(",").map((each) => each.trim());
  return [
    attributes.get("href"),
    attributes.get("src"),
    ...several.map((each) => each.split(" ")[0]),
  ].filter((link): link is string => link !== undefined && link !== "");
}

function decoded(path: string): string {
  return decodeURIComponent(path.split("?")[0] ?? "");
}

const march14 = `---
date: 2026-03-14
private: true
title: A quiet evening with thistledown
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:15", kind: fabricate }
---
Nobody is told of the thistledown.
`;

describe("the editions", () => {
  test("go to two folders that say which they are; only the private one has the journal", async () => {
    const { cwd, file } = shop({
      "days/2026/2026-03-14.md": march14,
      "notes of my own.txt": "thistledown",
    });
    const args = ["export", "--take-away", "--book", "none"];
    expect((await witness(args, { cwd })).status).toBe(0);
    expect((await witness([...args, "--edition", "private"], { cwd })).status).toBe(0);
    const out = file("out/content");
    expect(readdirSync(out).filter((name) => !name.startsWith("."))).toEqual([
      "private-take-away",
      "public-take-away",
    ]);
    const telling = (edition: string) =>
      filesIn(join(out, `${edition}-take-away`)).filter((name) =>
        readFileSync(join(out, `${edition}-take-away`, name), "latin1").includes("thistledown"),
      );
    expect(telling("public")).toEqual([]);
    expect(telling("private")).toEqual(
      expect.arrayContaining(["journal/days/2026/2026-03-14.md", "record/record.json"]),
    );
    const texts = ["public", "private"].map((edition) =>
      readFileSync(join(out, `${edition}-take-away`, "READ-FIRST.txt"), "utf8"),
    );
    expect(texts.map((text) => text.split("\r\n")[0])).toEqual([
      "PUBLIC EDITION",
      "PRIVATE EDITION",
    ]);
    const carried = filesIn(join(out, "private-take-away", "journal"));
    expect(carried).toContain("project.yaml");
    expect(carried).not.toContain("notes of my own.txt");
    // The journal in it is one: the program reads it, and it comes to the same.
    const again = await witness(["check", "--journal", join(out, "private-take-away", "journal")], {
      cwd,
    });
    expect([again.status, again.stdout]).toEqual([
      0,
      expect.stringContaining("1:15 h of building"),
    ]);
  });
});

describe("a take-away that cannot be finished", () => {
  test("leaves the last one as it was, and nothing beside it", async () => {
    const { cwd, file } = shop({ "days/2026/2026-03-14.md": march14 });
    const args = ["export", "--take-away", "--book", "none"];
    expect((await witness(args, { cwd })).status).toBe(0);
    const before = readFileSync(file("out/content/public-take-away/files.sha256"), "utf8");
    writeFileSync(file("content/days/2026/2026-03-14.md"), march14.replace("1:15", "1:75"));
    const refused = await witness(args, { cwd });
    expect([refused.status, refused.stderr]).toEqual([
      1,
      expect.stringContaining("nothing was exported"),
    ]);
    // A folder with somebody's own files in it is not replaced.
    writeFileSync(file("content/days/2026/2026-03-14.md"), march14);
    rmSync(file("out/content/public-take-away/.witness-site"));
    const guarded = await witness(args, { cwd });
    expect([guarded.status, guarded.stderr]).toEqual([3, expect.stringContaining("not replaced")]);
    expect(readFileSync(file("out/content/public-take-away/files.sha256"), "utf8")).toBe(before);
    expect(readdirSync(file("out/content")).filter((name) => !name.startsWith("."))).toEqual([
      "public-take-away",
    ]);
  });
});
