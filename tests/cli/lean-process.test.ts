import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { wantsLeanProcess } from "../../src/cli/lean-process.ts";
import { cachedPictures, keepPicture } from "../../src/write/photos/picture-cache.ts";
import { generatedPhotos, writeGeneratedJournal } from "../support/generated-journal.ts";
import { scratchFolder } from "../support/scratch-folder.ts";
import { plainJpeg } from "../support/small-photos.ts";
import { witness } from "../support/witness.ts";

test("only for many photographs, only where it helps, and never twice", () => {
  expect(wantsLeanProcess(30, {}, "linux")).toBe(true);
  expect(wantsLeanProcess(29, {}, "linux")).toBe(false);
  expect(wantsLeanProcess(500, {}, "win32")).toBe(false);
  expect(wantsLeanProcess(500, {}, "darwin")).toBe(false);
  expect(wantsLeanProcess(500, { MALLOC_ARENA_MAX: "2" }, "linux")).toBe(false);
});

test("pictures in the cache are counted whole, a half one is none", async () => {
  const folder = scratchFolder();
  expect(await cachedPictures(join(folder, "none"))).toBe(0);
  const key = "ab".repeat(32);
  await keepPicture(folder, key, [
    { format: "jpeg", width: 8, height: 8, bytes: Buffer.from("one") },
  ]);
  writeFileSync(join(folder, "ab", `${"cd".repeat(32)}-8.jpg`), "half");
  expect(await cachedPictures(folder)).toBe(1);
});

test("a build of many photographs prints and ends as any other, also when it is interrupted", async () => {
  const cwd = scratchFolder();
  writeGeneratedJournal(join(cwd, "journal"), 4, 10);
  mkdirSync(join(cwd, "journal/photos"), { recursive: true });
  for (const [index, file] of generatedPhotos(4, 10).entries()) {
    mkdirSync(join(cwd, "journal/photos", file, ".."), { recursive: true });
    writeFileSync(join(cwd, "journal/photos", file), await plainJpeg(index, 900, 600));
  }
  const args = ["build", "--journal", "journal"];
  // As in a shell of its own: the signal reaches the first process, which hands it on.
  const stopped = await witness(args, {
    cwd,
    env: { MALLOC_ARENA_MAX: undefined },
    running: (child) => {
      setTimeout(() => child.kill("SIGINT"), 4_000);
    },
  });
  const done = await witness(args, { cwd, env: { MALLOC_ARENA_MAX: undefined }, longest: 300_000 });
  expect(done.stdout).toMatch(/site: .*40 photographs, \d+ encoded now/);
  expect(done.status).toBe(0);
  // A quick machine may have been done by then.
  expect([0, 130]).toContain(stopped.status);
  expect(readFileSync(join(cwd, "out/journal/site/index.html"), "utf8")).toContain("<!DOCTYPE");
  const again = await witness(args, { cwd, env: { MALLOC_ARENA_MAX: undefined } });
  expect(again.stdout).toContain("0 encoded now");
}, 600_000);
