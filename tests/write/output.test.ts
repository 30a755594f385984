import { spawn } from "node:child_process";
import { readFileSync, symlinkSync } from "node:fs";
import fs from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { MachineProblem } from "../../src/write/machine-problem.ts";
import {
  createFile,
  filesBelow,
  kindOf,
  placeFile,
  readTextIfThere,
  removeFolder,
  writeFileWhole,
} from "../../src/write/output.ts";
import { diskDyingAfter, failOnce, systemError } from "../support/failing-disk.ts";
import { filesIn, scratchFolder, textOf } from "../support/scratch-folder.ts";

afterEach(() => vi.restoreAllMocks());

describe("writing a file whole", () => {
  test("makes the folders between and replaces what was there", async () => {
    const folder = scratchFolder();
    await writeFileWhole(join(folder, "a/b/c.txt"), "first");
    await writeFileWhole(join(folder, "a/b/c.txt"), "second");
    expect(textOf(folder, "a/b/c.txt")).toBe("second");
    expect(filesIn(folder)).toEqual(["a/b/c.txt"]);
  });

  test.runIf(process.platform === "linux")("gives up where no folder can be made", async () => {
    await expect(writeFileWhole("/proc/nothing/here.txt", "text")).rejects.toMatchObject({
      kind: "missing",
    });
  });

  test("gives up where a file stands in place of a folder", async () => {
    const folder = scratchFolder({ taken: "a file" });
    await expect(writeFileWhole(join(folder, "taken/here.txt"), "text")).rejects.toMatchObject({
      kind: "missing",
    });
    await expect(writeFileWhole(join(folder, "taken/a/b.txt"), "text")).rejects.toMatchObject({
      kind: "missing",
    });
  });

  test("replaces a link instead of writing through it", async () => {
    const folder = scratchFolder({ "elsewhere.txt": "theirs" });
    symlinkSync(join(folder, "elsewhere.txt"), join(folder, "mine.txt"));
    await writeFileWhole(join(folder, "mine.txt"), "mine");
    expect(textOf(folder, "elsewhere.txt")).toBe("theirs");
    expect(await kindOf(join(folder, "mine.txt"))).toBe("file");
  });

  test.each([
    ["ENOSPC", "disk full", /no room left on the disk while writing `.*day\.html`/],
    ["EDQUOT", "disk full", /no room left/],
    ["EROFS", "read only", /can only be read/],
    ["EACCES", "not allowed", /does not allow writing/],
    ["EBUSY", "in use", /another program holds/],
    ["EIO", "failed", /failed: EIO/],
  ])("%s is a problem of the machine, and the old file stays", async (code, kind, words) => {
    for (const call of ["open", "rename"] as const) {
      const folder = scratchFolder({ "day.html": "old" });
      failOnce(call, code);
      const failure = await writeFileWhole(join(folder, "day.html"), "new").catch((e) => e);
      expect(failure).toBeInstanceOf(MachineProblem);
      expect(failure).toMatchObject({ kind, exitCode: 3, message: expect.stringMatching(words) });
      expect(textOf(folder, "day.html")).toBe("old");
      expect(filesIn(folder)).toEqual(["day.html"]);
      vi.restoreAllMocks();
    }
  });

  test("a disk that fills up in the middle leaves the old file and no temporary one", async () => {
    const folder = scratchFolder({ "day.html": "old" });
    const open = fs.open.bind(fs);
    vi.spyOn(fs, "open").mockImplementation(async (...args) => {
      const handle = await open(...args);
      if (args[1] === "wx") {
        handle.writeFile = async () => {
          await handle.write("ne");
          throw systemError("ENOSPC");
        };
      }
      return handle;
    });
    await expect(writeFileWhole(join(folder, "day.html"), "new")).rejects.toMatchObject({
      kind: "disk full",
    });
    expect(textOf(folder, "day.html")).toBe("old");
    expect(filesIn(folder)).toEqual(["day.html"]);
  });

  test("whichever call to the disk is the last, the file is the old one or the new one", async () => {
    for (let calls = 0; ; calls += 1) {
      const folder = scratchFolder({ "day.html": "old" });
      const disk = diskDyingAfter(calls);
      await writeFileWhole(join(folder, "day.html"), "new").catch(() => undefined);
      disk.revive();
      expect(["old", "new"]).toContain(textOf(folder, "day.html"));
      if (disk.made() <= calls) {
        expect(calls).toBeGreaterThan(3);
        break;
      }
    }
  });

  test("something that is no fault of the machine comes through as it was", async () => {
    vi.spyOn(fs, "open").mockRejectedValueOnce(new TypeError("a bug"));
    await expect(writeFileWhole(join(scratchFolder(), "x"), "y")).rejects.toThrow(TypeError);
  });

  test("killed while writing, 12 times: never half", async () => {
    const folder = scratchFolder();
    const file = join(folder, "big.txt");
    // On a busy machine the first kill may come before the first text.
    await writeFileWhole(file, "b".repeat(700_000));
    // Two texts of different length and letter, written in turn until the kill.
    const script = `
      const { writeFileWhole } = await import(${JSON.stringify(new URL("../../src/write/output.ts", import.meta.url).href)});
      process.stdout.write("ready");
      for (;;) {
        await writeFileWhole(${JSON.stringify(file)}, "a".repeat(900_000));
        await writeFileWhole(${JSON.stringify(file)}, "b".repeat(700_000));
      }`;
    const whole = ["a".repeat(900_000), "b".repeat(700_000)];
    const rounds = Array.from({ length: 12 }, (_, round) => 5 + round * 7);
    for (let at = 0; at < rounds.length; at += 2) {
      await Promise.all(
        rounds.slice(at, at + 2).map(async (delay) => {
          const child = spawn(
            process.execPath,
            ["--import", "tsx", "--input-type=module", "-e", script],
            { stdio: ["ignore", "pipe", "inherit"] },
          );
          const ended = new Promise((resolve) => child.once("exit", resolve));
          await new Promise((resolve) => child.stdout.once("data", resolve));
          await new Promise((resolve) => setTimeout(resolve, delay));
          child.kill("SIGKILL");
          await ended;
        }),
      );
      expect(whole).toContain(readFileSync(file, "utf8"));
    }
  });
});

describe("creating a file", () => {
  test("one of many at once succeeds, and its text stays", async () => {
    const file = join(scratchFolder(), "lock");
    const made = await Promise.all(Array.from({ length: 20 }, (_, i) => createFile(file, `${i}`)));
    expect(made.filter(Boolean)).toHaveLength(1);
    expect(await readTextIfThere(file)).toBe(String(made.indexOf(true)));
  });

  test("works on a disk without hard links", async () => {
    const folder = scratchFolder();
    vi.spyOn(fs, "link").mockRejectedValue(systemError("EPERM"));
    expect(await createFile(join(folder, "lock"), "one")).toBe(true);
    expect(await createFile(join(folder, "lock"), "two")).toBe(false);
    expect(filesIn(folder)).toEqual(["lock"]);
    expect(textOf(folder, "lock")).toBe("one");
  });
});

describe("placing a file of the cache", () => {
  test.each(["EXDEV", "EPERM", "EMLINK"])("copies it where linking fails with %s", async (code) => {
    const folder = scratchFolder({ "cache.jpg": "pixels" });
    failOnce("link", code);
    await placeFile(join(folder, "cache.jpg"), join(folder, "out.jpg"));
    expect(textOf(folder, "out.jpg")).toBe("pixels");
  });

  test("leaves one that is there", async () => {
    const folder = scratchFolder({ "cache.jpg": "new", "out.jpg": "there" });
    await placeFile(join(folder, "cache.jpg"), join(folder, "out.jpg"));
    expect(textOf(folder, "out.jpg")).toBe("there");
  });
});

describe("removing a folder", () => {
  test("removes a link and not what it leads to", async () => {
    const folder = scratchFolder({ "kept/a.txt": "kept", "gone/b.txt": "gone" });
    symlinkSync(join(folder, "kept"), join(folder, "gone/link"));
    await removeFolder(join(folder, "gone"));
    expect(filesIn(folder)).toEqual(["kept/a.txt"]);
  });

  test("keeps the last file to the end", async () => {
    for (let calls = 0; calls < 4; calls += 1) {
      const folder = scratchFolder({ "site/a": "", "site/.mark": "", "site/z/b": "" });
      const disk = diskDyingAfter(calls);
      await removeFolder(join(folder, "site"), ".mark").catch(() => undefined);
      disk.revive();
      const left = filesIn(folder);
      if (left.length > 0) expect(left).toContain("site/.mark");
    }
  });
});

test("lists files below a folder by path, links as links", async () => {
  const folder = scratchFolder({ "b/c.txt": "", "a.txt": "" });
  symlinkSync("/", join(folder, "b/root"));
  expect(await filesBelow(folder)).toEqual([
    { path: "a.txt", kind: "file" },
    { path: "b/c.txt", kind: "file" },
    { path: "b/root", kind: "link" },
  ]);
});
