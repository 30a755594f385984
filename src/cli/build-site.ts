import { basename, join, resolve } from "node:path";
import type { Analysis } from "../compute/analysis.ts";
import { photosOf, videosOf } from "../model/build.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { assemblyFeeds, feedOf } from "../present/feeds/feed-of.ts";
import { siteAddress } from "../present/pages/addresses.ts";
import { sitePages } from "../present/pages/site.ts";
import { sitemapPages } from "../present/pages/sitemap-pages.ts";
import type { Edition } from "../present/record/edition.ts";
import { privateEdition, publicEdition } from "../present/record/public-edition.ts";
import { withheldTexts } from "../present/record/withheld-texts.ts";
import { shareablePhoto } from "../present/share/page-share.ts";
import { renderSite } from "../write/eleventy/render-site.ts";
import { writeReports } from "../write/exports/report/write-reports.ts";
import { writeTemplates } from "../write/exports/templates/write-templates.ts";
import { writeFeeds } from "../write/feeds.ts";
import { withLock } from "../write/lock.ts";
import { checkOutput, type OutputProblem } from "../write/output-checks.ts";
import { cachedPictures } from "../write/photos/picture-cache.ts";
import { preparePictures } from "../write/photos/prepare-pictures.ts";
import { sharePictures } from "../write/photos/share-pictures.ts";
import { indexFolder, indexSite } from "../write/search-index.ts";
import { writeBadge } from "../write/share/write-badge.ts";
import { writeShareSheets } from "../write/share/write-share-sheets.ts";
import { writeSiteFiles } from "../write/site-files.ts";
import { swapInSite } from "../write/site-swap.ts";
import { publishVideos } from "../write/videos/publish-videos.ts";
import { checkWithheld } from "../write/withheld-check.ts";
import type { Journal } from "./journal.ts";

export interface SiteOptions {
  /** Holds `site`; made when absent. */
  readonly outFolder: string;
  readonly edition: Edition;
  /** Where the site will stand, when that is not the project's `address`. */
  readonly base?: string;
  readonly progress: (text: string) => void;
  readonly note: (text: string) => void;
  readonly signal?: AbortSignal;
}

export interface BuiltSite {
  readonly folder: string;
  readonly pages: number;
  readonly pictures: number;
  readonly encoded: number;
  /** Photographs that could not be published. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The output is not fit to be seen; the last good site stays. A fault of the program. */
export class UnfitSite extends Error {
  override readonly name = "UnfitSite";
}

/** `out/NAME`, NAME being the journal folder's name. */
export function outFolderOf(journal: Journal, out: string): string {
  return join(resolve(out), basename(journal.folder.absolute));
}

/** Held by whoever writes below `out/NAME`. */
export function lockFile(outFolder: string): string {
  return join(outFolder, ".witness-lock");
}

/** The editions never share a folder: the private one is not to go where the site goes. */
export function siteFolderOf(outFolder: string, edition: Edition): string {
  return join(outFolder, edition === "public" ? "site" : "private-site");
}

/**
 * Builds the site of a journal that has no errors, beside the present one, and swaps it in once
 * it is whole and has passed the checks of the output.
 * @throws MachineProblem for disk, permission or lock; `UnfitSite` when a check of the output
 *   fails.
 */
export async function buildSite(
  journal: Journal,
  analysis: Analysis,
  options: SiteOptions,
): Promise<BuiltSite> {
  const { outFolder, note } = options;
  const folder = siteFolderOf(outFolder, options.edition);
  const fill = (next: string) => fillSite(journal, analysis, options, next);
  const write = () => swapInSite(folder, fill, { note });
  return withLock(lockFile(outFolder), write, note);
}

/**
 * Writes a whole site into a folder that nobody looks at yet, and checks it.
 * @throws As `buildSite` does; what was written by then stays.
 */
export async function fillSite(
  journal: Journal,
  analysis: Analysis,
  options: SiteOptions,
  next: string,
): Promise<BuiltSite> {
  const { edition, base, progress, signal } = options;
  const edited =
    edition === "public"
      ? publicEdition(analysis, journal.findings)
      : privateEdition(analysis, journal.findings);
  const shown = photosOf(edited.analysis.build);
  const photoFolders = {
    photosFolder: join(journal.folder.absolute, "photos"),
    cacheFolder: photoCache(),
    outputFolder: next,
    ...(signal ? { signal } : {}),
  };
  const { pictures, diagnostics, encoded } = await preparePictures({
    ...photoFolders,
    photos: shown,
    progress: (done, total, label) => progress(`photographs ${done} of ${total}: ${label}`),
  });
  signal?.throwIfAborted();
  const recordings = await publishVideos({
    videos: videosOf(edited.analysis.build),
    videosFolder: join(journal.folder.absolute, "videos"),
    outputFolder: next,
    ...(signal ? { signal } : {}),
  });
  const addressed = standingAt(base, analysis);
  const { urls: shares } = await sharePictures({
    ...photoFolders,
    // A shared link has to name its picture with the site's address.
    photos:
      addressed.build.project.address === undefined
        ? []
        : edited.analysis.build.days.flatMap(
            (day) => shareablePhoto(day, (file) => pictures.has(file)) ?? [],
          ),
    progress: (done, total, label) => progress(`share pictures ${done} of ${total}: ${label}`),
  });
  progress("pages");
  const unpublished = [...diagnostics, ...recordings.diagnostics];
  const findings = [...journal.findings, ...unpublished];
  const input = {
    analysis: addressed,
    diagnostics: findings,
    pictures,
    shares,
    videos: recordings.urls,
    edition,
  };
  const path = basePath(input.analysis);
  const site = sitePages(path === undefined ? input : { ...input, base: path });
  await renderSite(site, next);
  await writeTemplates(next, site.templates, {
    cacheFolder: resolve(".witness-cache", "drawings"),
    ...(signal ? { signal } : {}),
  });
  await writeShareSheets(next, site.shareSheets, {
    cacheFolder: resolve(".witness-cache", "drawings"),
    ...(signal ? { signal } : {}),
  });
  await writeReports(next, site.reports, {
    cacheFolder: resolve(".witness-cache", "drawings"),
    ...(signal ? { signal } : {}),
  });
  await writeBadge(next, site.badge);
  for (const feed of [feedOf(site), ...assemblyFeeds(site)]) await writeFeeds(next, feed);
  const address = site.shell.address;
  await writeSiteFiles(next, {
    ...(address === undefined ? {} : { address }),
    pages: sitemapPages(site),
  });
  signal?.throwIfAborted();
  progress("search index and checks of the output");
  // The indexer is a process of its own: the pages are checked while it works. Both have to
  // end before the folder may be taken away.
  const [indexed, checked, withheld] = await Promise.allSettled([
    indexSite(next),
    checkOutput(next, [indexFolder], path),
    checkWithheld(next, withheldTexts(analysis, edited), [indexFolder, "limits"]),
  ]);
  if (indexed.status === "rejected") throw indexed.reason;
  if (checked.status === "rejected") throw checked.reason;
  if (withheld.status === "rejected") throw withheld.reason;
  const { pages } = indexed.value;
  refuseUnfit([...checked.value.problems, ...withheld.value]);
  return {
    folder: siteFolderOf(options.outFolder, edition),
    pages,
    pictures: pictures.size,
    encoded,
    diagnostics: unpublished,
  };
}

/**
 * About how many photographs a build would have to encode: those that the journal names, less
 * the pictures that are in the cache. Exact only while the cache holds nothing else.
 */
export async function photosToEncode({ analysis }: Journal, edition: Edition): Promise<number> {
  if (!analysis) return 0;
  const photos = photosOf(analysis.build).filter(
    (photo) => edition === "private" || !photo.private,
  );
  const named = new Set(photos.map(({ file }) => file)).size;
  return named === 0 ? 0 : named - (await cachedPictures(photoCache()));
}

/** Where encoded photographs are kept between builds. */
function photoCache(): string {
  return resolve(".witness-cache", "photos");
}

// `--base` is said for this one build and wins over the address in project.yaml.
function standingAt(base: string | undefined, analysis: Analysis): Analysis {
  if (base === undefined) return analysis;
  const { build } = analysis;
  return { ...analysis, build: { ...build, project: { ...build.project, address: base } } };
}

// The path below which the site stands on its host, for the one page that cannot be relative.
function basePath({ build: { project } }: Analysis): string | undefined {
  return project.address === undefined ? undefined : new URL(siteAddress(project.address)).pathname;
}

function refuseUnfit(problems: readonly OutputProblem[]): void {
  if (problems.length === 0) return;
  const lines = problems.map(({ file, message }) => `  ${file}: ${message}`);
  throw new UnfitSite(`the site is not fit to be published:\n${lines.join("\n")}`);
}
