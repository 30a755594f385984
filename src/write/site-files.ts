import path from "node:path";
import { SitemapStream, streamToPromise } from "sitemap";
import type { CalendarDate } from "../model/calendar.ts";
import { writeFileWhole } from "./output.ts";

/** A page as the sitemap lists it. */
export interface SitemapPage {
  /** From the site's root, without a leading slash: `2026/03/14/`; `""` is the first page. */
  readonly url: string;
  /** From the entry, never from the build; absent where no day stands behind the page. */
  readonly lastmod?: CalendarDate;
}

/** What `writeSiteFiles` says about the site. */
export interface SiteFilesOptions {
  /** Where the site stands, with its closing slash; without it there is no sitemap. */
  readonly address?: string;
  /** Published pages only: no draft, no redirect, no error page. */
  readonly pages: readonly SitemapPage[];
  /** Folders whose file names are made from their content, so that they never change. */
  readonly unchanging?: readonly string[];
}

/**
 * Writes the files that stand at a site's root for hosts and robots: `_headers`, `.htaccess`,
 * `robots.txt` and, when the address is known, `sitemap.xml`. A host reads the one it knows.
 * @returns The names written.
 * @throws MachineProblem when the site cannot be written.
 */
export async function writeSiteFiles(folder: string, options: SiteFilesOptions): Promise<string[]> {
  const { address, pages, unchanging = ["photos", "videos"] } = options;
  const files = new Map([
    ["_headers", headersText(unchanging)],
    [".htaccess", accessText(unchanging, address)],
    ["robots.txt", robotsText(address)],
  ]);
  if (address !== undefined) files.set("sitemap.xml", await sitemapText(address, pages));
  for (const [name, text] of files) await writeFileWhole(path.join(folder, name), text);
  return [...files.keys()];
}

/**
 * Headers for hosts that read a `_headers` file. Each page states its own policy on what may be
 * loaded; the header adds what a page cannot say for itself. It names no sources: header and
 * page both apply, and the search page needs more than the others.
 */
export function headersText(unchanging: readonly string[]): string {
  return [
    "/*",
    ...securityHeaders.map(([name, value]) => `  ${name}: ${value}`),
    ...unchanging.flatMap((name) => [`/${name}/*`, `  Cache-Control: ${forever}`]),
    // Index and pages belong together; an old index beside new pages finds nothing.
    "/pagefind/*",
    `  Cache-Control: ${shortly}`,
    "",
  ].join("\n");
}

const securityHeaders = [
  ["Content-Security-Policy", "frame-ancestors 'none'; base-uri 'none'; form-action 'none'"],
  ["X-Frame-Options", "DENY"],
  ["X-Content-Type-Options", "nosniff"],
  ["Referrer-Policy", "strict-origin-when-cross-origin"],
  ["Permissions-Policy", "camera=(), geolocation=(), microphone=()"],
  ["Cross-Origin-Opener-Policy", "same-origin"],
] as const;
const forever = "public, max-age=31536000, immutable";
const shortly = "public, max-age=300, must-revalidate";

/**
 * The same for hosts that read a `.htaccess` file. Only what a host lets such files say as soon
 * as it reads them at all (`FileInfo`): anything else would stop every page.
 */
export function accessText(unchanging: readonly string[], address: string | undefined): string {
  const base = address === undefined ? "/" : new URL(address).pathname;
  const cache = (pattern: string, value: string) => [
    `  <If "%{REQUEST_URI} =~ m#^${pattern}#">`,
    `    Header set Cache-Control "${value}"`,
    "  </If>",
  ];
  return [
    `ErrorDocument 404 ${base}404.html`,
    "AddType image/avif .avif",
    "<IfModule mod_headers.c>",
    ...securityHeaders.map(([name, value]) => `  Header set ${name} "${value}"`),
    ...unchanging.flatMap((name) => cache(`${base}${name}/`, forever)),
    ...cache(`${base}pagefind/`, shortly),
    "</IfModule>",
    "",
  ].join("\n");
}

/** Everything may be read; the sitemap is named when there is one. */
export function robotsText(address: string | undefined): string {
  const sitemap = address === undefined ? [] : [`Sitemap: ${new URL("sitemap.xml", address).href}`];
  return ["User-agent: *", "Allow: /", ...sitemap, ""].join("\n");
}

async function sitemapText(address: string, pages: readonly SitemapPage[]): Promise<string> {
  const stream = new SitemapStream({
    lastmodDateOnly: true,
    xmlns: { news: false, xhtml: false, image: false, video: false },
  });
  const whole = streamToPromise(stream);
  for (const { url, lastmod } of pages) {
    stream.write({
      url: new URL(url, address).href,
      ...(lastmod === undefined ? {} : { lastmod }),
    });
  }
  stream.end();
  return (await whole).toString("utf8");
}
