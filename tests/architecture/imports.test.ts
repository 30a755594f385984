// The table of who may import whom, as in DEVELOPERS.md. Every import of every file is read.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, test } from "vitest";

const root = new URL("../..", import.meta.url).pathname;

/** Folders each folder may import, and packages it may take from outside. */
const table: Record<string, { folders: readonly string[]; packages: RegExp }> = {
  "src/model": { folders: ["src/model"], packages: /^fraction\.js$/ },
  "src/read": {
    folders: ["src/read", "src/model"],
    packages: /^(fraction\.js|yaml|luxon|csv-parse\/sync)$/,
  },
  "src/compute": { folders: ["src/compute", "src/model"], packages: /^fraction\.js$/ },
  "src/present": {
    folders: ["src/present", "src/compute", "src/model"],
    packages: /^(fraction\.js|markdown-it|d3-scale)$/,
  },
  "src/write": {
    folders: ["src/write", "src/present", "src/compute", "src/model"],
    packages:
      /^(node:(?!fs|child_process|net|http)[a-z0-9/_]+|yaml|@11ty\/eleventy|preact.*|tsx\/esm\/api|sharp|exifreader|pagefind|feedsmith|sitemap|pdfkit|fontkit|csv-stringify.*)$/,
  },
  "src/cli": {
    folders: ["src/cli", "src/write", "src/present", "src/compute", "src/read", "src/model"],
    packages: /^(node:.+|commander|@clack\/prompts|picocolors|chokidar)$/,
  },
  layouts: {
    folders: ["layouts", "src/present"],
    packages: /^(preact|preact\/.+|preact-render-to-string)$/,
  },
};

/** The few files that touch the disk, where their folder's table does not let them. */
const diskFiles = ["src/read/files.ts", "src/write/output.ts", "src/write/photos/original.ts"];

/** The one file of reading that makes digests. */
const digestFile = { file: "src/read/digest.ts", package: "node:crypto" };

interface Import {
  readonly from: string;
  readonly specifier: string;
  readonly typeOnly: boolean;
}

const files = Object.keys(table).flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `${folder}/${name}`)
    // A developer's script, run by hand to make the font files anew.
    .filter((name) => !name.startsWith("layouts/fonts/")),
);

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), "utf8");
  const statements = text.matchAll(
    /^\s*(import|export)\s+(type\s)?(?:[^"';]*?\sfrom\s+)?"([^"]+)"|\bimport\(\s*"([^"]+)"/gm,
  );
  return [...statements].map((found) => ({
    from: file,
    specifier: found[3] ?? found[4] ?? "",
    typeOnly: found[2] !== undefined,
  }));
}

function folderOf(file: string): string {
  return Object.keys(table).find((folder) => file.startsWith(`${folder}/`)) ?? dirname(file);
}

const imports = files.flatMap(importsOf);

test("the imports of the program are found", () => {
  expect(files.length).toBeGreaterThan(100);
  expect(imports.length).toBeGreaterThan(300);
});

describe.each(Object.entries(table))("%s", (folder, allowed) => {
  const own = imports.filter(({ from }) => folderOf(from) === folder);

  test("imports only the folders it may", () => {
    const wrong = own
      .filter(({ specifier }) => specifier.startsWith("."))
      .map(({ from, specifier }) => ({
        from,
        target: folderOf(relative(root, join(root, dirname(from), specifier))),
      }))
      .filter(({ target }) => !allowed.folders.includes(target));
    expect(wrong).toEqual([]);
  });

  test("takes only the packages it may", () => {
    const wrong = own
      .filter(({ specifier }) => !specifier.startsWith("."))
      .filter(({ from }) => !diskFiles.includes(from))
      .filter(({ from, specifier }) => from !== digestFile.file || specifier !== digestFile.package)
      .filter(({ specifier }) => !allowed.packages.test(specifier));
    expect(wrong).toEqual([]);
  });
});

test("local imports name the file with its ending", () => {
  const bare = imports.filter(({ specifier }) => /^\.{1,2}\/.*(?<!\.tsx?|\.json)$/.test(specifier));
  expect(bare).toEqual([]);
});

test("reading and computing have no clock and no environment", () => {
  const forbidden =
    /\bnew Date\(\)|\bDate\.now\(|\bprocess\.|\bMath\.random\(|\bDateTime\.(now|local)\(/;
  const wrong = files
    .filter((file) => /^src\/(model|read|compute|present)\//.test(file))
    .filter((file) => forbidden.test(readFileSync(join(root, file), "utf8")));
  expect(wrong).toEqual([]);
});

test("no folder or file is a drawer for the rest", () => {
  const drawers = files.filter((file) =>
    /(^|[/-])(utils?|helpers?|common|managers?|services?|misc)([/.-]|$)/.test(
      // These two are named for what the shop calls them.
      file.replace(/common-practice|service-manual/, ""),
    ),
  );
  expect(drawers).toEqual([]);
});

test("file names are kebab-case", () => {
  const wrong = files.filter(
    (file) => !/^[a-z0-9-]+(\.11ty|\.d)?\.tsx?$/.test(file.split("/").at(-1) ?? ""),
  );
  expect(wrong).toEqual([]);
});
