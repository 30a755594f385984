import path from "node:path";
import { inParallel } from "./in-parallel.ts";
import { writeUnflushed } from "./output.ts";

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

// Thousands of pages take seconds. An indexer that died would otherwise be waited for for ever,
// or, with nothing else to do, let the whole program end without a word.
const patienceSeconds = 300;

/**
 * Makes the search index of a finished site, in `pagefind/` below it, from the pages as they
 * are. Which part of a page is indexed, its title and its filters are marked in the page by
 * `data-pagefind-…` attributes. The files are flushed with the rest of the site, by the swap.
 *
 * @returns How many pages the index holds.
 * @throws MachineProblem when the index cannot be written; Error when the indexer does not
 *   answer within `patience` seconds.
 */
export async function indexSite(
  folder: string,
  patience = patienceSeconds,
): Promise<{ pages: number }> {
  const pagefind = await import("pagefind");
  const started = performance.now();
  const answer = <T extends { readonly errors: readonly string[] }>(asked: Promise<T>) =>
    answered(asked, patience - (performance.now() - started) / 1000);
  try {
    const { index } = await answer(
      pagefind.createIndex({
        // Keeps 3/32 apart from 3/16 and 32, and .125 from 125. Without `#`, a search for #30
        // finds the No. 30 drill; part numbers such as AN470AD4-5 are found whole and by parts.
        includeCharacters: "/.",
        keepIndexUrl: false,
        // What a result shows. Thousands of small files are slow to write, to flush and to copy.
        maxFragments: 400,
      }),
    );
    if (index === undefined) throw new Error("search index: there is none");
    const added = await answer(index.addDirectory({ path: path.resolve(folder) }));
    // The indexer can write the files itself, but it dies without an answer on a full disk.
    const { files } = await answer(index.getFiles());
    const kept = files.filter((file) => needed.some((pattern) => pattern.test(file.path)));
    await inParallel(kept, (file) =>
      writeUnflushed(path.join(folder, indexFolder, file.path), file.content),
    );
    return { pages: added.page_count };
  } finally {
    await pagefind.close();
  }
}

async function answered<T extends { readonly errors: readonly string[] }>(
  asked: Promise<T>,
  seconds: number,
): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    const words = "search index: the indexer does not answer";
    timer = setTimeout(() => reject(new Error(words)), Math.max(0, seconds) * 1000);
  });
  try {
    const result = await Promise.race([asked, late]);
    if (result.errors.length > 0) throw new Error(`search index: ${result.errors.join("; ")}`);
    return result;
  } finally {
    clearTimeout(timer);
  }
}
