import { describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { analyze } from "../../../src/compute/analyze.ts";
import { privateEdition } from "../../../src/present/record/public-edition.ts";
import { packetPdf } from "../../../src/write/exports/packet/packet-pdf.ts";
import type { Paper } from "../../../src/write/exports/paper/sheet-format.ts";
import { writeExports } from "../../../src/write/exports/write-exports.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { open, pdfText } from "../../support/pdf-text.ts";
import { filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { asOf } from "../../support/small-build.ts";
import { readSmall, smallRegisters } from "../../support/temporary-journal.ts";

function altered(data = "[{ document: RP-7, revision: rev B }]"): Analysis {
  const { build, diagnostics } = readSmall({
    "project.yaml": smallRegisters["project.yaml"]?.replace("amateur-built", "alteration") ?? "",
    "alteration.yaml": `title: Second radio\nwhere: panel\ndata: ${data}\n`,
  });
  if (!build || diagnostics.length > 0) throw new Error(diagnostics[0]?.message);
  return analyze(build, asOf("2026-12-31"));
}

async function packet(paper: Paper, analysis = altered()): Promise<Uint8Array> {
  const data = await packetPdf(privateEdition(analysis, []), {
    paper,
    programVersion: "0.1.0",
    recordDigest: "0123456789abcdef".repeat(4),
  });
  if (!data) throw new Error("there is no packet");
  return data;
}

describe.each(["A4", "Letter"] as const)("on %s", (paper) => {
  test("is tagged, of the size of the paper, and the same every time", async () => {
    const data = await packet(paper);
    const document = await open(data);
    const [, , width, height] = (await document.getPage(1)).view;
    expect([Math.round(width ?? 0), Math.round(height ?? 0)]).toEqual(
      paper === "A4" ? [595, 842] : [612, 792],
    );
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    await document.destroy();
    expect(Buffer.from(await packet(paper)).equals(Buffer.from(data))).toBe(true);
  });

  test("every sheet says draft and its number; the last has empty boxes only", async () => {
    const sheets = await pdfText(await packet(paper));
    expect(sheets.length).toBeGreaterThanOrEqual(9);
    sheets.forEach((sheet, index) => {
      expect(sheet).toContain("DRAFT, not signed");
      expect(sheet).toContain(`sheet ${index + 1} of ${sheets.length}`);
      expect(sheet).toContain("SM-1, serial 0001");
    });
    const text = sheets.join(" ");
    expect(text).not.toMatch(/\bapproved\b|\bairworthy\b/i);
    const signatures = sheets.filter((sheet) => sheet.includes("SIGNATURES, ALL EMPTY")).join(" ");
    for (const label of ["Work done by", "Number and kind of certificate", "Signature", "Date"]) {
      expect(signatures).toContain(label);
    }
    expect(signatures).not.toContain("Ada Brook");
  });
});

test("a long list of data runs over as many sheets as it takes", async () => {
  const many = Array.from(
    { length: 120 },
    (_, index) => `{ document: sheet ${index + 1} of many, revision: "${index}" }`,
  );
  const text = (await pdfText(await packet("Letter", altered(`[${many.join(", ")}]`)))).join(" ");
  for (let number = 1; number <= 120; number += 1) {
    expect(text).toContain(`sheet ${number} of many`);
  }
});

test("is exported for an alteration, alone when asked for, and never for an aircraft that is built", async () => {
  const options = { edition: "private", paper: "A4", programVersion: "0.1.0" } as const;
  const files = ["alteration-packet.pdf", "alteration-packet.txt"];
  const [all, alone, built] = [scratchFolder(), scratchFolder(), scratchFolder()];
  await writeExports(altered(), [], { ...options, folder: all });
  expect(filesIn(all)).toEqual(expect.arrayContaining([...files, "hours.csv"]));
  await writeExports(altered(), [], { ...options, folder: alone, packetOnly: true });
  expect(filesIn(alone)).toEqual(files);
  await writeExports(eventfulAnalysis(), [], { ...options, folder: built });
  expect(filesIn(built).filter((name) => files.includes(name))).toEqual([]);
});
