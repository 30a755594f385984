import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { balancePdf } from "../../../src/write/exports/balance/balance-pdf.ts";
import type { Paper } from "../../../src/write/exports/paper/sheet-format.ts";
import { writeExports } from "../../../src/write/exports/write-exports.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { open, pdfText } from "../../support/pdf-text.ts";
import { filesIn, scratchFolder, textOf } from "../../support/scratch-folder.ts";
import { analysisWith, eventfulBalance } from "../../support/weighed.ts";

const analysis = analysisWith(eventfulBalance);
const recordDigest = "0123456789abcdef".repeat(4);

async function report(
  paper: Paper = "A4",
  edition: "public" | "private" = "private",
  of: Analysis = analysis,
): Promise<Uint8Array> {
  const edit = edition === "public" ? publicEdition : privateEdition;
  const data = await balancePdf(edit(of, of.diagnostics), {
    paper,
    programVersion: "0.1.0",
    recordDigest,
  });
  if (!data) throw new Error("there is no report");
  return data;
}

describe.each(["A4", "Letter"] as const)("on %s", (paper) => {
  let data: Uint8Array;
  let sheets: string[];
  beforeAll(async () => {
    data = await report(paper);
    sheets = await pdfText(data);
  });

  test("has the size of the paper, is tagged, and its chart has words for those who do not see it", async () => {
    const document = await open(data);
    const page = await document.getPage(1);
    const [, , width, height] = page.view;
    expect([Math.round(width ?? 0), Math.round(height ?? 0)]).toEqual(
      paper === "A4" ? [595, 842] : [612, 792],
    );
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const kinds: string[] = [];
    const alts: string[] = [];
    const visit = (node: unknown) => {
      if (typeof node !== "object" || node === null) return;
      const { role, alt, children } = node as {
        role?: string;
        alt?: string;
        children?: unknown[];
      };
      if (role) kinds.push(role);
      if (alt) alts.push(alt);
      for (const child of children ?? []) visit(child);
    };
    for (let number = 1; number <= document.numPages; number += 1) {
      visit(await (await document.getPage(number)).getStructTree());
    }
    expect(kinds).toEqual(expect.arrayContaining(["H1", "H2", "Table", "TH", "TD", "Figure"]));
    expect(alts).toEqual([expect.stringContaining("outside the limits: number 2, 3.")]);
    await document.destroy();
  });

  test("prints every figure of the record", () => {
    const text = sheets.join(" ");
    for (const figure of ["1029.50", "21.90", "23.80", "969.88", "972.63", "1030.00", "-59.00"]) {
      expect(text).toContain(figure);
    }
    for (const words of [
      "leading edge of the wing; arms aft of it count up",
      "425 lb less 5 lb",
      "taken out, 10 gal × 5.9 lb/gal",
      "too heavy by 19.50 lb",
      "behind the aft limit by 6.70 in",
      "par. 10-2c",
      "Designer's weight sheet (rev B)",
      "Nothing here certifies an aircraft or permits a loading",
      "Secret pilot",
    ]) {
      expect(text).toContain(words);
    }
  });

  test("every sheet has its number, the empty weight in the title block and the caution", () => {
    sheets.forEach((sheet, index) => {
      expect(sheet).toContain(`sheet ${index + 1} of ${sheets.length}`);
      expect(sheet).toContain("1029.50 lb");
      expect(sheet).toContain("local rules and a licensed person govern");
      expect(sheet).not.toContain("Hours this sheet");
    });
  });

  test("ends with empty boxes: it signs nothing and says nothing that only a person may say", () => {
    const last = sheets.at(-1) ?? "";
    expect(last).toContain("The program signs nothing");
    for (const label of ["Name", "Signature", "Date", "Stamp"]) expect(last).toContain(label);
    expect(last).not.toContain("Ada Brook");
    expect(sheets.join(" ")).not.toMatch(/\bapproved\b|\bairworthy\b/i);
  });

  test("the same record gives the same bytes", async () => {
    expect(Buffer.from(await report(paper)).equals(Buffer.from(data))).toBe(true);
  });
});

test("the public edition has nothing private", async () => {
  const text = (await pdfText(await report("A4", "public"))).join(" ");
  expect(text).not.toMatch(/secret/i);
  expect(text).toContain("Public edition");
});

test("long lists run over as many sheets as they take, and each line is printed", async () => {
  const items = Array.from(
    { length: 150 },
    (_, index) => `{ what: part ${index + 1} of many, weight: ${index + 1} lb, arm: 10 in }`,
  );
  const long = analysisWith(
    `projection: { on: 2026-01-01, items: [${items.join(", ")}] }\ncases:\n  - { id: L-1, title: Many, items: [${items.slice(0, 80).join(", ")}] }\n`,
  );
  const sheets = await pdfText(await report("Letter", "private", long));
  expect(sheets.length).toBeGreaterThan(6);
  const text = sheets.join(" ");
  for (let number = 1; number <= 150; number += 1) {
    expect(text).toContain(`part ${number} of many`);
  }
});

test("nothing weighed is a report that says so", async () => {
  const text = (await pdfText(await report("A4", "private", analysisWith("")))).join(" ");
  expect(text).toContain("Nothing has been weighed or projected yet");
  expect(text).toContain("not weighed");
});

test("is exported with its table where there is a register, and not where there is none", async () => {
  const folder = scratchFolder();
  await writeExports(analysis, analysis.diagnostics, {
    folder,
    edition: "private",
    paper: "A4",
    programVersion: "0.1.0",
  });
  expect(filesIn(folder)).toEqual(expect.arrayContaining(["balance.csv", "balance.pdf"]));
  expect(textOf(folder, "read-me.txt")).toContain("balance.csv: Weight and balance, line by line");
  expect(readFileSync(join(folder, "balance.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  const { build } = eventfulAnalysis();
  expect(build).not.toHaveProperty("balance");
  expect(
    await balancePdf(privateEdition(eventfulAnalysis(), []), {
      paper: "A4",
      programVersion: "0.1.0",
      recordDigest,
    }),
  ).toBeUndefined();
});
