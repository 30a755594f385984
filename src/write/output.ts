import { randomBytes } from "node:crypto";
import type { Dirent } from "node:fs";
// The default import is one object for the whole program, so that a test can let a call fail.
import fs from "node:fs/promises";
import path from "node:path";
import { inParallel } from "./in-parallel.ts";
import { inPlainWords, systemCode } from "./machine-problem.ts";

// The package write-file-atomic was measured to leave a truncated file behind without an
// error when the disk fills up during a write: it ignores how many bytes the system took.
// `FileHandle.writeFile` goes on until all are written or the system refuses.

/** What stands at a path. A `link` is a symbolic link, whatever it leads to. */
export type PathKind = "absent" | "file" | "folder" | "link" | "other";

/** A file below a folder. */
export interface FoundFile {
  /** From the folder, with `/` between parts. */
  readonly path: string;
  readonly kind: Exclude<PathKind, "absent" | "folder">;
}

/**
 * Writes a file so that the path holds either the old bytes or the new ones, never half:
 * a temporary file in the same folder, flushed, then renamed. Makes missing folders.
 * @throws MachineProblem when the system refuses; the temporary file is removed and the old
 *   file stays.
 */
export async function writeFileWhole(file: string, data: string | Uint8Array): Promise<void> {
  await told("writing", file, async () => {
    const folder = path.dirname(file);
    await makeFolders(folder);
    const temporary = temporaryName(file);
    try {
      await writeFlushed(temporary, data);
      await renamePatiently(temporary, file);
    } catch (error) {
      await fs.rm(temporary, { force: true }).catch(() => undefined);
      throw error;
    }
    await flushFolderEntry(folder);
  });
}

/**
 * Writes a file into a folder that nobody sees yet, such as a site being built, and leaves the
 * flushing to `flushFolder`. Makes missing folders.
 * @throws MachineProblem when the system refuses.
 */
export async function writeUnflushed(file: string, data: string | Uint8Array): Promise<void> {
  await told("writing", file, async () => {
    await makeFolders(path.dirname(file));
    await fs.writeFile(file, data);
  });
}

/**
 * Writes a file bit by bit, for what is too large to be held in memory; otherwise as
 * `writeFileWhole`. The next bit is taken when the system has the last.
 *
 * @param fill Hands over the bits in order. What it throws, this throws: the temporary file is
 *   removed and the old file stays.
 * @throws MachineProblem when the system refuses.
 */
export async function writeFileInBits(
  file: string,
  fill: (put: (bit: Uint8Array) => Promise<void>) => Promise<void>,
): Promise<void> {
  const folder = path.dirname(file);
  await makeFolder(folder);
  const temporary = temporaryName(file);
  const asTold = <T>(run: () => Promise<T>): Promise<T> => told("writing", file, run);
  try {
    const handle = await asTold(() => fs.open(temporary, "wx"));
    try {
      // `appendFile` goes on until all is written or the system refuses, as `writeFile` does.
      await fill((bit) => asTold(() => handle.appendFile(bit)));
      await asTold(() => handle.sync());
    } finally {
      await handle.close();
    }
    await asTold(() => renamePatiently(temporary, file));
  } catch (error) {
    await fs.rm(temporary, { force: true }).catch(() => undefined);
    throw error;
  }
  await asTold(() => flushFolderEntry(folder));
}

/**
 * Creates a file only if nothing is there.
 * @returns False when something already stands at the path; it is left alone.
 * @throws MachineProblem for any other refusal.
 */
export async function createFile(file: string, text: string): Promise<boolean> {
  return told("writing", file, async () => {
    await makeFolders(path.dirname(file));
    // Written aside first and linked: whoever sees the path sees all of its text.
    const temporary = temporaryName(file);
    try {
      await writeFlushed(temporary, text);
      await linkOrCreate(temporary, file, text);
      return true;
    } catch (error) {
      if (systemCode(error) === "EEXIST") return false;
      throw error;
    } finally {
      await fs.rm(temporary, { force: true }).catch(() => undefined);
    }
  });
}

/** The file's text, or undefined when nothing is there. @throws MachineProblem otherwise. */
export async function readTextIfThere(file: string): Promise<string | undefined> {
  return told("reading", file, async () => {
    try {
      return await fs.readFile(file, "utf8");
    } catch (error) {
      if (isMissing(error)) return undefined;
      throw error;
    }
  });
}

/**
 * Opens a file to be read in pieces, and closes it when `use` is done.
 * @param use Given a function that reads so many bytes from an offset on, fewer at the end.
 */
export async function readInPieces<T>(
  file: string,
  use: (read: (offset: number, length: number) => Promise<Buffer>) => Promise<T>,
): Promise<T> {
  const handle = await told("reading", file, () => fs.open(file, "r"));
  try {
    return await use((offset, length) =>
      told("reading", file, async () => {
        const buffer = Buffer.alloc(length);
        const { bytesRead } = await handle.read(buffer, 0, length, offset);
        return buffer.subarray(0, bytesRead);
      }),
    );
  } finally {
    await handle.close();
  }
}

/** The file's bytes, or undefined when nothing is there. @throws MachineProblem otherwise. */
export async function readBytesIfThere(file: string): Promise<Buffer | undefined> {
  return told("reading", file, async () => {
    try {
      return await fs.readFile(file);
    } catch (error) {
      if (isMissing(error) || systemCode(error) === "EISDIR") return undefined;
      throw error;
    }
  });
}

/** Makes the folder and those above it; one that is there already is left as it is. */
export async function makeFolder(folder: string): Promise<void> {
  await told("making the folder", folder, () => makeFolders(folder));
}

/** Removes a file; does nothing when it is gone already. */
export async function removeFile(file: string): Promise<void> {
  await told("removing", file, () => fs.rm(file, { force: true }));
}

/**
 * Removes a folder and all in it, except that `last` (a file directly in it) goes only when
 * everything else has gone: cut short, the folder still carries it. Links are removed, never
 * followed.
 */
export async function removeFolder(folder: string, last?: string): Promise<void> {
  await told("removing", folder, async () => {
    const patience = { recursive: true, force: true, maxRetries: 20, retryDelay: 50 } as const;
    if (last !== undefined) {
      const names = await fs.readdir(folder).catch(() => []);
      for (const name of names) {
        if (name !== last) await fs.rm(path.join(folder, name), patience);
      }
    }
    await fs.rm(folder, patience);
  });
}

/** Renames a file or folder and makes the rename last. @throws MachineProblem on refusal. */
export async function renamePath(from: string, to: string): Promise<void> {
  await told("renaming", from, async () => {
    await renamePatiently(from, to);
    await flushFolderEntry(path.dirname(to));
  });
}

/**
 * Puts a file of this program's own cache into the output, without copying its bytes where the
 * disk allows that. One that is there already is left: the name must be made from the content.
 */
export async function placeFile(from: string, to: string): Promise<void> {
  await told("writing", to, async () => {
    try {
      await fs.link(from, to);
    } catch (error) {
      if (systemCode(error) === "EEXIST") return;
      if (isMissing(error)) throw error;
      await fs.copyFile(from, to);
    }
  });
}

/** Copies a file whole, as `writeFileWhole` does. @throws MachineProblem, also when missing. */
export async function copyFileWhole(from: string, to: string): Promise<void> {
  await writeFileWhole(to, await told("reading", from, () => fs.readFile(from)));
}

/** A file's bytes one piece after the other. @throws MachineProblem, also when missing. */
export async function eachPiece(file: string, take: (piece: Uint8Array) => void): Promise<void> {
  await told("reading", file, async () => {
    const handle = await fs.open(file, "r");
    try {
      for await (const piece of handle.createReadStream({ autoClose: false })) take(piece);
    } finally {
      await handle.close();
    }
  });
}

/** What stands at the path, without following a link. */
export async function kindOf(target: string): Promise<PathKind> {
  return told("looking at", target, async () => {
    try {
      const found = await fs.lstat(target);
      if (found.isSymbolicLink()) return "link";
      if (found.isDirectory()) return "folder";
      return found.isFile() ? "file" : "other";
    } catch (error) {
      if (isMissing(error)) return "absent";
      throw error;
    }
  });
}

/** Bytes in a file; undefined when nothing is there. */
export async function sizeOf(file: string): Promise<number | undefined> {
  return told("looking at", file, async () => {
    try {
      const found = await fs.stat(file);
      return found.isFile() ? found.size : undefined;
    } catch (error) {
      if (isMissing(error)) return undefined;
      throw error;
    }
  });
}

/** Where a path really leads, links followed; undefined when nothing is there. */
export async function realPathOf(target: string): Promise<string | undefined> {
  return told("looking at", target, async () => {
    try {
      return await fs.realpath(target);
    } catch (error) {
      if (isMissing(error) || systemCode(error) === "ELOOP") return undefined;
      throw error;
    }
  });
}

/** The names in a folder, sorted; none when it is not there. */
export async function namesIn(folder: string): Promise<string[]> {
  return told("reading the folder", folder, async () => {
    try {
      return (await fs.readdir(folder)).sort();
    } catch (error) {
      if (isMissing(error)) return [];
      throw error;
    }
  });
}

/** Every file below a folder, sorted by path. Links are listed and not followed. */
export async function filesBelow(folder: string): Promise<FoundFile[]> {
  const found: FoundFile[] = [];
  await told("reading the folder", folder, () => collect(folder, "", found));
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/**
 * Makes everything below a folder survive a power cut: each file flushed, then each folder.
 * @param except Names directly in the folder that are flushed already.
 */
export async function flushFolder(folder: string, except: readonly string[] = []): Promise<void> {
  await told("writing", folder, async () => {
    const entries = await fs.readdir(folder, { withFileTypes: true, recursive: true });
    const kept = entries.filter(
      ({ name, parentPath }) => parentPath !== folder || !except.includes(name),
    );
    const inner = (isWanted: (entry: Dirent) => boolean): string[] =>
      kept.filter(isWanted).map(({ parentPath, name }) => path.join(parentPath, name));
    await inParallel(
      inner((entry) => entry.isFile()),
      flushFile,
    );
    await inParallel([...inner((entry) => entry.isDirectory()), folder], flushFolderEntry);
  });
}

/** Milliseconds since the file was last written; undefined when nothing is there. */
export async function ageOf(file: string): Promise<number | undefined> {
  return told("looking at", file, async () => {
    try {
      return Date.now() - (await fs.stat(file)).mtimeMs;
    } catch (error) {
      if (isMissing(error)) return undefined;
      throw error;
    }
  });
}

/** Ends the name of every temporary file that this program makes. */
export const temporaryEnding = ".witness-tmp";

function temporaryName(file: string): string {
  const mark = `${process.pid}-${randomBytes(6).toString("hex")}`;
  return path.join(path.dirname(file), `.${mark}${temporaryEnding}`);
}

async function writeFlushed(file: string, data: string | Uint8Array): Promise<void> {
  const handle = await fs.open(file, "wx");
  try {
    await handle.writeFile(data);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function linkOrCreate(temporary: string, file: string, text: string): Promise<void> {
  try {
    await fs.link(temporary, file);
  } catch (error) {
    // Some memory cards and network disks have no hard links.
    if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK"].includes(systemCode(error) ?? "")) {
      throw error;
    }
    await writeFlushed(file, text);
  }
}

// Virus scanners and indexers on Windows hold fresh files open for a moment.
const patienceMs = 5_000;

async function renamePatiently(from: string, to: string): Promise<void> {
  const giveUp = Date.now() + patienceMs;
  for (let pause = 10; ; pause = Math.min(pause * 2, 500)) {
    try {
      return await fs.rename(from, to);
    } catch (error) {
      const passing = ["EPERM", "EACCES", "EBUSY"].includes(systemCode(error) ?? "");
      if (process.platform !== "win32" || !passing || Date.now() + pause > giveUp) throw error;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
}

async function flushFile(file: string): Promise<void> {
  const handle = await fs.open(file, "r+");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function flushFolderEntry(folder: string): Promise<void> {
  // Windows has no such call for folders and needs none.
  if (process.platform === "win32") return;
  const handle = await fs.open(folder, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function collect(folder: string, below: string, found: FoundFile[]): Promise<void> {
  for (const entry of await fs.readdir(path.join(folder, below), { withFileTypes: true })) {
    const inner = below === "" ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory()) await collect(folder, inner, found);
    else if (entry.isFile()) found.push({ path: inner, kind: "file" });
    else found.push({ path: inner, kind: entry.isSymbolicLink() ? "link" : "other" });
  }
}

// Node's own way down never ends below a folder that nothing can be made in, such as `/proc`.
async function makeFolders(folder: string): Promise<void> {
  try {
    await makeOneFolder(folder);
  } catch (error) {
    const above = path.dirname(folder);
    if (systemCode(error) !== "ENOENT" || above === folder) throw error;
    await makeFolders(above);
    await makeOneFolder(folder);
  }
}

async function makeOneFolder(folder: string): Promise<void> {
  try {
    await fs.mkdir(folder);
  } catch (error) {
    if (systemCode(error) !== "EEXIST") throw error;
    // Refused when what is there is no folder.
    await fs.stat(path.join(folder, path.sep));
  }
}

function isMissing(error: unknown): boolean {
  const code = systemCode(error);
  return code === "ENOENT" || code === "ENOTDIR";
}

async function told<T>(doing: string, target: string, run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    throw inPlainWords(error, doing, target);
  }
}
