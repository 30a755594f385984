import { spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type LockWitness, takeLock, thisProcess, withLock } from "../../src/write/lock.ts";
import { filesIn, scratchFolder, textOf } from "../support/scratch-folder.ts";

const noon = Date.parse("2026-03-14T12:00:00Z");
const hour = 3_600_000;

/** A process of its own on an invented computer, started at eleven; only it is running. */
function witness(overrides: Partial<LockWitness> = {}): LockWitness {
  return {
    pid: 100,
    host: "bench",
    now: noon,
    booted: noon - 24 * hour,
    started: noon - hour,
    isRunning: (pid) => pid === 100,
    ...overrides,
  };
}

const lockOf = (pid: number, host: string, since: number): string =>
  `pid ${pid}\nhost ${host}\nsince ${new Date(since).toISOString()}\n`;

describe("a lock", () => {
  test("names process, computer and time, and goes when it is released", async () => {
    const folder = scratchFolder();
    const lock = await takeLock(join(folder, "lock"), witness());
    expect(textOf(folder, "lock")).toBe("pid 100\nhost bench\nsince 2026-03-14T12:00:00.000Z\n");
    expect(lock.note).toBeUndefined();
    await lock.release();
    await lock.release();
    expect(filesIn(folder)).toEqual([]);
  });

  test("that is held is a problem of the machine, naming the holder", async () => {
    const folder = scratchFolder({ lock: lockOf(200, "bench", noon) });
    const second = takeLock(join(folder, "lock"), witness({ isRunning: (pid) => pid === 200 }));
    await expect(second).rejects.toMatchObject({
      kind: "locked",
      exitCode: 3,
      message:
        "another build is writing here (process 200 on `bench`, since 2026-03-14T12:00:00.000Z)",
    });
    expect(filesIn(folder)).toEqual(["lock"]);
  });

  test("is released when the work fails", async () => {
    const folder = scratchFolder();
    const failing = withLock(join(folder, "lock"), async () => {
      throw new Error("the work");
    });
    await expect(failing).rejects.toThrow("the work");
    expect(filesIn(folder)).toEqual([]);
  });

  test("of another is not released in its place", async () => {
    const folder = scratchFolder();
    const lock = await takeLock(join(folder, "lock"), witness());
    writeFileSync(join(folder, "lock"), lockOf(200, "bench", noon));
    await lock.release();
    expect(filesIn(folder)).toEqual(["lock"]);
  });
});

describe("a lock left behind", () => {
  test.each([
    ["its process is gone", lockOf(200, "bench", noon - hour), [100]],
    // After a restart the old number may belong to any other process.
    ["the computer was started since", lockOf(200, "bench", noon - 48 * hour), [100, 200]],
    ["this process has its number, but is younger", lockOf(100, "bench", noon - 2 * hour), [100]],
    ["it says nothing", "", [100]],
    ["it says something else", "a note to myself\n", [100]],
  ])("is taken over when %s", async (_, text, running) => {
    const folder = scratchFolder({ lock: text });
    const isRunning = (pid: number): boolean => running.includes(pid);
    const lock = await takeLock(join(folder, "lock"), witness({ isRunning }));
    expect(lock.note).toMatch(/^took over the lock of a build that is gone/);
    expect(textOf(folder, "lock")).toBe(lockOf(100, "bench", noon));
    await lock.release();
    expect(filesIn(folder)).toEqual([]);
  });

  test("by another computer is not taken over: nobody here can tell", async () => {
    const folder = scratchFolder({ lock: lockOf(200, "attic", noon - 48 * hour) });
    await expect(takeLock(join(folder, "lock"), witness())).rejects.toMatchObject({
      message: expect.stringContaining("process 200 on `attic`"),
    });
  });

  test("is taken over by one of many that find it at once", async () => {
    const folder = scratchFolder({ lock: lockOf(200, "bench", noon - hour) });
    const pids = Array.from({ length: 20 }, (_, i) => 300 + i);
    const tries = await Promise.allSettled(
      pids.map((pid) =>
        takeLock(join(folder, "lock"), witness({ pid, isRunning: (other) => other >= 300 })),
      ),
    );
    expect(tries.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    const winner = pids[tries.findIndex(({ status }) => status === "fulfilled")];
    expect(textOf(folder, "lock")).toContain(`pid ${winner}\n`);
    expect(filesIn(folder)).toEqual(["lock"]);
  });

  test("with a take-over that was itself cut short", async () => {
    const folder = scratchFolder({
      lock: lockOf(200, "bench", noon - hour),
      "lock.claim": lockOf(201, "bench", noon - hour),
    });
    const lock = await takeLock(join(folder, "lock"), witness());
    expect(lock.note).toContain("process 200");
    expect(filesIn(folder)).toEqual(["lock"]);
  });
});

test("a real process holds its lock while it lives, and not after", async () => {
  const folder = scratchFolder();
  const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"]);
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const pid = child.pid ?? 0;
  writeFileSync(join(folder, "lock"), lockOf(pid, hostname(), Date.now()));
  await expect(takeLock(join(folder, "lock"))).rejects.toMatchObject({ kind: "locked" });
  child.kill("SIGKILL");
  await ended;
  const lock = await takeLock(join(folder, "lock"));
  expect(lock.note).toContain(`process ${pid}`);
  expect(thisProcess().isRunning(process.pid)).toBe(true);
});
