import { type ChildProcess, fork } from "node:child_process";
import { mkdir, readdir, readFile, rm, rmdir, writeFile } from "node:fs/promises";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ExifReader from "exifreader";
import { parse } from "yaml";
import { type Entry, ListFault, readList } from "./list.ts";
import { mark } from "./metadata.ts";

// Draws the demo's photographs: `npm run pictures`, `-- --all` to draw every
// one again, `-- --only FILE` for one.

const folder = fileURLToPath(new URL("..", import.meta.url));
const photos = join(folder, "photos");
const atOnce = 2;

process.exitCode = await main(process.argv.slice(2));

async function main(words: readonly string[]): Promise<number> {
  const all = words.includes("--all");
  const only = words.includes("--only") ? words[words.indexOf("--only") + 1] : undefined;
  const unknown = words.find(
    (word, i) => !["--all", "--only"].includes(word) && words[i - 1] !== "--only",
  );
  if (unknown !== undefined || (words.includes("--only") && only === undefined)) {
    process.stderr.write(
      `unknown argument ${unknown ?? "--only without a file"}; there are --all and --only FILE\n`,
    );
    return 2;
  }
  try {
    const entries = readList(await readFile(join(folder, "pictures.yaml"), "utf8"));
    const zone = zoneOf(await readFile(join(folder, "project.yaml"), "utf8"));
    if (only !== undefined && !entries.some(({ file }) => file === only)) {
      throw new ListFault(`${only} is not in the list`);
    }
    const wanted: Entry[] = [];
    for (const entry of entries) {
      if (only === undefined ? all || !(await isDrawn(entry)) : entry.file === only)
        wanted.push(entry);
    }
    const failed = await drawAll(wanted, zone);
    if (only === undefined) await removeStrays(new Set(entries.map(({ file }) => file)));
    process.stderr.write(
      `${wanted.length - failed} drawn, ${entries.length - wanted.length} as they were\n`,
    );
    return failed > 0 ? 1 : 0;
  } catch (fault) {
    if (!(fault instanceof ListFault)) throw fault;
    process.stderr.write(`pictures.yaml: ${fault.message}\n`);
    return 1;
  }
}

function zoneOf(text: string): string {
  const project: unknown = parse(text);
  const zone =
    typeof project === "object" && project !== null && "zone" in project ? project.zone : undefined;
  if (typeof zone !== "string") throw new ListFault("project.yaml names no zone");
  return zone;
}

/** True when the picture is there and was drawn from this very entry. */
async function isDrawn(entry: Entry): Promise<boolean> {
  try {
    const tags = ExifReader.load(await readFile(join(photos, entry.file)));
    return tags.Software?.description === mark(entry);
  } catch {
    // Missing, or not a picture: either way it has to be drawn.
    return false;
  }
}

async function drawAll(entries: readonly Entry[], zone: string): Promise<number> {
  let next = 0;
  let done = 0;
  let failed = 0;
  const lane = async () => {
    const worker = fork(fileURLToPath(new URL("./drawing-process.ts", import.meta.url)), {
      execArgv: process.execArgv,
      serialization: "advanced",
    });
    try {
      for (let entry = entries[next++]; entry; entry = entries[next++]) {
        const answer = await ask(worker, { entry, zone });
        done++;
        if ("bytes" in answer) {
          const path = join(photos, entry.file);
          await mkdir(dirname(path), { recursive: true });
          await writeFile(path, answer.bytes);
          process.stderr.write(
            `${done}/${entries.length} ${entry.file} ${Math.round(answer.bytes.length / 1000)} kB\n`,
          );
        } else {
          failed++;
          process.stderr.write(`${done}/${entries.length} ${answer.fault}\n`);
        }
      }
    } finally {
      worker.disconnect();
    }
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, entries.length) }, lane));
  return failed;
}

type Answer = { readonly bytes: Uint8Array } | { readonly fault: string };

function ask(
  worker: ChildProcess,
  question: { readonly entry: Entry; readonly zone: string },
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const settle = (answer: unknown) => {
      worker.off("exit", fail);
      resolve(answer as Answer);
    };
    const fail = (code: number | null) => {
      worker.off("message", settle);
      reject(new Error(`the drawing process ended with ${code}`));
    };
    worker.once("message", settle);
    worker.once("exit", fail);
    worker.send(question);
  });
}

/** Takes away pictures that the list no longer names, and folders left empty. */
async function removeStrays(named: ReadonlySet<string>): Promise<void> {
  const found = await readdir(photos, { recursive: true, withFileTypes: true });
  for (const item of found) {
    const path = join(item.parentPath, item.name);
    const file = relative(photos, path).split(sep).join("/");
    if (item.isFile() && file.endsWith(".jpg") && !named.has(file)) {
      await rm(path);
      process.stderr.write(`${file} is no longer in the list: removed\n`);
    }
  }
  for (const item of found) {
    const path = join(item.parentPath, item.name);
    if (item.isDirectory() && (await readdir(path)).length === 0) await rmdir(path);
  }
}
