// Whole journals from `input/` to what comes out, compared with `expected/` file by file.
//
// `UPDATE=1 npm run vitest -- tests/sites` writes the expected files anew, but never in CI. What
// differs is kept beside the old one as `-changed`; read it before you take it over.

import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, test } from "vitest";
import { expectGolden } from "../support/golden.ts";
import { pageText } from "../support/page-text.ts";
import { filesIn } from "../support/scratch-folder.ts";
import { witness } from "../support/witness.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
const names = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** Site and exports of a journal, made in a folder of their own with a clock of that zone. */
async function made(name: string, zone: string): Promise<string> {
  const cwd = mkdtempSync(join(tmpdir(), "witness-site-"));
  folders.push(cwd);
  cpSync(join(here, name, "input"), join(cwd, name), { recursive: true });
  for (const verb of ["build", "export"]) {
    const { status, stdout, stderr } = await witness([verb, "--journal", name], {
      cwd,
      env: { TZ: zone },
    });
    expect(`${stderr}${status === 0 ? "" : stdout}`).toBe("");
  }
  return join(cwd, "out", name);
}

// What the golden files are compared with is also what the other zones are compared with.
const inUtc = new Map<string, Promise<string>>();
function madeInUtc(name: string): Promise<string> {
  const before = inUtc.get(name) ?? made(name, "UTC");
  inUtc.set(name, before);
  return before;
}

function textOf(folder: string, name: string): string {
  return readFileSync(join(folder, name), "utf8");
}

// Each is several runs of the program; on a busy machine they take their time.
const patience = 300_000;

describe.each(names)("%s", { timeout: patience }, (name) => {
  const expected = join(here, name, "expected");

  test("comes out as expected", async () => {
    const checking = witness(["check", "--journal", "input", "--json"], { cwd: join(here, name) });
    const out = await madeInUtc(name);
    expectGolden(join(expected, "check.json"), (await checking).stdout);
    expectGolden(join(expected, "exports", "hours.csv"), textOf(out, "exports/hours.csv"));
    expectGolden(join(expected, "exports", "readings.csv"), textOf(out, "exports/readings.csv"));
    const packet = "exports/alteration-packet.txt";
    if (existsSync(join(out, packet))) expectGolden(join(expected, packet), textOf(out, packet));
    expect(existsSync(join(expected, packet))).toBe(existsSync(join(out, packet)));
    const files = filesIn(join(out, "site"));
    const pages = files.filter((file) => file.endsWith(".html") && !file.startsWith("limits/"));
    expectGolden(join(expected, "site", "pages.txt"), `${pages.join("\n")}\n`);
    const [day = ""] = pages.filter((file) => /^\d{4}\/\d\d\/\d\d\/index\.html$/.test(file));
    const text = pageText(textOf(out, `site/${day}`));
    expectGolden(join(expected, "site", day.replace(/html$/, "txt")), `${text}\n`);
    expectGolden(join(expected, "site", "feed.xml"), textOf(out, "site/feed.xml"));
  });
});

describe("the clock of the machine", { timeout: patience }, () => {
  const zones = ["America/Los_Angeles", "Asia/Tokyo", "Pacific/Kiritimati"];

  test("does not change a byte of site or exports", async () => {
    const [name = ""] = names;
    const reference = digests(await madeInUtc(name));
    expect(Object.keys(reference).length).toBeGreaterThan(40);
    for (const zone of zones) {
      expect([zone, digests(await made(name, zone))]).toEqual([zone, reference]);
    }
  });
});

function digests(folder: string): Record<string, string> {
  return Object.fromEntries(
    filesIn(folder).map((name) => [
      name,
      createHash("sha256")
        .update(readFileSync(join(folder, name)))
        .digest("hex"),
    ]),
  );
}
