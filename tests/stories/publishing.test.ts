// The ready-made files in `content/publish`, and what they publish as a host would serve it.

import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join, normalize } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { linkedAddresses } from "../support/linked-addresses.ts";
import { projectFolder, type Witnessed, witness } from "../support/witness.ts";

const cwd = mkdtempSync(join(tmpdir(), "witness-publishing-"));
afterAll(() => rmSync(cwd, { recursive: true, force: true }));

const read = (name: string) =>
  parse(readFileSync(join(projectFolder, "content", "publish", name), "utf8"));

/** The lines of a job that run this program, without the package manager before them. */
function verbs(lines: readonly string[]): string[] {
  return lines.flatMap((line) => /^npm run -s witness -- (.*)$/.exec(line)?.[1] ?? []);
}

const job = read("pages-job.yml").pages as { script: string[]; artifacts: { paths: string[] } };
const steps = read("pages-workflow.yml").jobs.publish.steps as {
  run?: string;
  with?: Record<string, string>;
}[];

const ran: Witnessed[] = [];
beforeAll(async () => {
  cpSync(join(projectFolder, "content"), join(cwd, "content"), { recursive: true });
  for (const line of verbs(job.script)) {
    const args = line.replace(/"\$CI_PAGES_URL"/, "https://journal.example/a/b").split(" ");
    ran.push(await witness(args, { cwd, longest: 300_000 }));
  }
}, 600_000);

test("the job checks, builds, and publishes what was built", () => {
  expect(ran.map(({ status }) => status)).toEqual([0, 0]);
  expect(job.script.at(-1)).toBe("mv out/content/site public");
  expect(job.artifacts.paths).toEqual(["public"]);
  expect(existsSync(join(cwd, "out/content/site/index.html"))).toBe(true);
});

test("the workflow does the same, step by step", () => {
  const lines = steps.flatMap(({ run }) => run ?? []);
  const said = verbs(lines).map((line) => line.replace(/"\$.*"/, '"…"'));
  expect(said).toEqual(verbs(job.script).map((line) => line.replace(/"\$.*"/, '"…"')));
  expect(steps.flatMap((step) => step.with?.path ?? [])).toEqual([
    ".witness-cache",
    "out/content/site",
  ]);
});

const site = join(cwd, "out/content/site");

describe.each(["/", "/a/b/"])("served at %s", (base) => {
  test("every address that a page links to or loads is there", async () => {
    const host = createServer((request, response) => {
      const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
      const inside = path.startsWith(base) ? normalize(path.slice(base.length) || ".") : "..";
      const file = inside === "." || inside.endsWith("/") ? join(inside, "index.html") : inside;
      readFile(join(site, file)).then(
        (bytes) => response.end(file.startsWith("..") ? "" : bytes),
        () => response.writeHead(404).end(),
      );
    });
    await new Promise<void>((ready) => host.listen(0, "127.0.0.1", ready));
    const bound = host.address();
    const root = `http://127.0.0.1:${typeof bound === "object" && bound ? bound.port : 0}${base}`;
    const seen = await followed(root, async (address) => {
      const answer = await fetch(address);
      return answer.ok ? answer.text() : undefined;
    });
    host.close();
    expect(seen.missing).toEqual([]);
    expect(seen.pages).toBeGreaterThan(20);
  });
});

test("opened as files, every address is there too", async () => {
  const root = `${pathToFileURL(site).href}/`;
  const seen = await followed(`${root}index.html`, async (address) => {
    const file = fileURLToPath(address.replace(/[#?].*$/, ""));
    return existsSync(file) && !file.endsWith("/") ? readFileSync(file, "utf8") : undefined;
  });
  expect(seen.missing).toEqual([]);
  expect(seen.pages).toBeGreaterThan(20);
});

/** Follows every link of a site from one address on. */
async function followed(
  start: string,
  open: (address: string) => Promise<string | undefined>,
): Promise<{ pages: number; missing: string[] }> {
  const within = start.replace(/index\.html$/, "");
  const queue = [start];
  const known = new Set(queue);
  const missing: string[] = [];
  let pages = 0;
  for (let address = queue.shift(); address !== undefined; address = queue.shift()) {
    const text = await open(address);
    if (text === undefined) {
      missing.push(address);
      continue;
    }
    if (!/(?:\/|\.html)$/.test(address)) continue;
    pages += 1;
    for (const linked of linkedAddresses(text)) {
      const to = new URL(linked, address).href.replace(/#.*$/, "");
      if (!to.startsWith(within) || known.has(to)) {
        if (!to.startsWith(within) && !/^https?:\/\/(?!127)/.test(to)) missing.push(to);
        continue;
      }
      known.add(to);
      queue.push(to);
    }
  }
  return { pages, missing };
}
