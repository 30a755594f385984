// A site is built, and stays when the next one cannot be.

import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filesIn } from "../support/scratch-folder.ts";
import { shop, witness } from "../support/witness.ts";

const march14 = `---
date: 2026-03-14
title: Spar drilled
sessions:
  - { assembly: spar, step: W-1, who: [ada], hours: "1:15", kind: fabricate, stage: drilled }
---
Two rows of holes.
`;

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

test("a build that fails leaves the last good site as it was", async () => {
  const { cwd, file } = shop({ "days/2026/2026-03-14.md": march14 });
  const good = await witness(["build"], { cwd });
  expect(good.stderr).toBe("");
  expect(good.status).toBe(0);
  expect(good.stdout).toMatch(
    /\nsite: .*out\/content\/site \(\d+ pages, 0 photographs, 0 encoded now\)\n$/,
  );
  const site = file("out/content/site");
  const before = digests(site);
  expect(Object.keys(before)).toEqual(
    expect.arrayContaining(["index.html", "2026/03/14/index.html", "feed.xml"]),
  );

  const entry = file("content/days/2026/2026-03-14.md");
  writeFileSync(entry, march14.replace("assembly: spar", "assembly: sparr"));
  const failed = await witness(["build"], { cwd });
  expect(failed.stdout).toContain("content/days/2026/2026-03-14.md:5:17: error[unknown-name]");
  expect(failed.stderr).toBe(
    "\n1 error: nothing was published, the last good site is still in place\n",
  );
  expect(failed.status).toBe(1);
  expect(digests(site)).toEqual(before);
  expect(readdirSync(file("out/content"))).toEqual(["site"]);

  // What is exported has to be believed too.
  const refused = await witness(["export"], { cwd });
  expect(refused.status).toBe(1);
  expect(refused.stderr).toContain("1 error: nothing was exported");
  expect(existsSync(file("out/content/exports"))).toBe(false);

  rmSync(entry);
  const empty = await witness(["check"], { cwd });
  expect(empty.status).toBe(0);
});

test("Ctrl-C in the middle: exit code 130, the last site untouched, nothing left lying about", async () => {
  const { cwd, file } = shop({ "days/2026/2026-03-14.md": march14 });
  const lock = file("out/content/.witness-lock");
  const stopped = await witness(["build"], {
    cwd,
    running: (child) => {
      // Once: a second Ctrl-C would end the process at once.
      const timer = setInterval(() => {
        if (!existsSync(lock)) return;
        clearInterval(timer);
        child.kill("SIGINT");
      }, 5);
      child.on("close", () => clearInterval(timer));
    },
  });
  expect(stopped.status).toBe(130);
  expect(stopped.stdout).toBe("");
  expect(existsSync(file("out/content/site"))).toBe(false);
  expect(existsSync(lock)).toBe(false);

  // And the next build is none the worse for it.
  const next = await witness(["build"], { cwd });
  expect([next.status, next.stderr]).toEqual([0, ""]);
  expect(readdirSync(file("out/content"))).toEqual(["site"]);
});

test("an address in a sub-path is said once, and the page for wrong addresses starts there", async () => {
  const { cwd, file } = shop({ "days/2026/2026-03-14.md": march14 });
  const built = await witness(["build", "--base", "https://journal.example/a/b/"], { cwd });
  expect(built.status).toBe(0);
  const missing = readFileSync(file("out/content/site/404.html"), "utf8");
  expect(missing).toContain('href="/a/b/assets/sheet.css"');
  const feed = readFileSync(file("out/content/site/feed.xml"), "utf8");
  expect(feed).toContain("https://journal.example/a/b/2026/03/14/");
});
