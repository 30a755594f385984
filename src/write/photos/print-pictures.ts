import type { Diagnostic } from "../../model/diagnostic.ts";
import { MachineProblem } from "../machine-problem.ts";
import { type CachingOptions, cachePictures } from "./cache-pictures.ts";
import type { Recipe } from "./encode-picture.ts";
import { cachedBytes } from "./picture-cache.ts";

/**
 * Photographs for paper, where one is some 70 mm wide: about 230 dots to the inch, and 30 to
 * 60 kB each, so that three thousand of them are still a file that can be handed on.
 */
export const printRecipe: Recipe = { widths: [640], jpeg: { quality: 72 }, version: 1 };

/** A photograph ready for paper: a JPEG, upright, without metadata. */
export interface PrintPicture {
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  /** Read from the disk each time, so that only one need be in memory. */
  readonly bytes: () => Promise<Uint8Array>;
}

/** Pictures by the photo's `file`. A photo that could not be read is missing from the map. */
export type PrintPictures = ReadonlyMap<string, PrintPicture>;

/**
 * Makes the photographs of a book, kept in the cache beside those of the site.
 *
 * @returns The pictures, and one finding for each file that could not be read, by place.
 * @throws MachineProblem when the cache cannot be written; whatever `signal` was aborted with.
 */
export async function printPictures(
  options: Omit<CachingOptions, "recipe">,
): Promise<{ readonly pictures: PrintPictures; readonly diagnostics: readonly Diagnostic[] }> {
  const { cacheFolder } = options;
  const cached = await cachePictures({ ...options, recipe: printRecipe });
  const pictures = new Map<string, PrintPicture>();
  for (const [name, { key, files }] of cached.pictures) {
    const file = files.at(-1);
    if (!file) continue;
    const bytes = async () => {
      const found = await cachedBytes(cacheFolder, key, file);
      if (found) return found;
      throw new MachineProblem(
        "missing",
        `a picture went from the cache \`${cacheFolder}\` while it was in use`,
        ["run the same command again"],
      );
    };
    pictures.set(name, { width: file.width, height: file.height, bytes });
  }
  return { pictures, diagnostics: cached.diagnostics };
}
