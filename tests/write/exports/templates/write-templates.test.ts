import { readFileSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeTemplates } from "../../../../src/write/exports/templates/write-templates.ts";
import { filesIn, scratchFolder } from "../../../support/scratch-folder.ts";
import { templatesFrom } from "../../../support/templates.ts";

const hole = (size: string) => `title: A hole\ncut-out: { shape: circle, diameter: ${size} }`;
const names = ["drawings/2026-03-14-1-a4.pdf", "drawings/2026-03-14-1-letter.pdf"];

async function writes(into: string, cacheFolder: string, block: string, lines = "") {
  return writeTemplates(into, templatesFrom([block], lines), { cacheFolder });
}

test("each template is written on both papers, and kept for the next build", async () => {
  const [one, two, cacheFolder] = [scratchFolder(), scratchFolder(), scratchFolder()];
  expect(await writes(one, cacheFolder, hole("2 in"))).toEqual({ written: names, made: 2 });
  expect(filesIn(one)).toEqual(names);
  // Lines put in above move the block in its file, and nothing in the drawing.
  const again = await writes(two, cacheFolder, hole("2 in"), "place: barn\n");
  expect(again).toEqual({ written: names, made: 0 });
  for (const name of names) {
    expect(readFileSync(join(two, name)).equals(readFileSync(join(one, name)))).toBe(true);
    expect(statSync(join(one, name)).size).toBeGreaterThan(5_000);
  }
});

test("one that is drawn otherwise is made anew, and so is one that was lost", async () => {
  const [site, cacheFolder] = [scratchFolder(), scratchFolder()];
  await writes(site, cacheFolder, hole("2 in"));
  const [first = ""] = names;
  const before = readFileSync(join(site, first));
  rmSync(join(site, "drawings"), { recursive: true });
  expect((await writes(site, cacheFolder, hole("2.001 in"))).made).toBe(2);
  expect(readFileSync(join(site, first)).equals(before)).toBe(false);
  rmSync(join(site, "drawings"), { recursive: true });
  rmSync(cacheFolder, { recursive: true });
  expect((await writes(site, cacheFolder, hole("2 in"))).made).toBe(2);
  expect(readFileSync(join(site, first)).equals(before)).toBe(true);
});

test("it ends between two files when it is asked to", async () => {
  const [site, cacheFolder] = [scratchFolder(), scratchFolder()];
  const stop = new AbortController();
  stop.abort(new Error("enough"));
  await expect(
    writeTemplates(site, templatesFrom([hole("2 in")]), { cacheFolder, signal: stop.signal }),
  ).rejects.toThrow("enough");
  expect(filesIn(site)).toEqual([]);
});
