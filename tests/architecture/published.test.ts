// Whatever is shipped as published has a test with its source beside it.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { ruleSets } from "../../src/model/published/rule-sets.ts";

const folder = fileURLToPath(new URL("../published/", import.meta.url));
const files = readdirSync(folder)
  .filter((name) => name.endsWith(".test.ts"))
  .map((name) => ({ name, text: readFileSync(join(folder, name), "utf8") }));

describe("every rule set that is shipped", () => {
  test.each([...ruleSets.keys()])("%s is held against what was printed", (set) => {
    expect(files.filter(({ text }) => text.includes(`"${set}"`)).length).toBeGreaterThan(0);
  });

  test.each([...ruleSets.values()])("$name names document, place and status", ({ citation }) => {
    expect(citation.document).not.toBe("");
    expect(citation.place).toBeDefined();
    expect(["read", "secondary", "memory"]).toContain(citation.status);
  });
});

// A publication is known by its designation: AC 43.13-1B, NAVEDTRA 14018, FAA-H-8083-30, TM 9-254.
const designations =
  /\b(AC|TM|TO|AMS|MIL|JCGM|ILAC|NIST|NAVEDTRA|FAA|CFR|AMA|suncal|paperwork\.md)\b|service manual|computed/;

test.each(files)("$name names the publication that its numbers are from", ({ text }) => {
  const own = text.split("\n").filter((line) => !/^import |from "/.test(line));
  expect(own.join("\n")).toMatch(designations);
});
