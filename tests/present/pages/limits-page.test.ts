import { describe, expect, test } from "vitest";
import { ruleSets } from "../../../src/model/published/rule-sets.ts";
import { statementGroups } from "../../../src/model/published/statements.ts";
import { publishedTables } from "../../../src/model/published/tables.ts";
import { inWordsPage, limitTablePage } from "../../../src/present/pages/limits-page.ts";

describe("tables behind the sums", () => {
  test.each(publishedTables)("$name: a cell under every heading, and a source", (table) => {
    const page = limitTablePage(table);
    expect(page.source).not.toBe("");
    expect(page.rows.length).toBeGreaterThan(0);
    for (const row of page.rows) {
      expect(row).toHaveLength(page.heads.length);
      expect(row).not.toContain("");
    }
  });

  test("every drill says how far it was checked", () => {
    const drills = publishedTables.filter(({ name }) => name.endsWith("-drills"));
    expect(drills.map(({ rows }) => rows.length)).toEqual([80, 26, 4]);
    const letterE = drills[1]?.rows.find(([name]) => name === "E");
    expect(letterE).toEqual(["E", "0.25", "6.35", "not read in a source"]);
  });

  test("no two pages below limits/ have one address", () => {
    const urls = [...publishedTables.map((table) => limitTablePage(table).url), inWordsPage().url];
    const all = [...urls, ...[...ruleSets.keys()].map((name) => `limits/${name}/`)];
    expect(new Set(all).size).toBe(all.length);
  });
});

describe("what publications say in words", () => {
  const page = inWordsPage();
  const said = page.groups.flatMap(({ statements }) => statements);

  test("each statement names its document and place", () => {
    for (const { statements } of statementGroups)
      for (const { says, citation } of statements) {
        expect(citation.place, says).toBeDefined();
        expect(says).not.toMatch(/\.$/);
      }
    expect(said.every(({ source }) => source.includes(","))).toBe(true);
  });

  test("a quotation is said to be one", () => {
    const [quotation] = said.filter(({ status }) => status !== undefined);
    expect(quotation?.source).toContain("AC 20-27G");
    expect(quotation?.status).toContain("quotation");
  });

  test("points before closing are said to be put together", () => {
    const closing = page.groups.find(({ subject }) => subject === "Before a structure is closed");
    expect(closing?.note).toContain("No publication that was read prints a list");
    expect(closing?.statements.length).toBeGreaterThan(3);
  });

  test("subjects are anchors of their own", () => {
    const anchors = page.groups.map(({ anchor }) => anchor);
    expect(new Set(anchors).size).toBe(anchors.length);
  });
});
