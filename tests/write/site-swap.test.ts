import { spawnSync } from "node:child_process";
import { mkdirSync, renameSync, symlinkSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { settleSite, siteMarker, swapInSite, swapSteps } from "../../src/write/site-swap.ts";
import { diskDyingAfter, failOnce } from "../support/failing-disk.ts";
import { filesIn, scratchFolder, textOf } from "../support/scratch-folder.ts";

afterEach(() => vi.restoreAllMocks());

/** A site of two pages, so that half of one can be told from a whole one. */
async function fill(folder: string, name: string): Promise<void> {
  await writeFile(join(folder, "index.html"), name);
  mkdirSync(join(folder, "day"));
  await writeFile(join(folder, "day/index.html"), name);
}

const build = (site: string, name: string): Promise<void> =>
  swapInSite(site, (next) => fill(next, name));

/** `old`, `new`, `none`, or `half` when the two pages differ or one is missing. */
function seen(site: string): string {
  const pages = [textOf(site, "index.html"), textOf(site, "day/index.html")];
  if (pages[0] === undefined && pages[1] === undefined) return "none";
  return pages[0] === pages[1] ? (pages[0] ?? "half") : "half";
}

describe("a build", () => {
  test("replaces the site as a whole and leaves nothing else", async () => {
    const out = scratchFolder();
    await build(join(out, "site"), "old");
    await writeFile(join(out, "site/left-over.html"), "of the old site");
    const result = await swapInSite(join(out, "site"), async (next) => {
      expect(seen(join(out, "site"))).toBe("old");
      await fill(next, "new");
      return 7;
    });
    expect(result).toBe(7);
    expect(filesIn(out)).toEqual([`site/${siteMarker}`, "site/day/index.html", "site/index.html"]);
    expect(seen(join(out, "site"))).toBe("new");
  });

  test("that fails leaves the last good site and no unfinished one", async () => {
    const out = scratchFolder();
    await build(join(out, "site"), "old");
    const failure = new Error("a broken link");
    const failing = swapInSite(join(out, "site"), async (next) => {
      await writeFile(join(next, "index.html"), "new");
      throw failure;
    });
    await expect(failing).rejects.toBe(failure);
    expect(filesIn(out)).toEqual([`site/${siteMarker}`, "site/day/index.html", "site/index.html"]);
    expect(seen(join(out, "site"))).toBe("old");
  });

  test("whose last rename fails puts the old site back", async () => {
    const out = scratchFolder();
    await build(join(out, "site"), "old");
    const failing = swapInSite(join(out, "site"), (next) => fill(next, "new"), {
      onStep: (step) => {
        if (step === "old site aside") failOnce("rename", "EACCES");
      },
    });
    await expect(failing).rejects.toMatchObject({ kind: "not allowed" });
    expect(seen(join(out, "site"))).toBe("old");
    expect(filesIn(out).every((file) => file.startsWith("site/"))).toBe(true);
  });

  test("passes its steps in the order that is written down", async () => {
    const passed: string[] = [];
    await swapInSite(join(scratchFolder(), "site"), (next) => fill(next, "new"), {
      onStep: (step) => {
        passed.push(step);
      },
    });
    expect(passed).toEqual([...swapSteps]);
  });
});

describe("a folder that this program did not make", () => {
  test.each(["site", "site.next", "site.prev"])("%s with contents is left alone", async (name) => {
    const out = scratchFolder({ [`${name}/thesis.txt`]: "theirs" });
    await expect(build(join(out, "site"), "new")).rejects.toMatchObject({
      kind: "not ours",
      exitCode: 3,
    });
    expect(filesIn(out)).toEqual([`${name}/thesis.txt`]);
  });

  test("a marker file of another kind does not make it ours", async () => {
    const out = scratchFolder({ [`site/${siteMarker}`]: "something else", "site/a.txt": "theirs" });
    await expect(build(join(out, "site"), "new")).rejects.toMatchObject({ kind: "not ours" });
    expect(textOf(out, "site/a.txt")).toBe("theirs");
  });

  test("a link is not followed", async () => {
    const out = scratchFolder({ "elsewhere/a.txt": "theirs" });
    symlinkSync(join(out, "elsewhere"), join(out, "site"));
    await expect(build(join(out, "site"), "new")).rejects.toMatchObject({ kind: "not ours" });
    expect(filesIn(join(out, "elsewhere"))).toEqual(["a.txt"]);
  });

  test("an empty one is used", async () => {
    const out = scratchFolder();
    mkdirSync(join(out, "site"));
    await build(join(out, "site"), "new");
    expect(seen(join(out, "site"))).toBe("new");
  });
});

describe("a process killed by the system (SIGKILL)", () => {
  const child = `
    const { swapInSite } = await import(${JSON.stringify(new URL("../../src/write/site-swap.ts", import.meta.url).href)});
    const { mkdirSync, writeFileSync } = await import("node:fs");
    const [site, last] = process.argv.slice(1);
    await swapInSite(site, async (next) => {
      writeFileSync(next + "/index.html", "new");
      mkdirSync(next + "/day");
      writeFileSync(next + "/day/index.html", "new");
    }, { onStep: (step) => { if (step === last) process.kill(process.pid, "SIGKILL"); } });`;

  test.each(swapSteps)("after `%s` leaves the old site or the new", async (step) => {
    const out = scratchFolder();
    const site = join(out, "site");
    await build(site, "old");
    const { signal } = spawnSync(
      process.execPath,
      ["--import", "tsx", "--input-type=module", "-e", child, site, step],
      { stdio: "inherit" },
    );
    expect(signal).toBe("SIGKILL");

    const swapped = ["new site in place", "old site removed"].includes(step);
    const begun = step === "old site aside";
    if (!begun) expect(seen(site)).toBe(swapped ? "new" : "old");
    const notes: string[] = [];
    await settleSite(site, (text) => notes.push(text));
    expect(seen(site)).toBe(swapped || begun ? "new" : "old");
    expect(filesIn(out).every((file) => file.startsWith("site/"))).toBe(true);
    const clean = ["left-overs settled", "new site in place", "old site removed"].includes(step);
    expect(notes).toHaveLength(clean ? 0 : 1);

    await build(site, "newest");
    expect(seen(site)).toBe("newest");
  });
});

describe("whichever call to the disk is the last", () => {
  test.each(["old", "none"])("with the site before: %s, it is never half", async (before) => {
    const outcomes = new Set<string>();
    for (let calls = 0; ; calls += 1) {
      const out = scratchFolder();
      const site = join(out, "site");
      if (before === "old") await build(site, "old");
      const disk = diskDyingAfter(calls);
      await build(site, "new").catch(() => undefined);
      disk.revive();
      await settleSite(site);
      expect([before, "new"]).toContain(seen(site));
      outcomes.add(seen(site));
      expect(filesIn(out).every((file) => file.startsWith("site/"))).toBe(true);
      await build(site, "newest");
      expect(seen(site)).toBe("newest");
      if (disk.made() <= calls) {
        expect(calls).toBeGreaterThan(10);
        break;
      }
    }
    expect(outcomes).toEqual(new Set([before, "new"]));
  });

  test("settling itself may be cut short as often as it likes", async () => {
    for (const cut of ["next marked whole", "old site aside", "new site in place"]) {
      for (let calls = 0; ; calls += 1) {
        const out = scratchFolder();
        const site = join(out, "site");
        await build(site, "old");
        const dead = new Error("cut");
        const swap = swapInSite(site, (next) => fill(next, "new"), {
          onStep: (step) => {
            if (step !== cut) return;
            // Nothing of the swap's own tidying after a failure may run in a killed process.
            diskDyingAfter(0);
            throw dead;
          },
        });
        await swap.catch(() => undefined);
        vi.restoreAllMocks();
        const disk = diskDyingAfter(calls);
        await settleSite(site).catch(() => undefined);
        disk.revive();
        await settleSite(site);
        expect(["old", "new"]).toContain(seen(site));
        if (disk.made() <= calls) break;
      }
    }
  });
});

test("an old site that was half removed is not put back", async () => {
  const out = scratchFolder();
  await build(join(out, "site.prev"), "old");
  renameSync(join(out, "site.prev", siteMarker), join(out, "site.prev/.witness-site-unfinished"));
  await settleSite(join(out, "site"));
  expect(filesIn(out)).toEqual([]);
});
