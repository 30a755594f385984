// What an entry must not be able to do. Each case is a row of measured faults of site generators
// that hand raw entries to their template engine, or a published weakness; the source stands
// beside it.

import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { journalFolder } from "../../src/read/files.ts";
import { readBuild } from "../../src/read/read-build.ts";
import {
  entry,
  marchFile,
  places,
  readSmall,
  temporaryJournal,
} from "../support/temporary-journal.ts";

const sessions = 'sessions:\n  - { assembly: wing, who: [ada], hours: "1:00", kind: assemble }\n';

describe("keys of JavaScript's prototypes", () => {
  // js-yaml safety notes; CVE-2025-64718; eleventy-utils issue 8.
  test.each([
    ["at the top", "__proto__: { polluted: yes }\n", `${marchFile}:3:1 forbidden-key`],
    ["one level down", "conditions: { constructor: 1 }\n", `${marchFile}:3:15 forbidden-key`],
    [
      "three levels down",
      "sessions:\n  - roles: { jon: { prototype: 1 } }\n",
      `${marchFile}:4:21 forbidden-key`,
    ],
  ])("are refused %s", (_where, lines, place) => {
    const { diagnostics } = readSmall({ [marchFile]: entry(lines) });
    expect(places(diagnostics)).toEqual([place]);
    expect("polluted" in {}).toBe(false);
  });
});

describe("front matter in another language", () => {
  // gray-matter issue 131: `---js` runs as code.
  test.each(["---js", "---json", "---coffee", "--- javascript"])("%s is refused", (fence) => {
    const { diagnostics } = readSmall({
      [marchFile]: `${fence}\n{ date: (globalThis.ran = true) }\n---\nText.\n`,
    });
    expect(places(diagnostics)).toEqual([`${marchFile}:1:1 code-front-matter`]);
    expect("ran" in globalThis).toBe(false);
  });

  test("an entry without a fence, and one whose fence is never closed, are named", () => {
    const { diagnostics } = readSmall({
      [marchFile]: "date: 2026-03-14\n",
      "days/2026-03-15.md": "---\ndate: 2026-03-15\n",
    });
    expect(places(diagnostics)).toEqual([
      `${marchFile}:1:1 front-matter-missing`,
      "days/2026-03-15.md:1:1 front-matter-missing",
    ]);
  });
});

describe("structures made to choke a parser", () => {
  test("an alias bomb is refused at its first anchor and its first alias", () => {
    const bomb = 'a: &a ["x","x"]\nb: &b [*a,*a]\nc: &c [*b,*b]\n';
    const { diagnostics } = readSmall({ [marchFile]: entry(bomb) });
    expect(diagnostics.length).toBeGreaterThan(0);
    expect(diagnostics.every(({ code }) => code === "alias-or-anchor")).toBe(true);
  });

  // CVE-2026-33532: the second too-deep document in one run aborts the process.
  test("three entries of 5,000 brackets are three problems in one run", () => {
    const deep = `next: ${"[".repeat(5000)}${"]".repeat(5000)}`;
    const file = (day: string) => `---\ndate: ${day}\n${deep}\n---\nText.\n`;
    const { diagnostics } = readSmall({
      "days/2026-03-14.md": file("2026-03-14"),
      "days/2026-03-15.md": file("2026-03-15"),
      "days/2026-03-16.md": file("2026-03-16"),
    });
    expect(places(diagnostics)).toEqual(
      ["14", "15", "16"].map((day) => `days/2026-03-${day}.md:3:27 front-matter-too-large`),
    );
  });

  test.each([
    ["65 KiB of text", `title: ${"x".repeat(66_000)}`],
    ["2,001 lines", "# a\n".repeat(2_001)],
    ["an indent of 41 columns", `next:\n${" ".repeat(41)}- x`],
    ["21 list marks on one line", `next:\n  ${"- ".repeat(21)}x`],
  ])("%s are refused before the parser runs", (_what, lines) => {
    const { diagnostics } = readSmall({ [marchFile]: entry(lines) });
    expect(diagnostics.map(({ code }) => code)).toEqual(["front-matter-too-large"]);
  });

  test("the largest that is allowed is read", () => {
    const lines = `next:\n${" ".repeat(40)}- ${"[".repeat(20)}x${"]".repeat(20)}`;
    const { diagnostics } = readSmall({ [marchFile]: entry(lines) });
    expect(diagnostics.map(({ code }) => code)).toEqual(["wrong-shape"]);
  });
});

describe("paths that leave the journal", () => {
  test.each([
    "../secret.jpg",
    "a/../../secret.jpg",
    "%2e%2e/secret.jpg",
    "/etc/passwd",
    "C:/secret.jpg",
    "..\\\\secret.jpg",
    "a//b.jpg",
    "./a.jpg",
    "~/a.jpg",
  ])("photograph `%s` is refused", (file) => {
    const photos = `photos:\n  - { file: "${file}", caption: A picture }\n`;
    const { diagnostics } = readSmall({ [marchFile]: entry(photos) });
    expect(places(diagnostics)).toEqual([`${marchFile}:4:13 path-leaves-journal`]);
  });

  test("a NUL in a photograph's name is refused", () => {
    const photos = 'photos:\n  - { file: "a\\0.jpg", caption: A picture }\n';
    const { diagnostics } = readSmall({ [marchFile]: entry(photos) });
    expect(diagnostics.map(({ code }) => code)).toEqual(["path-leaves-journal"]);
  });

  // CVE-2018-17567 class (jekyll issue 3070): a link beside an entry publishes its target.
  test("links to files, folders, themselves and nothing are each named, and never followed", () => {
    const { path, remove } = temporaryJournal({
      [marchFile]: entry("photos:\n  - { file: out.jpg, caption: A picture }\n"),
      "photos/own.jpg": "x",
    });
    try {
      const outside = join(dirname(path), "outside");
      mkdirSync(outside);
      writeFileSync(join(outside, "secret.jpg"), "secret");
      writeFileSync(join(outside, "2026-03-15.md"), entry(""));
      symlinkSync(join(outside, "secret.jpg"), join(path, "photos", "out.jpg"));
      symlinkSync(outside, join(path, "photos", "folder"));
      symlinkSync(join(path, "photos"), join(path, "photos", "loop"));
      symlinkSync(join(path, "nothing"), join(path, "photos", "dangling.jpg"));
      symlinkSync(join(path, "photos", "own.jpg"), join(path, "photos", "inside.jpg"));
      symlinkSync(join(outside, "2026-03-15.md"), join(path, "days", "2026-03-15.md"));
      const folder = journalFolder(path);
      const result = folder && readBuild(folder);
      expect(places(result?.diagnostics ?? [])).toEqual([
        `${marchFile}:4:13 path-leaves-journal`,
        "days/2026-03-15.md:1:1 path-leaves-journal",
        "photos/dangling.jpg:1:1 path-leaves-journal",
        "photos/folder:1:1 path-leaves-journal",
        "photos/loop:1:1 path-leaves-journal",
        "photos/out.jpg:1:1 path-leaves-journal",
      ]);
    } finally {
      remove();
    }
  });

  test("`permalink` is an unknown key like any other", () => {
    const { diagnostics } = readSmall({ [marchFile]: entry("permalink: ../../x.html\n") });
    expect(places(diagnostics)).toEqual([`${marchFile}:3:1 unknown-key`]);
  });
});

describe("what stands in prose stays prose", () => {
  test("template braces, HTML and front matter fences are kept as typed", () => {
    const prose = "A `{{ x }}` and {% raw %} and <script>alert(1)</script>\n\n---\n\nMore.\n";
    const { build, diagnostics } = readSmall({ [marchFile]: entry(sessions, prose) });
    expect(diagnostics).toEqual([]);
    expect(build?.days[0]?.prose).toBe(prose);
  });
});

describe("names that do not travel", () => {
  // Windows' reserved names: node pull request 61545; twins by letter case and by Unicode form.
  test.each([
    "days/CON.md",
    "days/2026-03-14.md.",
    "days/q?.md",
    "days/#3.md",
    "days/nul.txt",
    "photos/50%.jpg",
    "photos/a:b.jpg",
  ])("%s is named", (file) => {
    const { diagnostics } = readSmall({ [file]: "x" });
    expect(places(diagnostics)).toEqual([`${file}:1:1 name-not-portable`]);
  });

  test("a file that is no entry is listed as left out", () => {
    const { build } = readSmall({ "days/notes.txt": "x", [marchFile]: entry("draft: true\n") });
    expect(build?.omissions).toEqual([
      { file: "journal/days/notes.txt", why: "not an entry: its name does not end in `.md`" },
      { file: "journal/days/2026-03-14.md", why: "a draft (`draft: true`)" },
    ]);
    expect(build?.days).toEqual([]);
  });

  test("a photograph is found in either Unicode form of its name", () => {
    const { diagnostics, build } = readSmall({
      [marchFile]: entry("photos:\n  - { file: fl\u00fcgel.jpg, caption: A wing }\n"),
      "photos/flu\u0308gel.jpg": "x",
    });
    expect(diagnostics).toEqual([]);
    expect(build?.days[0]?.photos[0]?.file).toBe("fl\u00fcgel.jpg");
  });
});
