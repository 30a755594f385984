import { readdirSync, rmSync } from "node:fs";
import fs from "node:fs/promises";
import { join } from "node:path";
import { vi } from "vitest";

/** Calls by which the program changes the disk. */
const changing = ["open", "rename", "rm", "mkdir", "link", "copyFile"] as const;

/** A system error as Node makes it. */
export function systemError(code: string): NodeJS.ErrnoException {
  return Object.assign(new Error(`${code}: as the test wants it`), { code });
}

/**
 * Lets the disk die after a number of calls that change it: that call and every later one
 * fails, as if the process had been killed there. The removal of a folder dies half way.
 * @returns How many calls were made, and a way to bring the disk back.
 */
export function diskDyingAfter(calls: number): { made: () => number; revive: () => void } {
  let made = 0;
  const spies = changing.map((name) => {
    const real = fs[name].bind(fs) as (...args: unknown[]) => Promise<unknown>;
    return vi.spyOn(fs, name).mockImplementation((async (...args: unknown[]) => {
      made += 1;
      if (made === calls + 1 && name === "rm") removeHalf(String(args[0]));
      if (made > calls) throw systemError("EIO");
      return real(...args);
    }) as never);
  });
  return {
    made: () => made,
    revive() {
      for (const spy of spies) spy.mockRestore();
    },
  };
}

/** Lets one kind of call fail with a code, once. */
export function failOnce(name: (typeof changing)[number], code: string): void {
  vi.spyOn(fs, name).mockRejectedValueOnce(systemError(code));
}

function removeHalf(folder: string): void {
  try {
    const names = readdirSync(folder);
    for (const name of names.slice(0, Math.ceil(names.length / 2))) {
      rmSync(join(folder, name), { recursive: true, force: true });
    }
  } catch {
    // A file, or nothing there: removing it either happens whole or not at all.
  }
}
