import {
  closeSync,
  type Dirent,
  existsSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  realpathSync,
  statSync,
} from "node:fs";
import { basename, join, relative, resolve, sep } from "node:path";

/** A file below the journal, found but not yet read. */
export interface FoundFile {
  /** Below the journal's folder, with `/` between parts, in Unicode NFC. */
  readonly path: string;
  readonly absolute: string;
  /** Why it must not be opened, if so: a link that leaves the journal, or leads nowhere. */
  readonly refused?: "leaves" | "dangling" | "loop";
}

/** A journal's folder on disk. */
export interface JournalFolder {
  /** Name of the folder itself. */
  readonly name: string;
  readonly absolute: string;
}

/**
 * Opens a journal's folder.
 * @returns `undefined` when there is no such folder.
 */
export function journalFolder(path: string): JournalFolder | undefined {
  const absolute = resolve(path);
  if (!existsSync(absolute) || !statSync(absolute).isDirectory()) return undefined;
  return { name: basename(absolute), absolute };
}

/** Whether a folder holds a register of a journal, so that it is meant to be one. */
export function isJournal({ absolute }: Pick<JournalFolder, "absolute">): boolean {
  return ["project", "people", "assemblies"].some((name) =>
    existsSync(join(absolute, `${name}.yaml`)),
  );
}

/** The folders directly in a folder, by name; none when it is no folder or cannot be read. */
export function foldersIn(path: string): string[] {
  try {
    return readdirSync(path, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !/^\.|^node_modules$/.test(entry.name))
      .map(({ name }) => join(path, name))
      .sort();
  } catch {
    return [];
  }
}

/** The text of a file, its byte order mark taken off. Throws as `node:fs` does. */
export function readText(absolute: string): string {
  const text = readFileSync(absolute, "utf8");
  return text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
}

/** A file's bytes as they are. Throws as `node:fs` does. */
export function readBytes(absolute: string): Uint8Array {
  return readFileSync(absolute);
}

/** A file's bytes one piece after the other; a piece is good until the next one comes. */
export function eachChunk(absolute: string, take: (chunk: Uint8Array) => void): void {
  const file = openSync(absolute, "r");
  try {
    const room = new Uint8Array(1 << 20);
    for (let read = readSync(file, room); read > 0; read = readSync(file, room)) {
      take(room.subarray(0, read));
    }
  } finally {
    closeSync(file);
  }
}

/** Whether a file stands directly in the journal's folder. */
export function hasFile(folder: JournalFolder, path: string): boolean {
  const absolute = join(folder.absolute, path);
  return existsSync(absolute) && statSync(absolute).isFile();
}

/**
 * Every file below a folder of the journal, sorted by path. Links are followed only as far as
 * they stay inside the journal. Editors' leavings (`.DS_Store`, `x~`, `.x.swp`) are passed over.
 */
export function filesBelow(folder: JournalFolder, below: string): FoundFile[] {
  const root = join(folder.absolute, below);
  if (!existsSync(root)) return [];
  const inside = realpathSync(folder.absolute);
  const found: FoundFile[] = [];
  const visit = (directory: string, real: string, seen: readonly string[]) => {
    for (const entry of readdirSync(directory, { withFileTypes: true })) {
      if (/^\.|~$|^#.*#$/.test(entry.name)) continue;
      const absolute = join(directory, entry.name);
      const path = relative(folder.absolute, absolute).split(sep).join("/").normalize("NFC");
      const file = { path, absolute };
      const target = entry.isSymbolicLink() ? linkTarget(absolute) : join(real, entry.name);
      if (target === undefined) found.push({ ...file, refused: "dangling" });
      else if (!isWithin(target, inside)) found.push({ ...file, refused: "leaves" });
      else if (!isDirectory(entry, target)) found.push(file);
      else if (seen.includes(target)) found.push({ ...file, refused: "loop" });
      else visit(absolute, target, [...seen, target]);
    }
  };
  const real = realpathSync(root);
  if (!isWithin(real, inside)) return [{ path: below, absolute: root, refused: "leaves" }];
  visit(root, real, [real]);
  return found.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** The files directly in the journal's folder, sorted by name; links and folders are not. */
export function filesDirectlyIn({ absolute }: JournalFolder): FoundFile[] {
  return readdirSync(absolute, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => ({ path: name.normalize("NFC"), absolute: join(absolute, name) }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}

function isWithin(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder + sep);
}

function linkTarget(absolute: string): string | undefined {
  try {
    return realpathSync(absolute);
  } catch {
    return undefined;
  }
}

function isDirectory(entry: Dirent, target: string): boolean {
  return entry.isDirectory() || (entry.isSymbolicLink() && statSync(target).isDirectory());
}
