import fs from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { writeFileInBits } from "../../src/write/output.ts";
import { diskDyingAfter, failOnce, systemError } from "../support/failing-disk.ts";
import { filesIn, scratchFolder, textOf } from "../support/scratch-folder.ts";

afterEach(() => vi.restoreAllMocks());

const bytes = (text: string) => new TextEncoder().encode(text);

/** Hands over the bits one after the other. */
const of =
  (...bits: readonly string[]) =>
  async (put: (bit: Uint8Array) => Promise<void>): Promise<void> => {
    for (const bit of bits) await put(bytes(bit));
  };

describe("writing a file bit by bit", () => {
  test("makes the folders between, keeps the order, and replaces what was there", async () => {
    const folder = scratchFolder({ "a/book.pdf": "old" });
    await writeFileInBits(join(folder, "a/book.pdf"), of("one ", "two ", "three"));
    await writeFileInBits(join(folder, "b/c/book.pdf"), of("four"));
    expect(textOf(folder, "a/book.pdf")).toBe("one two three");
    expect(filesIn(folder)).toEqual(["a/book.pdf", "b/c/book.pdf"]);
  });

  test("the path holds the old file until the new one is whole", async () => {
    const folder = scratchFolder({ "book.pdf": "old" });
    await writeFileInBits(join(folder, "book.pdf"), async (put) => {
      await put(bytes("new"));
      expect(textOf(folder, "book.pdf")).toBe("old");
    });
    expect(textOf(folder, "book.pdf")).toBe("new");
  });

  test("what the filler throws comes back as it is, and nothing is left behind", async () => {
    const folder = scratchFolder({ "book.pdf": "old" });
    const reason = new Error("enough");
    const failure = await writeFileInBits(join(folder, "book.pdf"), async (put) => {
      await put(bytes("half"));
      throw reason;
    }).catch((error) => error);
    expect(failure).toBe(reason);
    expect(textOf(folder, "book.pdf")).toBe("old");
    expect(filesIn(folder)).toEqual(["book.pdf"]);
  });

  test("a disk that fills up in the middle is a problem of the machine", async () => {
    const folder = scratchFolder({ "book.pdf": "old" });
    const open = fs.open.bind(fs);
    vi.spyOn(fs, "open").mockImplementation(async (...args) => {
      const handle = await open(...args);
      if (args[1] === "wx") handle.appendFile = () => Promise.reject(systemError("ENOSPC"));
      return handle;
    });
    await expect(writeFileInBits(join(folder, "book.pdf"), of("new"))).rejects.toMatchObject({
      kind: "disk full",
      exitCode: 3,
    });
    expect(textOf(folder, "book.pdf")).toBe("old");
    expect(filesIn(folder)).toEqual(["book.pdf"]);
  });

  test.each(["open", "rename"] as const)("a refused %s leaves the old file", async (call) => {
    const folder = scratchFolder({ "book.pdf": "old" });
    failOnce(call, "EACCES");
    await expect(writeFileInBits(join(folder, "book.pdf"), of("new"))).rejects.toMatchObject({
      kind: "not allowed",
    });
    expect(textOf(folder, "book.pdf")).toBe("old");
    expect(filesIn(folder)).toEqual(["book.pdf"]);
  });

  test("whichever call to the disk is the last, the file is the old one or the new one", async () => {
    for (let calls = 0; ; calls += 1) {
      const folder = scratchFolder({ "book.pdf": "old" });
      const disk = diskDyingAfter(calls);
      const failed = await writeFileInBits(join(folder, "book.pdf"), of("n", "ew")).then(
        () => false,
        () => true,
      );
      disk.revive();
      expect(["old", "new"]).toContain(textOf(folder, "book.pdf"));
      if (!failed) {
        expect(calls).toBeGreaterThan(2);
        return;
      }
    }
  });
});
