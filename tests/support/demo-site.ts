import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import { extname, join, normalize } from "node:path";
import { gzipSync } from "node:zlib";
import { demoBuilt } from "./build-demo.ts";

const root = new URL("../..", import.meta.url).pathname;

/** Where the sample journal's site stands once `demoBuilt` has built it. */
export const demoSite = join(root, "out", "site-demo", "site");

/** Where its exports stand. */
export const demoExports = join(root, "out", "site-demo", "exports");

/** A page of every kind, from the site's root. */
export const pageKinds: Readonly<Record<string, string>> = {
  home: "index.html",
  month: "2026/03/index.html",
  "day with photographs": "2026/03/14/index.html",
  "day with findings": "2026/10/17/index.html",
  "day with an amendment": "2026/06/27/index.html",
  assemblies: "assemblies/index.html",
  assembly: "assemblies/left-wing/index.html",
  step: "steps/ls-01/index.html",
  hours: "hours/index.html",
  readings: "readings/index.html",
  "open items": "open/index.html",
  photographs: "photographs/index.html",
  "photographs of a month": "photographs/2026/03/index.html",
  limits: "limits/index.html",
  story: "story/index.html",
  changes: "changes/index.html",
  materials: "materials/index.html",
  search: "search/index.html",
  record: "record/index.html",
  about: "about/index.html",
  "not found": "404.html",
};

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".svg": "image/svg+xml",
  ".avif": "image/avif",
  ".jpg": "image/jpeg",
  ".woff2": "font/woff2",
  ".json": "application/json",
  ".xml": "application/xml",
};

/**
 * A plain static host, as dumb as they come, with the sample site below `base` such as `/a/b/`.
 * Builds the site first, once for a run of the tests.
 */
export async function hostDemo(base = "/"): Promise<{ address: string; close: () => void }> {
  await demoBuilt();
  if (!existsSync(join(demoSite, "index.html"))) throw new Error("the sample site is not built");
  return hostSite(demoSite, base);
}

/** The same host for any folder. It packs text with gzip, as static hosts do. */
export async function hostSite(
  folder: string,
  base = "/",
): Promise<{ address: string; close: () => void }> {
  const server: Server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const inside = path.startsWith(base) ? normalize(path.slice(base.length)) : "..";
    const file = inside === "." || inside.endsWith("/") ? join(inside, "index.html") : inside;
    const missing = () => response.writeHead(404, { "content-type": "text/plain" }).end("nothing");
    if (file.startsWith("..")) return void missing();
    readFile(join(folder, file)).then((bytes) => {
      const type = types[extname(file)] ?? "application/octet-stream";
      const packed =
        /^text|json|xml/.test(type) &&
        String(request.headers["accept-encoding"]).includes("gzip") &&
        bytes.length > 1000;
      response
        .writeHead(200, {
          "content-type": type,
          ...(packed ? { "content-encoding": "gzip" } : {}),
        })
        .end(packed ? gzipSync(bytes) : bytes);
    }, missing);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const bound = server.address();
  const port = typeof bound === "object" && bound ? bound.port : 0;
  return { address: `http://127.0.0.1:${port}${base}`, close: () => server.close() };
}
