import fs from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, expect, onTestFinished, test, vi } from "vitest";
import { startPreviewServer } from "../../src/cli/preview-server.ts";
import { indexSite } from "../../src/write/search-index.ts";
import { systemError } from "../support/failing-disk.ts";
import { filesIn, scratchFolder } from "../support/scratch-folder.ts";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

const prose = {
  dimpled: "Dimpled 3/32 holes along the rib.",
  opened: "Opened to 3/16, serial 32 and 3 more, 332 rivets.",
  skin: "The skin is .125 in thick.",
  spacer: "Made a spacer of 0.125 in.",
  read: "The reading is 0.1250 in.",
  hours: "Drove 125 rivets in 1.25 hours.",
  drill: "A No. 30 drill for the skins.",
  waited: "Waited 30 minutes.",
  larger: "A No. 40 drill.",
  universal: "AN470AD4-5 rivets, riveted from the middle.",
  short: "AN470AD3-4 rivets.",
  bolt: "Bolt AN3-5A, torque 31 lbf·in.",
  step: "Step HS-07 is done.",
  other: "Step HS-08 is begun; deviation D-014.",
};

/** What a builder or a follower types, and the days that have to come back, in any order. */
const queries: readonly [string, ...(keyof typeof prose)[]][] = [
  ["AN470AD4-5", "universal"],
  ["AN470", "universal", "short"],
  ["an470ad3", "short"],
  ["AN3-5A", "bolt"],
  ["3/32", "dimpled"],
  ["3/16", "opened"],
  [".125", "skin"],
  ["0.125", "spacer", "read"],
  ["0.1250", "read"],
  ["1.25", "hours"],
  ["No. 30", "drill"],
  ["#30", "drill", "waited"],
  ["HS-07", "step"],
  ["D-014", "other"],
  ["lbf·in", "bolt"],
  ["torque", "bolt"],
  ["rivet", "universal", "short", "hours", "opened"],
];

interface Search {
  options(options: { basePath: string; baseUrl: string }): Promise<void>;
  search(query: string): Promise<{ results: { data(): Promise<{ url: string }> }[] }>;
}

test("finds what people look for, by the same script as the search page", async () => {
  const site = scratchFolder(
    Object.fromEntries(
      Object.entries(prose).map(([name, text]) => [
        `${name}/index.html`,
        `<!doctype html><html lang="en"><head><title>${name}</title></head><body><nav>torque</nav><main data-pagefind-body><p>${text}</p></main></body></html>`,
      ]),
    ),
  );
  expect(await indexSite(site)).toEqual({ pages: Object.keys(prose).length });

  const made = filesIn(join(site, "pagefind"));
  expect(made).toContain("pagefind.js");
  expect(made.filter((file) => /ui|highlight|playground|\.css$/.test(file))).toEqual([]);

  const { found } = await searchOf(site);
  for (const [query, ...expected] of queries) {
    const urls = await found(query);
    expect([query, ...urls]).toEqual([query, ...expected.map((n) => `/${n}/`).sort()]);
  }
});

/** Searches a site as the search page does, by its own copy of the script. */
async function searchOf(site: string): Promise<{ found(query: string): Promise<string[]> }> {
  const server = await startPreviewServer({ siteFolder: site, port: 0 });
  onTestFinished(() => server.close());
  const script = pathToFileURL(join(site, "pagefind/pagefind.js")).href;
  const pagefind = (await import(/* @vite-ignore */ script)) as Search;
  await pagefind.options({ basePath: `${server.address}pagefind/`, baseUrl: "/" });
  return {
    async found(query) {
      const { results } = await pagefind.search(query);
      const urls = await Promise.all(results.map(async (result) => (await result.data()).url));
      return urls.sort();
    },
  };
}

test("keeps thousands of pages in a few hundred files, and finds each", async () => {
  const names = Array.from({ length: 900 }, (_, at) => `p${at}`);
  const site = scratchFolder(
    Object.fromEntries(
      names.map((name) => [
        `${name}/index.html`,
        `<!doctype html><html lang="en"><title>${name}</title><main data-pagefind-body>word${name}</main></html>`,
      ]),
    ),
  );
  expect(await indexSite(site)).toEqual({ pages: names.length });
  const fragments = filesIn(join(site, "pagefind")).filter((file) => file.includes("fragment"));
  expect(fragments.length).toBeLessThanOrEqual(400);

  const { found } = await searchOf(site);
  for (const name of ["p0", "p450", "p899"])
    expect(await found(`word${name}`)).toEqual([`/${name}/`]);
});

test("gives the same files for the same pages", async () => {
  const page = '<!doctype html><html lang="en"><title>a</title><body><p>rivets</p></body></html>';
  const [one, two] = [scratchFolder({ "index.html": page }), scratchFolder({ "index.html": page })];
  await indexSite(one);
  await indexSite(two);
  expect(filesIn(one)).toEqual(filesIn(two));
});

test("a full disk is a problem of the machine", async () => {
  const page = '<!doctype html><html lang="en"><title>a</title><body><p>rivets</p></body></html>';
  vi.spyOn(fs, "writeFile").mockRejectedValueOnce(systemError("ENOSPC"));
  await expect(indexSite(scratchFolder({ "index.html": page }))).rejects.toMatchObject({
    kind: "disk full",
  });
});

test("an indexer that dies is not waited for in vain", async () => {
  vi.stubEnv("PAGEFIND_EXTENDED_BINARY_PATH", process.execPath);
  const folder = scratchFolder({ "index.html": "<!doctype html><title>a</title>" });
  await expect(indexSite(folder, 1)).rejects.toThrow("search index: the indexer does not answer");
});
