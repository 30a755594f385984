import { byPlace, type Diagnostic } from "../../model/diagnostic.ts";
import type { Photo } from "../../model/photo.ts";
import { inParallel } from "../in-parallel.ts";
import { hiddenMetadata } from "../published-bytes.ts";
import {
  type EncodeOptions,
  encodePicture,
  type HeicDecoder,
  type PictureLimits,
  type Recipe,
  usualLimits,
} from "./encode-picture.ts";
import { installedHeicDecoder } from "./heic-decoder.ts";
import { findOriginal, isRefusal, type Refusal, readOriginal, refusal } from "./original.ts";
import {
  type CachedPicture,
  cachedPicture,
  hashOf,
  KnownOriginals,
  keepPicture,
  keyOf,
} from "./picture-cache.ts";

/** What `cachePictures` works on. */
export interface CachingOptions {
  /** The same file may be named more than once. */
  readonly photos: readonly Photo[];
  /** The journal's `photos` folder. Nothing outside the folder around it is read. */
  readonly photosFolder: string;
  /** Where encoded pictures are kept between runs; outside journal and output. */
  readonly cacheFolder: string;
  readonly recipe: Recipe;
  readonly limits?: PictureLimits;
  /** In place of the optional package; `none` for a machine without it. */
  readonly decodeHeic?: HeicDecoder | "none";
  /** Called after each distinct file, with its name. */
  readonly progress?: (done: number, total: number, label: string) => void;
  /** Ends the work after the size being encoded; what is in the cache stays good. */
  readonly signal?: AbortSignal;
}

/** What `cachePictures` returns. */
export interface CachedPictures {
  /** By the photo's `file`. One that could not be read is missing. */
  readonly pictures: ReadonlyMap<string, CachedPicture>;
  /** One per file that could not be read, at the first photo that names it, by place. */
  readonly diagnostics: Diagnostic[];
  /** How many files were encoded now. */
  readonly encoded: number;
}

// Two, because one decoded photograph can take hundreds of megabytes.
const atOnce = 2;

/**
 * Sees to it that every photograph is in the cache as a recipe wants it: decoded, turned
 * upright, encoded afresh, without metadata. One that cannot be read becomes a finding, and the
 * others go on.
 *
 * @param each Called once for each different picture, before its file counts as done.
 * @throws MachineProblem when the cache cannot be written; whatever `signal` was aborted with.
 *   The cache stays usable in both cases.
 */
export async function cachePictures(
  options: CachingOptions,
  each: (picture: CachedPicture) => Promise<void> = async () => undefined,
): Promise<CachedPictures> {
  const { photosFolder, cacheFolder, recipe, progress, signal } = options;
  const { limits = usualLimits } = options;
  const decodeHeic = options.decodeHeic ?? installedHeicDecoder(limits.secondsEach);
  const encodeOptions: EncodeOptions = {
    recipe,
    limits,
    ...(decodeHeic === undefined || decodeHeic === "none" ? {} : { decodeHeic }),
    ...(signal === undefined ? {} : { signal }),
  };
  const known = await KnownOriginals.load(cacheFolder);
  const underWay = new Map<string, Promise<Made>>();

  const first = new Map<string, Photo>();
  for (const photo of options.photos) if (!first.has(photo.file)) first.set(photo.file, photo);

  const made = new Map<string, Made>();
  let encoded = 0;
  let done = 0;

  const work = async (file: string): Promise<void> => {
    signal?.throwIfAborted();
    made.set(file, await prepareOne(file));
    done += 1;
    progress?.(done, first.size, file);
  };

  async function prepareOne(file: string): Promise<Made> {
    const lookedAt = Date.now();
    const original = await findOriginal(photosFolder, file, limits.fileBytes);
    if (isRefusal(original)) return original;
    let hash = known.hashOf(original);
    let bytes: Uint8Array | undefined;
    if (hash === undefined) {
      const read = await readOriginal(original);
      if (isRefusal(read)) return read;
      bytes = read;
      hash = hashOf(bytes);
      known.remember(original, hash, lookedAt);
    }
    const key = keyOf(hash, recipe);
    const same = underWay.get(key);
    if (same) return same;
    const making = makeOne(key, async () => {
      if (bytes !== undefined) return bytes;
      const read = await readOriginal(original);
      return isRefusal(read) || hashOf(read) === hash ? read : changedMeanwhile();
    });
    underWay.set(key, making);
    return making;
  }

  async function makeOne(key: string, read: () => Promise<Uint8Array | Refusal>): Promise<Made> {
    let picture = await cachedPicture(cacheFolder, key);
    if (picture === undefined) {
      const bytes = await read();
      if (isRefusal(bytes)) return bytes;
      const sizes = await encodePicture(bytes, encodeOptions);
      if (isRefusal(sizes)) return sizes;
      for (const size of sizes) {
        const hidden = hiddenMetadata(size.bytes);
        if (hidden.length > 0) throw new Error(`an encoded picture carries ${hidden.join(", ")}`);
      }
      picture = await keepPicture(cacheFolder, key, sizes);
      encoded += 1;
    }
    await each(picture);
    return picture;
  }

  try {
    await inParallel(first.keys(), work, atOnce);
  } finally {
    await known.save().catch(() => undefined);
  }

  const pictures = new Map<string, CachedPicture>();
  const diagnostics: Diagnostic[] = [];
  for (const [file, photo] of first) {
    const result = made.get(file);
    if (result === undefined) continue;
    if (isRefusal(result)) diagnostics.push(unreadablePhoto(photo, result));
    else pictures.set(file, result);
  }
  return { pictures, diagnostics: diagnostics.sort(byPlace), encoded };
}

type Made = CachedPicture | Refusal;

// Kept under the hash of the old bytes, the new ones would be shown for the old.
function changedMeanwhile(): Refusal {
  return refusal("was changed while it was read", "changed", [], ["run the same command again"]);
}

function unreadablePhoto(photo: Photo, { why, label, notes, help }: Refusal): Diagnostic {
  return {
    code: "unreadable-photo",
    severity: "finding",
    span: photo.span,
    message: `photo \`${photo.file}\` ${why}`,
    label,
    notes: [...notes],
    help: [...help],
  };
}
