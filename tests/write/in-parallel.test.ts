import { expect, test } from "vitest";
import { inParallel } from "../../src/write/in-parallel.ts";

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test("does each item once, and never more at once than it may", async () => {
  const done: number[] = [];
  let running = 0;
  let most = 0;
  const work = async (item: number): Promise<void> => {
    running += 1;
    most = Math.max(most, running);
    await pause(1);
    done.push(item);
    running -= 1;
  };
  await inParallel(
    Array.from({ length: 50 }, (_, i) => i),
    work,
    4,
  );
  expect(done.sort((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, i) => i));
  expect(most).toBe(4);
});

test("after a failure begins nothing more and leaves nothing running", async () => {
  let begun = 0;
  let ended = 0;
  const failing = inParallel(
    Array.from({ length: 100 }, (_, i) => i),
    async (item) => {
      begun += 1;
      await pause(item === 3 ? 5 : 20);
      ended += 1;
      if (item === 3) throw new Error(`item ${item}`);
    },
    8,
  );
  await expect(failing).rejects.toThrow("item 3");
  expect([begun, ended]).toEqual([8, 8]);
  await pause(50);
  expect(begun).toBe(8);
});
