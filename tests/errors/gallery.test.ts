// One folder per kind of diagnostic: `content/` provokes it, `expected.txt` has what the builder
// sees, word for word. `content/` is laid over the registers in `tests/support/journal/`; what is
// listed in `without.txt` is left out of them.
//
// `UPDATE=1 npm run vitest -- tests/errors` writes the expected files and README.md anew, but
// never in CI. What differs is kept beside the old one as `-changed`.

import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { checks } from "../../src/compute/checks/index.ts";
import { diagnosticsText } from "../../src/present/diagnostics/terminal-text.ts";
import { allExplanations, explanationOf } from "../../src/present/explanations/index.ts";
import { readerFaults } from "../../src/read/faults.ts";
import { foundInJournal } from "../support/judged-journal.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
const sources = fileURLToPath(new URL("../../src/", import.meta.url));
const updating = process.env.UPDATE === "1" && !process.env.CI;

/** Every kind of diagnostic, in the order in which a run may come upon them. */
const codes: readonly string[] = [
  ...readerFaults,
  ...Object.keys(checks),
  "unreadable-photo",
  "unpublishable-video",
];

const folders = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const namesIn = (folder: string, except: readonly string[]) =>
  readdirSync(join(sources, folder))
    .map((name) => name.replace(/\.ts$/, ""))
    .filter((name) => !except.includes(name))
    .sort();

describe("nothing is missing", () => {
  test("every check in `compute/checks` has its line in `index.ts`", () => {
    expect(namesIn("compute/checks", ["index"])).toEqual(Object.keys(checks).sort());
  });

  test("every kind of diagnostic has a folder here, and every folder a kind", () => {
    expect(folders.sort()).toEqual([...codes].sort());
  });

  test("every kind of diagnostic has a page, in the same order, and every page a kind", () => {
    expect(allExplanations.map(({ code }) => code)).toEqual(codes);
    expect(
      namesIn("present/explanations", [
        "index",
        "explanation",
        "explanation-text",
        "example-task-list",
      ]),
    ).toEqual([...codes].sort());
  });

  test("every code that the source reports is one of these", () => {
    const reported = ["read", "compute", "write"]
      .flatMap((folder) =>
        readdirSync(join(sources, folder), { recursive: true, encoding: "utf8" })
          .filter((name) => name.endsWith(".ts"))
          .map((name) => readFileSync(join(sources, folder, name), "utf8")),
      )
      .flatMap((text) => [...text.matchAll(/\bcode: "([a-z-]+)",\n\s*severity:/g)])
      .map(([, code]) => code);
    expect(reported.length).toBeGreaterThan(10);
    expect(reported.filter((code) => !codes.includes(code ?? ""))).toEqual([]);
  });
});

describe.each(codes)("%s", (code) => {
  const folder = join(here, code);

  test("says what is expected, word for word", async () => {
    const without = join(folder, "without.txt");
    const found = await foundInJournal({
      folder: join(folder, "content"),
      without: existsSync(without) ? readFileSync(without, "utf8").trim().split("\n") : [],
    });
    // One fault, one diagnostic: nothing else is provoked on the way.
    expect([...new Set(found.map((each) => each.code))]).toEqual([code]);
    expect([...new Set(found.map((each) => each.severity))]).toEqual([
      explanationOf(code)?.severity,
    ]);
    expectFile(join(folder, "expected.txt"), `${diagnosticsText(found)}\n`);
  });

  test("its page has an example that works", async () => {
    const files = explanationOf(code)?.example ?? [];
    expect(files.length).toBeGreaterThan(0);
    const found = await foundInJournal({ files });
    expect(diagnosticsText(found)).toBe("");
  });
});

test("README.md has every message on one page", () => {
  const messages = codes.map((code) => {
    const expected = join(here, code, "expected.txt");
    const text = existsSync(expected) ? readFileSync(expected, "utf8") : "";
    const page = explanationOf(code);
    return `## ${code}\n\n${page?.title}.\n\n\`\`\`text\n${text}\`\`\`\n`;
  });
  expectFile(
    join(here, "README.md"),
    [
      "# Every message\n\nWritten by `UPDATE=1 npm run vitest -- tests/errors`; not to be edited by hand. Read it\nwhen you write a new message. Each comes from the journal in the folder of its name.\n",
      ...messages,
    ].join("\n"),
  );
});

function expectFile(file: string, text: string): void {
  const changed = file.replace(/(\.\w+)$/, "-changed$1");
  if (updating) writeFileSync(file, text);
  const expected = existsSync(file) ? readFileSync(file, "utf8") : "";
  if (expected === text) rmSync(changed, { force: true });
  else writeFileSync(changed, text);
  expect(text).toBe(expected);
}
