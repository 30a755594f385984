import path from "node:path";
import type { Diagnostic } from "../../model/diagnostic.ts";
import type { Photo } from "../../model/photo.ts";
import type { Picture, Pictures } from "../../present/pages/picture.ts";
import { inParallel } from "../in-parallel.ts";
import { makeFolder } from "../output.ts";
import { cachePictures } from "./cache-pictures.ts";
import {
  type HeicDecoder,
  type PictureLimits,
  type Recipe,
  usualRecipe,
} from "./encode-picture.ts";
import { type CachedPicture, publishCached, publishedName, tidyCache } from "./picture-cache.ts";

/** What `preparePictures` works on. */
export interface PictureOptions {
  /** Exactly these are published; the same file may be named more than once. */
  readonly photos: readonly Photo[];
  /** The journal's `photos` folder. Nothing outside the folder around it is read. */
  readonly photosFolder: string;
  /** Where encoded pictures are kept between builds; outside journal and output. */
  readonly cacheFolder: string;
  /** The site being built; pictures go to `photos/` in it. */
  readonly outputFolder: string;
  /** Called after each distinct file, with its name. */
  readonly progress?: (done: number, total: number, label: string) => void;
  /** Ends the work after the size being encoded; what is in the cache stays good. */
  readonly signal?: AbortSignal;
  /** Removes from the cache what this call does not use. */
  readonly prune?: boolean;
  readonly recipe?: Recipe;
  readonly limits?: PictureLimits;
  /** In place of the optional package; `none` for a machine without it. */
  readonly decodeHeic?: HeicDecoder | "none";
}

/** What `preparePictures` returns. */
export interface PreparedPictures {
  readonly pictures: Pictures;
  /** One per file that could not be published, at the first photo that names it, by place. */
  readonly diagnostics: Diagnostic[];
  /** How many files were encoded now. */
  readonly encoded: number;
  /** How many came from the cache, or have the same bytes as one encoded now. */
  readonly reused: number;
}

/**
 * Publishes photographs: each is decoded, turned upright, encoded afresh in several widths and
 * put into the output under a name made from its content. Originals and their metadata never
 * reach the output. One that cannot be read becomes a finding, and the others go on.
 *
 * @throws MachineProblem when cache or output cannot be written; whatever `signal` was aborted
 *   with. The cache stays usable in both cases.
 */
export async function preparePictures({
  outputFolder,
  prune,
  recipe = usualRecipe,
  ...options
}: PictureOptions): Promise<PreparedPictures> {
  const { cacheFolder } = options;
  const target = path.join(outputFolder, "photos");
  await makeFolder(target);
  const cached = await cachePictures({ ...options, recipe }, ({ key, files }) =>
    inParallel(files, (file) =>
      publishCached(cacheFolder, key, file, path.join(target, publishedName(key, file))),
    ),
  );
  const made = [...cached.pictures];
  await tidyCache(cacheFolder, prune ? new Set(made.map(([, { key }]) => key)) : undefined);
  return {
    pictures: new Map(made.map(([file, picture]) => [file, pictureOf(picture)])),
    diagnostics: cached.diagnostics,
    encoded: cached.encoded,
    reused: made.length - cached.encoded,
  };
}

function pictureOf({ key, files }: CachedPicture): Picture {
  const widest = files.at(-1);
  const ofFormat = (format: "avif" | "jpeg") =>
    files
      .filter((file) => file.format === format)
      .map((file) => ({
        width: file.width,
        height: file.height,
        url: `photos/${publishedName(key, file)}`,
      }));
  return {
    width: widest?.width ?? 0,
    height: widest?.height ?? 0,
    avif: ofFormat("avif"),
    jpeg: ofFormat("jpeg"),
  };
}
