import { createHash } from "node:crypto";
import path from "node:path";
import {
  ageOf,
  filesBelow,
  placeFile,
  readBytesIfThere,
  readTextIfThere,
  removeFile,
  sizeOf,
  temporaryEnding,
  writeFileWhole,
} from "../output.ts";
import type { EncodedFile, Recipe } from "./encode-picture.ts";
import type { Original } from "./original.ts";

/** A file kept in the cache. */
export interface CachedFile {
  readonly format: "avif" | "jpeg";
  readonly width: number;
  readonly height: number;
  /** Size of the file, by which one that was cut or changed is noticed. */
  readonly bytes: number;
}

/** The encoded sizes of one original under one recipe. */
export interface CachedPicture {
  /** Hash of the original's bytes and the recipe. */
  readonly key: string;
  /** As encoded: narrowest first, AVIF before JPEG. */
  readonly files: readonly CachedFile[];
}

const extensions = { avif: "avif", jpeg: "jpg" } as const;

/** Name of a published size: the same bytes and recipe always get the same name. */
export function publishedName(key: string, { width, format }: CachedFile): string {
  return `${key.slice(0, 20)}-${width}.${extensions[format]}`;
}

/** Hash of an original's bytes, SHA-256 in hexadecimal. */
export function hashOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** What a picture is kept under: the same bytes under the same recipe, wherever the file lies. */
export function keyOf(hash: string, recipe: Recipe): string {
  return createHash("sha256")
    .update(`${JSON.stringify(recipe)}\n${hash}`)
    .digest("hex");
}

/** Looks a picture up. @returns Undefined unless all of its files are there in full size. */
export async function cachedPicture(
  folder: string,
  key: string,
): Promise<CachedPicture | undefined> {
  const files = parseFiles(await readTextIfThere(listPath(folder, key)));
  if (files === undefined) return undefined;
  const sizes = await Promise.all(files.map((file) => sizeOf(filePath(folder, key, file))));
  return files.every(({ bytes }, i) => sizes[i] === bytes) ? { key, files } : undefined;
}

/** How many pictures the cache holds, whole ones, under whatever recipe. */
export async function cachedPictures(folder: string): Promise<number> {
  const files = await filesBelow(folder).catch(() => []);
  return files.filter(({ path: name }) => /^[0-9a-f]{2}\/[0-9a-f]{64}\.json$/.test(name)).length;
}

/**
 * Keeps a picture. The list of its files is written last, so that a picture cut short by a
 * kill counts as not there.
 */
export async function keepPicture(
  folder: string,
  key: string,
  encoded: readonly EncodedFile[],
): Promise<CachedPicture> {
  const files: CachedFile[] = [];
  for (const { format, width, height, bytes } of encoded) {
    const file = { format, width, height, bytes: bytes.length };
    await writeFileWhole(filePath(folder, key, file), bytes);
    files.push(file);
  }
  await writeFileWhole(listPath(folder, key), `${JSON.stringify(files)}\n`);
  return { key, files };
}

/** Puts one file of a cached picture into the output. */
export async function publishCached(
  folder: string,
  key: string,
  file: CachedFile,
  target: string,
): Promise<void> {
  await placeFile(filePath(folder, key, file), target);
}

/** The bytes of one file of a cached picture; undefined when it has gone from the cache. */
export async function cachedBytes(
  folder: string,
  key: string,
  file: CachedFile,
): Promise<Uint8Array | undefined> {
  return readBytesIfThere(filePath(folder, key, file));
}

/**
 * Removes what interrupted runs left behind and, when `keep` is given, every picture whose
 * key is not in it. Nobody else may be writing to the cache.
 */
export async function tidyCache(folder: string, keep?: ReadonlySet<string>): Promise<void> {
  const hour = 3_600_000;
  for (const { path: name } of await filesBelow(folder).catch(() => [])) {
    const file = path.join(folder, name);
    if (name.endsWith(temporaryEnding)) {
      if (((await ageOf(file)) ?? 0) > hour) await removeFile(file);
      continue;
    }
    const key = /^[0-9a-f]{2}\/([0-9a-f]{64})[.-]/.exec(name)?.[1];
    if (keep && key !== undefined && !keep.has(key)) await removeFile(file);
  }
}

/**
 * Remembers the hashes of originals, so that a rebuild need not read gigabytes again. An
 * original counts as unchanged while its size, both of its times and its file number are;
 * copying other bytes over it changes at least one, even when its date is kept.
 */
export class KnownOriginals {
  readonly #file: string;
  #known: Map<string, { stamp: string; hash: string }>;
  #changed = false;

  private constructor(file: string, known: Map<string, { stamp: string; hash: string }>) {
    this.#file = file;
    this.#known = known;
  }

  static async load(folder: string): Promise<KnownOriginals> {
    const file = path.join(folder, "originals.json");
    return new KnownOriginals(file, parseKnown(await readTextIfThere(file)));
  }

  /** The hash, or undefined when the file is new or may have changed. */
  hashOf(original: Original): string | undefined {
    const known = this.#known.get(original.path);
    return known?.stamp === original.stamp ? known.hash : undefined;
  }

  /**
   * Remembers a hash, unless the file was changed so shortly before it was read that a second
   * change might carry the same times.
   * @param readAtMs When its stamp was taken, milliseconds since 1970.
   */
  remember(original: Original, hash: string, readAtMs: number): void {
    if (readAtMs - original.changedMs < 2_000) return;
    this.#known.set(original.path, { stamp: original.stamp, hash });
    this.#changed = true;
  }

  async save(): Promise<void> {
    if (!this.#changed) return;
    const sorted = [...this.#known].sort(([a], [b]) => (a < b ? -1 : 1));
    await writeFileWhole(this.#file, `${JSON.stringify(sorted, null, 0)}\n`);
    this.#changed = false;
  }
}

function listPath(folder: string, key: string): string {
  return path.join(folder, key.slice(0, 2), `${key}.json`);
}

function filePath(folder: string, key: string, { width, format }: CachedFile): string {
  return path.join(folder, key.slice(0, 2), `${key}-${width}.${extensions[format]}`);
}

// A cache that was edited or damaged counts as empty; it is never a reason to stop.
function parseFiles(text: string | undefined): CachedFile[] | undefined {
  const value = parseJson(text);
  if (!Array.isArray(value) || value.length === 0) return undefined;
  const files: CachedFile[] = [];
  for (const item of value as unknown[]) {
    if (typeof item !== "object" || item === null) return undefined;
    const { format, width, height, bytes } = item as Record<string, unknown>;
    if (format !== "avif" && format !== "jpeg") return undefined;
    if (!isCount(width) || !isCount(height) || !isCount(bytes)) return undefined;
    files.push({ format, width, height, bytes });
  }
  return files;
}

function parseKnown(text: string | undefined): Map<string, { stamp: string; hash: string }> {
  const known = new Map<string, { stamp: string; hash: string }>();
  const value = parseJson(text);
  if (!Array.isArray(value)) return known;
  for (const item of value as unknown[]) {
    if (!Array.isArray(item)) continue;
    const [file, entry] = item as unknown[];
    if (typeof file !== "string" || typeof entry !== "object" || entry === null) continue;
    const { stamp, hash } = entry as Record<string, unknown>;
    if (typeof stamp === "string" && typeof hash === "string") known.set(file, { stamp, hash });
  }
  return known;
}

function parseJson(text: string | undefined): unknown {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isCount(value: unknown): value is number {
  return typeof value === "number" && Number.isSafeInteger(value) && value > 0;
}
