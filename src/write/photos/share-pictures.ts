import path from "node:path";
import { shareSize } from "../../present/share/share-sheet.ts";
import { makeFolder } from "../output.ts";
import { type CachingOptions, cachePictures } from "./cache-pictures.ts";
import type { Recipe } from "./encode-picture.ts";
import { publishCached, publishedName } from "./picture-cache.ts";

/** A photograph for where its page is shared: the shape that is asked for there. */
export const shareRecipe: Recipe = {
  widths: [shareSize.width],
  shape: shareSize,
  jpeg: { quality: 78 },
  version: 1,
};

/**
 * Cuts photographs to the shape of a share picture and puts them into `share/` of the output.
 * They are kept in the cache beside those of the pages.
 *
 * @param photos One for each day that has any; files that cannot be read are passed over,
 *   because the pages have said so.
 * @returns Where each stands, from the site's root, by the photo's `file`; how many were encoded.
 * @throws MachineProblem when cache or output cannot be written; whatever `signal` was aborted
 *   with.
 */
export async function sharePictures({
  outputFolder,
  ...options
}: Omit<CachingOptions, "recipe"> & { readonly outputFolder: string }): Promise<{
  readonly urls: ReadonlyMap<string, string>;
  readonly encoded: number;
}> {
  if (options.photos.length === 0) return { urls: new Map(), encoded: 0 };
  const urls = new Map<string, string>();
  await makeFolder(path.join(outputFolder, "share"));
  const { pictures, encoded } = await cachePictures({ ...options, recipe: shareRecipe });
  for (const [name, { key, files }] of pictures) {
    const file = files.at(-1);
    if (file === undefined) continue;
    const url = `share/${publishedName(key, file)}`;
    await publishCached(options.cacheFolder, key, file, path.join(outputFolder, url));
    urls.set(name, url);
  }
  return { urls, encoded };
}
