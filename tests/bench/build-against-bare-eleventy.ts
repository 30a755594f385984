// How long a build takes, as a ratio to bare Eleventy over the same Markdown with one layout, both
// measured in this run, by turns; and as a ratio to bare Eleventy with bare Pagefind over what it
// made, because a build makes the search index as well. Prints the ratios of the medians; nothing
// passes or fails here.

import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { writeGeneratedJournal } from "../support/generated-journal.ts";

const root = new URL("../..", import.meta.url).pathname;
const days = Number(process.argv[2] ?? 2500);
const rounds = Number(process.argv[3] ?? 3);
const work = mkdtempSync(join(tmpdir(), "witness-bench-"));
const journal = join(work, "journal");
const bare = join(work, "bare");

try {
  writeGeneratedJournal(journal, days);
  mkdirSync(bare, { recursive: true });
  cpSync(join(journal, "days"), join(bare, "days"), { recursive: true });
  mkdirSync(join(bare, "_includes"));
  writeFileSync(
    join(bare, "_includes", "page.liquid"),
    '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ title }}</title></head><body><main><h1>{{ title }}</h1>{{ content }}</main></body></html>\n',
  );
  writeFileSync(
    join(bare, "eleventy.config.mjs"),
    'export default (config) => { config.addGlobalData("layout", "page.liquid"); config.setQuietMode(true); };\n',
  );

  const times = { ours: [] as number[], bare: [] as number[], index: [] as number[] };
  for (let round = 0; round < rounds; round++) {
    times.bare.push(timeOf("bare Eleventy", buildBare));
    times.index.push(timeOf("bare Pagefind", indexBare));
    times.ours.push(timeOf("witness build", buildOurs));
  }
  const [ours, pages, index] = [median(times.ours), median(times.bare), median(times.index)];
  say(`${days} days without pictures, median of ${rounds}: witness build ${ours.toFixed(2)} s`);
  say(
    `  bare Eleventy ${pages.toFixed(2)} s, ratio ${(ours / pages).toFixed(2)} (wanted: at most 2)`,
  );
  say(
    `  bare Eleventy and bare Pagefind ${(pages + index).toFixed(2)} s, ratio ${(ours / (pages + index)).toFixed(2)}`,
  );
} finally {
  rmSync(work, { recursive: true, force: true });
}

function buildBare(): void {
  rmSync(join(work, "bare-out"), { recursive: true, force: true });
  run(
    [
      join(root, "node_modules", "@11ty", "eleventy", "cmd.cjs"),
      "--config=eleventy.config.mjs",
      "--input=.",
      "--output=../bare-out",
    ],
    bare,
  );
}

function indexBare(): void {
  run(
    [join(root, "node_modules", "pagefind", "lib", "runner", "bin.cjs"), "--site", "../bare-out"],
    bare,
  );
}

function buildOurs(): void {
  rmSync(join(work, "out"), { recursive: true, force: true });
  run(
    [
      "--disable-proto=delete",
      "--max-semi-space-size=64",
      "--import",
      "tsx",
      "src/cli/main.ts",
      "build",
      "--journal",
      journal,
      "--out",
      join(work, "out"),
    ],
    root,
  );
}

function run(args: readonly string[], cwd: string): void {
  const result = spawnSync(process.execPath, args, { cwd, encoding: "utf8" });
  if (result.status !== 0) throw new Error(`${args.join(" ")}\n${result.stdout}${result.stderr}`);
}

function timeOf(what: string, build: () => void): number {
  const start = performance.now();
  build();
  const seconds = (performance.now() - start) / 1000;
  say(`${what}: ${seconds.toFixed(2)} s`);
  return seconds;
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}
