import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { previewCommand, type Rebuilt } from "../../src/cli/preview.ts";
import { MachineProblem } from "../../src/write/machine-problem.ts";
import { addFiles, scratchFolder } from "../support/scratch-folder.ts";

/** A preview over a scratch journal whose rebuilds are the given ones, in turn. */
function preview(rebuilds: readonly (() => Promise<Rebuilt>)[]) {
  const folder = scratchFolder({ "journal/days/a.md": "one", "site/index.html": "<body></body>" });
  const stop = new AbortController();
  const printed: string[] = [];
  let calls = 0;
  const ended = previewCommand({
    journalFolder: join(folder, "journal"),
    siteFolder: join(folder, "site"),
    port: 0,
    stop: stop.signal,
    print: (text) => printed.push(text),
    rebuild: () => {
      calls += 1;
      return (rebuilds[calls - 1] ?? rebuilds.at(-1) ?? fine)();
    },
  });
  onTestFinished(async () => {
    stop.abort();
    await ended.catch(() => undefined);
  });
  const until = (test: () => boolean): Promise<void> =>
    vi.waitFor(() => expect(test()).toBe(true), { timeout: 10_000, interval: 20 });
  return { folder, stop, printed, ended, until, calls: () => calls };
}

const fine = async (): Promise<Rebuilt> => ({ ok: true, text: "120 days" });

/** Saves until a rebuild has been seen: the watcher needs a moment to be ready. */
async function save(run: ReturnType<typeof preview>, file: string, text: string): Promise<void> {
  const before = run.calls();
  for (let tries = 0; run.calls() === before; tries += 1) {
    expect(tries).toBeLessThan(40);
    writeFileSync(join(run.folder, "journal", file), `${text}${tries}`);
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
}

test("builds at the start and after each save, says where it is, and ends with 0", async () => {
  const run = preview([fine]);
  await run.until(() => run.calls() === 1);
  await save(run, "days/a.md", "two");
  await save(run, "days/b.md", "new");
  run.stop.abort();
  expect(await run.ended).toBe(0);
  expect(run.printed[0]).toMatch(/^preview: http:\/\/localhost:\d+\/$/);
  expect(run.printed.filter((text) => text === "120 days").length).toBe(run.calls());
  expect(run.printed.at(-1)).toBe("preview ended");
});

test("shows the problems of a failed build and goes on with the next save", async () => {
  const bad = async (): Promise<Rebuilt> => ({ ok: false, text: "a.md:1:1: error[x]: y" });
  const full = async (): Promise<Rebuilt> => {
    throw new MachineProblem("disk full", "no room left", ["free some space"]);
  };
  const run = preview([bad, full, fine]);
  await run.until(() => run.printed.includes("the last good site is still shown"));
  expect(run.printed).toContain("a.md:1:1: error[x]: y");
  const address = run.printed[0]?.replace("preview: ", "") ?? "";
  expect((await fetch(address)).status).toBe(200);
  await save(run, "days/a.md", "two");
  await run.until(() => run.printed.includes("no room left\nfree some space"));
  await save(run, "days/a.md", "three");
  await run.until(() => run.printed.includes("120 days"));
});

test("a fault of the program ends it and is passed on", async () => {
  const run = preview([
    async () => {
      throw new TypeError("a bug");
    },
  ]);
  await expect(run.ended).rejects.toThrow("a bug");
});

test("never builds twice at once; what is saved meanwhile is built once afterwards", async () => {
  let atOnce = 0;
  let most = 0;
  const slow = async (): Promise<Rebuilt> => {
    atOnce += 1;
    most = Math.max(most, atOnce);
    await new Promise((resolve) => setTimeout(resolve, 400));
    atOnce -= 1;
    return { ok: true, text: "" };
  };
  const run = preview([slow]);
  await run.until(() => run.calls() === 1 && atOnce === 0);
  await save(run, "days/a.md", "two");
  expect(atOnce).toBe(1);
  writeFileSync(join(run.folder, "journal/days/a.md"), "saved while the second build runs");
  await run.until(() => run.calls() >= 3 && atOnce === 0);
  expect(most).toBe(1);
});

test("what editors leave beside a file does not lead to a build", async () => {
  const run = preview([fine]);
  await save(run, "days/a.md", "ready");
  await new Promise((resolve) => setTimeout(resolve, 400));
  const before = run.calls();
  addFiles(join(run.folder, "journal"), {
    "days/.a.md.swp": "",
    "days/a.md~": "",
    "days/#a.md#": "",
    ".git/index": "",
  });
  await new Promise((resolve) => setTimeout(resolve, 600));
  expect(run.calls()).toBe(before);
});
