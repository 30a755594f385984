import { beforeAll, describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import type { Paper } from "../../../src/write/exports/paper/sheet-format.ts";
import { portionPdf } from "../../../src/write/exports/portion/portion-pdf.ts";
import { writeExports } from "../../../src/write/exports/write-exports.ts";
import { eventfulAnalysis } from "../../support/eventful-build.ts";
import { open, pdfText } from "../../support/pdf-text.ts";
import { portionAnalysis, splitsOf, taskList } from "../../support/portioned.ts";
import { filesIn, scratchFolder, textOf } from "../../support/scratch-folder.ts";

const people = `people:
  - { id: ada, name: Ada Brook, role: builder }
  - { id: kit, name: Kit Marsh, role: paid help, private: true }
`;
const help =
  "help: [{ id: P-1, who: kit, kind: paid help, from: 2026-03-14, to: 2026-03-15, what: welded the corners, shares: { F2: 0.4 }, invoice: B-77 }]\n";
const analysis = portionAnalysis(
  `added: [{ task: W-1, section: Wings, title: More spars, on: 2026-01-03, why: not listed }]
splits:
  - { task: F1, on: 2026-01-03, kit: 0.9, fabrication: 0.1 }
  - { task: F2, on: 2026-01-03, assembly: 1 }
  - { task: F2, on: 2026-02-03, paid: 0.4, assembly: 0.6, why: had the corners welded }
  - { task: W2, on: 2026-01-03, not-applicable: true, why: no folding }
  - { task: W-1, on: 2026-01-03, kit: 1, salvage: true }
`,
  "section,task_number,task,mfr_tenths\nFuselage,F1,Long members,9\nFuselage,F2,Skins,\nWings,W1,Spars,\nWings,W2,Folding tips,\n",
  {
    "people.yaml": people,
    "help.yaml": help,
    "days/2026-03-14.md":
      '---\ndate: 2026-03-14\nsessions:\n  - { assembly: spar, who: [ada, kit], hours: "1:00", kind: assemble, tasks: [F2] }\n---\nDone.\n',
  },
);
const recordDigest = "0123456789abcdef".repeat(4);

async function sheet(
  of: Analysis,
  { paper = "A4", edition = "private" }: { paper?: Paper; edition?: "public" | "private" } = {},
): Promise<Uint8Array> {
  const edit = edition === "public" ? publicEdition : privateEdition;
  const data = await portionPdf(edit(of, of.diagnostics), {
    paper,
    programVersion: "0.1.0",
    recordDigest,
  });
  if (!data) throw new Error("there is no sheet");
  return data;
}

const wordsOf = async (of: Analysis) => (await pdfText(await sheet(of))).join(" ");

/** A sheet of so many tasks, half of each the builder's, and one tenth more of the first few. */
const nearHalf = (tasks: number, more: number) =>
  portionAnalysis(
    splitsOf(
      ...Array.from({ length: tasks }, (_, index) =>
        index < more
          ? `F${index + 1} kit 0.4, assembly 0.6`
          : `F${index + 1} kit 0.5, assembly 0.5`,
      ),
    ),
    taskList(...Array.from({ length: tasks }, (_, index) => `F${index + 1}`)),
  );

describe.each(["A4", "Letter"] as const)("on %s", (paper) => {
  let data: Uint8Array;
  let sheets: string[];
  beforeAll(async () => {
    data = await sheet(analysis, { paper });
    sheets = await pdfText(data);
  });

  test("has the size of the paper, is tagged, and has its parts in the outline", async () => {
    const document = await open(data);
    const [, , width, height] = (await document.getPage(1)).view;
    expect([Math.round(width ?? 0), Math.round(height ?? 0)]).toEqual(
      paper === "A4" ? [595, 842] : [612, 792],
    );
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    expect((await document.getOutline()).map(({ title }) => title)).toEqual([
      "Major-portion sheet",
      "The tasks",
      "Evidence in the log",
      "Signatures",
    ]);
    const roles = JSON.stringify(await (await document.getPage(2)).getStructTree());
    for (const role of ["H2", "Table", "TH", "TD"]) expect(roles).toContain(`"${role}"`);
    await document.destroy();
  });

  test("names the list, the form, both lines with their sources, and every task", () => {
    const text = sheets.join(" ");
    for (const each of [
      "A list made up for the tests; for: fixed wing; from: nowhere; loaded: 2 January 2026",
      "Amateur-Built Aircraft Fabrication and Assembly Checklist (2011)",
      "were not seen and are not used",
      "More than half of the points",
      "“major portion”, 14 CFR 21.191(g)",
      "51 % or more",
      "0.7 of 3.0",
      "23.3 %",
      "the list gives the kit 0.9",
      "added on 3 January 2026: not listed",
      "made from a salvaged assembly",
      "not divided yet",
      "not applicable: no folding",
      "had the corners welded",
      "welded the corners",
      "invoice B-77",
      "F2 0.4",
    ]) {
      expect(text).toContain(each);
    }
    expect(text.match(/N\/A/g)).toHaveLength(4);
  });

  test("ends with empty, labelled lines: nothing is signed, dated or certified", () => {
    const last = sheets.at(-1) ?? "";
    for (const label of ["Name", "Signature", "Date", "Stamp", "Looked at by"]) {
      expect(last).toContain(label);
    }
    expect(last).toContain("The program signs nothing");
    expect(last).not.toContain("Ada Brook");
    expect(sheets.join(" ")).not.toMatch(/\bapproved\b|\beligible\b|8000-38|8130/i);
  });

  test("the same record gives the same bytes", async () => {
    const again = await sheet(analysis, { paper });
    expect(Buffer.from(again).equals(Buffer.from(data))).toBe(true);
  });
});

test("the public edition has neither the name nor the bill, and says what it lacks", async () => {
  const text = (await pdfText(await sheet(analysis, { edition: "public" }))).join(" ");
  expect(text).not.toMatch(/Kit Marsh|B-77/);
  expect(text).toContain("1 invoice number");
  expect(text).toContain("F2 0.4");
});

test("exactly half is printed as no major portion", async () => {
  const text = await wordsOf(nearHalf(4, 0));
  expect(text).toContain("50.0 %");
  expect(text).toContain("exactly half is not more than half");
  expect(text.match(/not reached/g)).toHaveLength(2);
});

// 530 of 1040 tenths are 50.961… %.
test("50.96 % is printed as 50.9 %, reaches one line and not the other", async () => {
  const text = await wordsOf(nearHalf(104, 10));
  expect(text).toContain("50.9 %");
  expect(text).not.toMatch(/51\.0 %|51\.00|50\.96/);
  expect(text).toContain("53.0 of 104.0 points is more than half and less than 51 %");
  const without = text.replaceAll(/less than 51 %|51 % or more|at least 51 %/g, "");
  expect(without).not.toContain("51 %");
});

test("a long list goes on over sheets, each task once", async () => {
  const ids = Array.from({ length: 187 }, (_, index) => `T${index + 1}`);
  const sheets = await pdfText(
    await sheet(portionAnalysis(splitsOf("T1 kit 1, source: the crate"), taskList(...ids))),
  );
  const listed = sheets.join(" ").match(/\bT\d+\b/g) ?? [];
  expect(listed.toSorted()).toEqual([...ids].toSorted());
});

test("a list with nothing on it is a sheet that says so", async () => {
  const text = await wordsOf(portionAnalysis("", "section,task_number,task\n"));
  expect(text).toContain("No task has been divided yet.");
  expect(text).toContain("The list has no tasks.");
});

test("is exported where there is a sheet, and not where there is none", async () => {
  const folder = scratchFolder();
  const options = { folder, edition: "public", paper: "A4", programVersion: "0.1.0" } as const;
  await writeExports(analysis, analysis.diagnostics, options);
  expect(filesIn(folder)).toEqual(expect.arrayContaining(["portion.pdf", "evidence.csv"]));
  expect(textOf(folder, "read-me.txt")).toContain("Major-portion sheet to be printed on A4.");
  const without = privateEdition(eventfulAnalysis(), []);
  expect(
    await portionPdf(without, { paper: "A4", programVersion: "0.1.0", recordDigest }),
  ).toBeUndefined();
});
