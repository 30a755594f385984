// How much memory and time the book of a long build takes: once with no picture in the cache and
// once with all of them. Prints both; nothing passes or fails here. It needs some 300 kB of disk
// for each photograph.

import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import sharp from "sharp";
import { generatedPhotos, writeGeneratedJournal } from "../support/generated-journal.ts";

const root = new URL("../..", import.meta.url).pathname;
const days = Number(process.argv[2] ?? 1000);
const photosADay = Number(process.argv[3] ?? 3);
const wanted = 600;
// The flags of `npm run witness`, with `tsx` to be found from the working folder as well.
const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  readonly scripts: { readonly witness: string };
};
const flags = scripts.witness
  .split(" ")
  .slice(1, -1)
  .map((flag) => (flag === "tsx" ? import.meta.resolve("tsx") : flag));
const work = mkdtempSync(join(tmpdir(), "witness-bench-book-"));
const journal = join(work, "journal");

try {
  writeGeneratedJournal(journal, days, photosADay);
  await makePhotos();
  for (const cache of ["without a cache", "from the cache"]) {
    const { seconds, megabytes } = exportBook();
    const book = statSync(join(work, "out", "journal", "exports", "book.pdf")).size / 1e6;
    say(
      `${days} days, ${days * photosADay} photographs, ${cache}: ${seconds.toFixed(1)} s, at most ${megabytes.toFixed(0)} MB of memory (wanted: under ${wanted} MB), book of ${book.toFixed(1)} MB`,
    );
  }
} finally {
  rmSync(work, { recursive: true, force: true });
}

/** Different files that are quickly made: a few pictures, each with a number behind its end. */
async function makePhotos(): Promise<void> {
  const pictures = await Promise.all(Array.from({ length: 8 }, (_, index) => picture(index)));
  generatedPhotos(days, photosADay).forEach((name, index) => {
    const file = join(journal, "photos", name);
    mkdirSync(dirname(file), { recursive: true });
    const bytes = pictures[index % pictures.length] ?? Buffer.alloc(0);
    writeFileSync(file, Buffer.concat([bytes, Buffer.from(`${index}`)]));
  });
}

function picture(index: number): Promise<Buffer> {
  const [width, height] = index % 4 === 3 ? [1200, 1600] : [1600, 1200];
  const noise = { type: "gaussian", mean: 90 + index * 12, sigma: 40 } as const;
  return sharp({
    create: { width: width / 4, height: height / 4, channels: 3, background: "#888888", noise },
  })
    .resize(width, height, { kernel: "cubic" })
    .jpeg({ quality: 82 })
    .toBuffer();
}

function exportBook(): { seconds: number; megabytes: number } {
  const start = performance.now();
  // In kilobytes on Linux and macOS alike.
  const telling =
    "data:text/javascript,process.on('exit',()=>process.stderr.write('memory '+process.resourceUsage().maxRSS+'\\n'))";
  const args = [
    ...flags,
    "--import",
    telling,
    join(root, "src", "cli", "main.ts"),
    "export",
    "--journal",
    journal,
    "--out",
    join(work, "out"),
  ];
  // The cache of pictures lies in the working folder.
  const result = spawnSync(process.execPath, args, { cwd: work, encoding: "utf8" });
  const memory = /memory (\d+)/.exec(result.stderr)?.[1];
  if (result.status !== 0 || memory === undefined) {
    throw new Error(`${args.join(" ")}\n${result.stdout}${result.stderr}`);
  }
  return { seconds: (performance.now() - start) / 1000, megabytes: Number(memory) / 1024 };
}

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}
