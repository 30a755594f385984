import { expect, test } from "vitest";
import { writeSiteFiles } from "../../src/write/site-files.ts";
import { filesIn, scratchFolder, textOf } from "../support/scratch-folder.ts";

const pages = [
  { url: "", lastmod: "2026-03-14" },
  { url: "2026/03/14/", lastmod: "2026-03-14" },
  { url: "about/?a=1&b=2" },
];

test("without an address there is no sitemap, and robots are told of none", async () => {
  const folder = scratchFolder();
  expect(await writeSiteFiles(folder, { pages })).toEqual(["_headers", ".htaccess", "robots.txt"]);
  expect(filesIn(folder)).toEqual([".htaccess", "_headers", "robots.txt"]);
  expect(textOf(folder, "robots.txt")).toBe("User-agent: *\nAllow: /\n");
});

test("with an address the sitemap lists the pages with the dates of their entries", async () => {
  const folder = scratchFolder();
  await writeSiteFiles(folder, { address: "https://journal.example/build/", pages });
  expect(textOf(folder, "robots.txt")).toContain(
    "Sitemap: https://journal.example/build/sitemap.xml\n",
  );
  const sitemap = textOf(folder, "sitemap.xml") ?? "";
  const rows = [
    ...sitemap.matchAll(/<url><loc>(.*?)<\/loc>(?:<lastmod>(.*?)<\/lastmod>)?<\/url>/g),
  ];
  expect(rows.map(([, loc, lastmod]) => [loc, lastmod])).toEqual([
    ["https://journal.example/build/", "2026-03-14"],
    ["https://journal.example/build/2026/03/14/", "2026-03-14"],
    ["https://journal.example/build/about/?a=1&amp;b=2", undefined],
  ]);
});

test("headers keep what never changes for a year, the search index briefly", async () => {
  const folder = scratchFolder();
  await writeSiteFiles(folder, { pages, unchanging: ["photos", "fonts"] });
  const rules = new Map<string, string[]>();
  let path = "";
  for (const line of (textOf(folder, "_headers") ?? "").split("\n")) {
    if (line.startsWith("/")) {
      path = line;
      rules.set(path, []);
    } else if (line !== "") {
      expect(line).toMatch(/^ {2}[A-Z][A-Za-z-]+: \S/);
      rules.get(path)?.push(line.trim());
    }
  }
  expect([...rules.keys()]).toEqual(["/*", "/photos/*", "/fonts/*", "/pagefind/*"]);
  expect(rules.get("/photos/*")).toEqual(["Cache-Control: public, max-age=31536000, immutable"]);
  expect(rules.get("/pagefind/*")).toEqual(["Cache-Control: public, max-age=300, must-revalidate"]);
  const all = rules.get("/*") ?? [];
  expect(all.some((line) => line.includes("frame-ancestors 'none'"))).toBe(true);
  expect(all).toContain("X-Content-Type-Options: nosniff");
});

test("both files of headers say the same, the second below the site's own path", async () => {
  const folder = scratchFolder();
  await writeSiteFiles(folder, { pages, address: "https://journal.example/a/b/" });
  const headers = (textOf(folder, "_headers") ?? "").split("\n");
  const access = textOf(folder, ".htaccess") ?? "";
  for (const line of headers.filter((each) => each.startsWith("  "))) {
    const [, name = "", value = ""] = /^ {2}([A-Za-z-]+): (.*)$/.exec(line) ?? [];
    expect(access).toContain(`Header set ${name} "${value}"`);
  }
  expect(access).toContain("ErrorDocument 404 /a/b/404.html");
  for (const name of ["photos", "videos", "pagefind"]) expect(access).toContain(`^/a/b/${name}/#`);
});
