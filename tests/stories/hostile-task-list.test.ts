// A list of tasks that tries to be a formula, a page of its own, or a key of JavaScript.

import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { privateEdition } from "../../src/present/record/public-edition.ts";
import { evidenceTable } from "../../src/present/tables/evidence.ts";
import { portionHistoryTable, portionTable } from "../../src/present/tables/portion.ts";
import { csvText } from "../../src/write/exports/csv-text.ts";
import { portionPdf } from "../../src/write/exports/portion/portion-pdf.ts";
import { pdfText } from "../support/pdf-text.ts";
import { portionAnalysis, splitsOf } from "../support/portioned.ts";
import { renderedSite } from "../support/rendered-site.ts";

const list = `section,task_number,task
=1+1,constructor,"=HYPERLINK(""http://x.example"",""y"")"
@SUM(A1),1-8,+1
-2+3,10e5,<script>alert(1)</script>
${"A long name ".repeat(60)},T1,${"word ".repeat(900)}
`;
const analysis = portionAnalysis(
  splitsOf(
    "constructor assembly 1",
    "1-8 kit 1, source: \"=cmd|' /C calc'!A0\"",
    "10e5 fabrication 1",
    "T1 assembly 0.5, kit 0.5, source: crate",
  ),
  list,
);

test("in the tables it is text and nothing else", () => {
  for (const table of [portionTable, portionHistoryTable, evidenceTable]) {
    const rows: string[][] = parse(csvText(table, analysis), { bom: true });
    const kinds = table.heads.map(({ kind }) => kind);
    for (const row of rows.slice(1)) {
      row.forEach((cell, index) => {
        if (kinds[index] !== "text") return;
        expect(cell).not.toMatch(/^[=+\-@\t\r]/);
      });
    }
    expect(rows.flat()).toContain('\'=HYPERLINK("http://x.example","y")');
    if (table !== evidenceTable)
      expect(rows.flat()).toEqual(expect.arrayContaining(["'1-8", "'10e5"]));
  }
});

test("on the page it is text and nothing else", async () => {
  const pages = await renderedSite({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures: new Map(),
    edition: "public",
  });
  const page = pages.get("portion/index.html") ?? "";
  expect(page).toContain("&lt;script>alert(1)");
  expect(page).not.toContain("<script>alert");
});

test("on paper every word of it is printed", async () => {
  const data = await portionPdf(privateEdition(analysis, analysis.diagnostics), {
    paper: "Letter",
    programVersion: "0.1.0",
    recordDigest: "0123456789abcdef".repeat(4),
  });
  const text = (await pdfText(data ?? new Uint8Array())).join(" ");
  expect(text).toContain("=HYPERLINK");
  expect(text).toContain("<script>alert(1)</script>");
  // In the list, and beside its evidence.
  expect(text.match(/\bword\b/g)).toHaveLength(1800);
});
