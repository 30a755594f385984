// What is mistyped at ten in the evening is answered with what was meant.

import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { describe, expect, test } from "vitest";
import { shop, witness } from "../support/witness.ts";

describe("usage: exit code 2, nothing on the standard output, and a way on", () => {
  test.each([
    [["chek"], "witness: unknown command 'chek'", "did you mean `check`?"],
    [["check", "--jornal", "x"], "witness: unknown option '--jornal'", "did you mean `--journal`?"],
    [
      ["check", "content"],
      "witness: too many arguments for 'check'",
      "everything is said with options, words with blanks in quotes; a journal is named `--journal DIR`",
    ],
    [
      ["check", "--as-of", "2026-02-30"],
      "witness: option '--as-of <date>' argument '2026-02-30' is invalid. Write it as in 2026-03-14; the day has to exist.",
      "options: npm run witness -- check --help",
    ],
    [
      ["build", "--journal", "contnet"],
      "witness: there is no folder `contnet`",
      "did you mean `--journal content`?",
    ],
    [
      ["export", "--journal", "content/days"],
      "witness: `content/days` is not a journal: it has no `project.yaml`",
      "journals here: `--journal content`",
    ],
    [
      ["build", "--base", "journal.example"],
      "witness: option '--base <address>' argument 'journal.example' is invalid. Write it with https://, as in https://journal.example/.",
      "options: npm run witness -- build --help",
    ],
    [
      ["export", "--paper", "a5"],
      "witness: option '--paper <size>' argument 'a5' is invalid. Allowed choices are a4, letter.",
      "options: npm run witness -- export --help",
    ],
  ])("%j", async (args, complaint, help) => {
    const { cwd } = shop();
    const { status, stdout, stderr } = await witness(args, { cwd });
    const lines = stderr.trimEnd().split("\n");
    expect(lines[0]).toBe(complaint);
    expect(lines).toContain(`  = help: ${help}`);
    expect([status, stdout]).toEqual([2, ""]);
    expect(readdirSync(cwd)).toEqual(["content"]);
  });

  test("options that npm kept for itself", async () => {
    const { cwd } = shop();
    const env = { npm_lifecycle_event: "witness", npm_config_strict: "true" };
    const { status, stdout, stderr } = await witness(["check"], { cwd, env });
    expect(stderr).toBe(
      "witness: npm kept `--strict`\n" +
        "  = help: put two dashes before the verb: npm run witness -- check --strict …\n",
    );
    expect([status, stdout]).toEqual([2, ""]);
  });

  test("no verb at all lists them", async () => {
    const { cwd } = shop();
    const { status, stdout, stderr } = await witness([], { cwd });
    for (const verb of ["check", "build", "preview", "evening", "export", "explain", "reckon"]) {
      expect(stderr).toMatch(new RegExp(`^ {2}${verb} `, "m"));
    }
    expect([status, stdout]).toEqual([2, ""]);
  });
});

test("what was asked for is no mistake: help and version exit with 0", async () => {
  const { cwd } = shop();
  const [help, version] = await Promise.all([
    witness(["check", "--help"], { cwd }),
    witness(["--version"], { cwd }),
  ]);
  expect(help.stdout).toContain("--as-of <date>");
  expect(version.stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  expect([help.status, help.stderr, version.status, version.stderr]).toEqual([0, "", 0, ""]);
});

describe("the machine: exit code 3", () => {
  test("another build holds the lock", async () => {
    const { cwd, file } = shop();
    mkdirSync(file("out/content"), { recursive: true });
    const since = new Date().toISOString();
    // This very process: it runs, so the lock is not a dead one.
    const lock = `pid ${process.pid}\nhost ${hostname()}\nsince ${since}\n`;
    writeFileSync(file("out/content/.witness-lock"), lock);
    const { status, stdout, stderr } = await witness(["export"], { cwd });
    expect(stderr).toContain("witness: another build is writing here (process");
    expect(stderr).toContain("  = help: wait until it is done and run the same command again");
    expect([status, stdout]).toEqual([3, ""]);
    expect(readdirSync(file("out/content"))).toEqual([".witness-lock"]);
  });

  test("the place for the output is a file", async () => {
    const { cwd, file } = shop();
    writeFileSync(file("out"), "not a folder\n");
    const { status, stderr } = await witness(["export"], { cwd });
    expect(stderr).toMatch(/^witness: .*out/);
    expect(stderr).not.toContain("fault of the program");
    expect(status).toBe(3);
  });
});

test("a fault of the program is said to be one, with what lies behind it: exit code 70", async () => {
  const { cwd } = shop();
  // A machine whose Node lacks something that the program relies on.
  const env = { NODE_OPTIONS: "--import=data:text/javascript,delete%20Array.prototype.toSorted" };
  const { status, stdout, stderr } = await witness(["check"], { cwd, env });
  expect(stderr).toMatch(
    /^witness: this is a fault of the program, not of the journal\nTypeError: /,
  );
  expect(stderr).toMatch(/\n {4}at .*src\//);
  expect(stderr).toMatch(/\n {2}= help: report it with the lines above/);
  expect([status, stdout]).toEqual([70, ""]);
});

test("a reader that stops reading is no fault", async () => {
  const { cwd } = shop();
  const many = "sessions:\n  - { assembly: tial, who: [adda], hours: one, kind: shp }\n";
  for (let day = 10; day < 29; day++) {
    const date = `2026-02-${day}`;
    writeFileSync(`${cwd}/content/days/${date}.md`, `---\ndate: ${date}\n${many}---\nWords.\n`);
  }
  const { status, stderr } = await witness(["check"], {
    cwd,
    running: (child) => child.stdout?.destroy(),
  });
  expect([status, stderr]).toEqual([1, ""]);
});
