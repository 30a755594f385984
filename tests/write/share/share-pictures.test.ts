import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { expect, test } from "vitest";
import type { ShareSheet } from "../../../src/present/share/share-sheet.ts";
import { lettering } from "../../../src/write/lettering.ts";
import { sharePictures } from "../../../src/write/photos/share-pictures.ts";
import { hiddenMetadata } from "../../../src/write/published-bytes.ts";
import { sheetDrawing } from "../../../src/write/share/sheet-drawing.ts";
import { writeShareSheets } from "../../../src/write/share/write-share-sheets.ts";
import { filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { someDay, span } from "../../support/small-build.ts";
import { locatedJpeg, noise } from "../../support/small-photos.ts";

const sheet: ShareSheet = {
  url: "share/2026-03.jpg",
  alt: "Drawn sheet",
  over: "A small aeroplane",
  title: "March 2026",
  figure: "12:30",
  says: "hours of building",
  from: "1 Mar",
  to: "31 Mar",
  ticks: [{ at: 0.5, length: 1 }],
  cells: [
    { label: "aircraft", value: "SM-1, serial 0001" },
    { label: "days", value: "1" },
    { label: "hours to date", value: "12:30" },
  ],
};

test("photographs are cut to the shape that is shared, once, without metadata", async () => {
  const folder = scratchFolder({
    "journal/photos/wide.jpg": await noise(3000, 700).jpeg().toBuffer(),
    "journal/photos/tall.jpg": await noise(700, 1400).jpeg().toBuffer(),
    "journal/photos/small.jpg": await locatedJpeg(),
    "journal/photos/broken.jpg": "no picture",
  });
  const make = (site: string) =>
    sharePictures({
      photos: ["wide.jpg", "tall.jpg", "small.jpg", "broken.jpg"].map((file) => ({
        date: someDay,
        file,
        caption: file,
        shows: [],
        private: false,
        span: span(),
      })),
      photosFolder: join(folder, "journal/photos"),
      cacheFolder: join(folder, "cache"),
      outputFolder: join(folder, site),
    });
  const first = await make("one");
  expect(first.encoded).toBe(3);
  expect([...first.urls.keys()].sort()).toEqual(["small.jpg", "tall.jpg", "wide.jpg"]);
  for (const url of first.urls.values()) {
    expect(url).toMatch(/^share\/[0-9a-f]{20}-1200\.jpg$/);
    const bytes = readFileSync(join(folder, "one", url));
    expect(await sharp(bytes).metadata()).toMatchObject({
      format: "jpeg",
      width: 1200,
      height: 630,
    });
    expect(hiddenMetadata(bytes)).toEqual([]);
  }
  const second = await make("two");
  expect(second.encoded).toBe(0);
  expect(second.urls).toEqual(first.urls);
});

test("no photographs, no folder", async () => {
  const folder = scratchFolder();
  const { urls } = await sharePictures({
    photos: [],
    photosFolder: join(folder, "photos"),
    cacheFolder: join(folder, "cache"),
    outputFolder: join(folder, "site"),
  });
  expect(urls.size).toBe(0);
  expect(filesIn(folder)).toEqual([]);
});

test("a sheet is drawn once and kept", async () => {
  const folder = scratchFolder();
  const options = { cacheFolder: join(folder, "cache") };
  expect(await writeShareSheets(join(folder, "one"), [sheet], options)).toBe(1);
  expect(await writeShareSheets(join(folder, "two"), [sheet], options)).toBe(0);
  const changed = { ...sheet, figure: "12:31" };
  expect(await writeShareSheets(join(folder, "three"), [changed], options)).toBe(1);
  const bytes = readFileSync(join(folder, "one/share/2026-03.jpg"));
  expect(await sharp(bytes).metadata()).toMatchObject({ format: "jpeg", width: 1200, height: 630 });
  expect(bytes.equals(readFileSync(join(folder, "two/share/2026-03.jpg")))).toBe(true);
  expect(bytes.length).toBeLessThan(100_000);
});

test("after a drawing, SVG is refused as before", async () => {
  const folder = scratchFolder();
  await writeShareSheets(folder, [sheet], { cacheFolder: join(folder, "cache") });
  const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
  await expect(sharp(svg).png().toBuffer()).rejects.toThrow();
});

test("a drawing holds shapes alone: no text, nothing from elsewhere", async () => {
  const svg = sheetDrawing({ ...sheet, title: '<image href="x"/> & Жук ≤ 3' }, await lettering());
  expect(svg.match(/<([a-z]+)/g)?.filter((tag) => !["<svg", "<path"].includes(tag))).toEqual([]);
  expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/http|href|url\(/);
});

test("letters are as long as their parts, and what is too long ends in dots", async () => {
  const { widthOf, path } = await lettering();
  const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(0.001);
  close(widthOf("12:30", "text", 20) * 2, widthOf("12:30", "text", 40));
  close(widthOf("nono", "text", 20), 2 * widthOf("no", "text", 20));
  const how = { face: "text", size: 20, x: 0, y: 20 } as const;
  expect(path("", how)).toBe("");
  expect(path("hours of building", { ...how, width: 90 })).not.toBe(path("hours of building", how));
  expect(path("hours", { ...how, width: 900 })).toBe(path("hours", how));
  // The base line is where it was asked for, and the words end where they should.
  const starts = path("HH", { ...how, x: 500, anchor: "end" }).matchAll(/M(-?[\d.]+)/g);
  const xs = [...starts].map((found) => Number(found[1]));
  expect(xs).toHaveLength(2);
  expect(Math.max(...xs)).toBeLessThanOrEqual(500);
  expect(Math.min(...xs)).toBeGreaterThanOrEqual(500 - widthOf("HH", "text", 20));
});
