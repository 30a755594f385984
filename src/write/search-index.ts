import path from "node:path";
import { inParallel } from "./in-parallel.ts";
import { filesBelow, removeFile } from "./output.ts";

// What the search page's own script asks for. The rest of what the indexer offers is a ready
// user interface, which the site does not use.
const needed = [
  /^pagefind\.js$/,
  /^pagefind-worker\.js$/,
  /^pagefind-entry\.json$/,
  /^pagefind\.[^/]+\.pf_meta$/,
  /^wasm\.[^/]+\.pagefind$/,
  /^(fragment|index|filter)\/[^/]+\.pf_(fragment|index|filter)$/,
];

/** Where the index stands, below the site's root. */
export const indexFolder = "pagefind";

/**
 * Makes the search index of a finished site, in `pagefind/` below it, from the pages as they
 * are. Which part of a page is indexed, its title and its filters are marked in the page by
 * `data-pagefind-…` attributes. The files are flushed with the rest of the site, by the swap.
 *
 * @returns How many pages the index holds.
 * @throws MachineProblem when the index cannot be written.
 */
export async function indexSite(folder: string): Promise<{ pages: number }> {
  const pagefind = await import("pagefind");
  try {
    const { index, errors } = await pagefind.createIndex({
      // Keeps 3/32 apart from 3/16 and 32, and .125 from 125. Without `#`, a search for #30 finds
      // the No. 30 drill; part numbers such as AN470AD4-5 are found whole and by their parts.
      includeCharacters: "/.",
      keepIndexUrl: false,
    });
    if (index === undefined) throw new Error(`search index: ${errors.join("; ")}`);
    const added = await index.addDirectory({ path: path.resolve(folder) });
    if (added.errors.length > 0) throw new Error(`search index: ${added.errors.join("; ")}`);
    const outputPath = path.join(path.resolve(folder), indexFolder);
    const made = await index.writeFiles({ outputPath });
    if (made.errors.length > 0) throw new Error(`search index: ${made.errors.join("; ")}`);
    const written = await filesBelow(outputPath);
    const spare = written.filter((file) => !needed.some((pattern) => pattern.test(file.path)));
    await inParallel(spare, (file) => removeFile(path.join(outputPath, file.path)));
    return { pages: added.page_count };
  } finally {
    await pagefind.close();
  }
}
