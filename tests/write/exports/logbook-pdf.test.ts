import { beforeAll, describe, expect, test } from "vitest";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { analyze } from "../../../src/compute/analyze.ts";
import { hoursText } from "../../../src/present/format/hours.ts";
import type { Edition } from "../../../src/present/record/edition.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { logbookPdf } from "../../../src/write/exports/logbook/logbook-pdf.ts";
import type { Paper } from "../../../src/write/exports/paper/sheet-format.ts";
import { eventfulAnalysis, longAnalysis } from "../../support/eventful-build.ts";
import { open, type PlacedText, pdfPieces, pdfText } from "../../support/pdf-text.ts";
import {
  asOf,
  day,
  person,
  project,
  register,
  session,
  smallBuild,
} from "../../support/small-build.ts";

const imprint = { programVersion: "0.1.0", recordDigest: "0123456789abcdef".repeat(4) };

function logbook(analysis: Analysis, paper: Paper = "A4", edition: Edition = "private") {
  const edited =
    edition === "private"
      ? privateEdition(analysis, analysis.diagnostics)
      : publicEdition(analysis, analysis.diagnostics);
  return logbookPdf(edited, { ...imprint, paper });
}

/** One sheet of the ledger, read from the words on it. */
interface LedgerSheet {
  readonly part: string;
  readonly brought: number;
  readonly rows: readonly { number: number; date: string; hours: number; total: number }[];
  readonly sheet: number;
  readonly carried: number;
  readonly ends: boolean;
}

function minutes(text: string | undefined): number {
  const [, hours, rest] = /^(\d+):(\d\d)$/.exec(text ?? "") ?? [];
  if (hours === undefined || rest === undefined) throw new Error(`not hours: ${text}`);
  return Number(hours) * 60 + Number(rest);
}

/** Pieces at one height, left to right: a line as the eye reads it. */
function lineOf(pieces: readonly PlacedText[], at: PlacedText): string[] {
  return pieces
    .filter(({ y }) => Math.abs(y - at.y) < 1)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

function ledgerSheet(pieces: readonly PlacedText[]): LedgerSheet | undefined {
  const part = pieces.find(({ text }) => /^PART [12]:/.test(text))?.text;
  const brought = pieces.find(({ text }) => text === "Brought forward");
  const carried = pieces.find(
    ({ text }) => text === "Carried forward" || text === "Total of this part",
  );
  if (!part || !brought || !carried) return undefined;
  const dates = pieces.filter(({ text, x }) => /^\d{4}-\d\d-\d\d$/.test(text) && x < 160 && x > 70);
  const rows = dates
    .filter(({ y }) => y < brought.y && y > carried.y)
    .map((date) => {
      const line = lineOf(pieces, date);
      return {
        number: Number(line[0]),
        date: date.text,
        hours: minutes(line.at(-2)),
        total: minutes(line.at(-1)),
      };
    });
  const foot = lineOf(pieces, carried);
  return {
    part,
    brought: minutes(lineOf(pieces, brought).at(-1)),
    rows,
    sheet: minutes(foot.at(-2)),
    carried: minutes(foot.at(-1)),
    ends: carried.text === "Total of this part",
  };
}

async function ledger(data: Uint8Array): Promise<LedgerSheet[]> {
  return (await pdfPieces(data)).flatMap((pieces) => ledgerSheet(pieces) ?? []);
}

describe.each([
  ["A4", "eventful", eventfulAnalysis()],
  ["Letter", "eventful", eventfulAnalysis()],
  ["A4", "long", longAnalysis(120)],
  ["Letter", "long", longAnalysis(120)],
] as const)("on %s, a %s build", (paper, _, analysis) => {
  let data: Uint8Array;
  beforeAll(async () => {
    data = await logbook(analysis, paper);
  });

  test("every row stands once, in order, under the part it counts to", async () => {
    const sheets = await ledger(data);
    const expected = (apart: boolean) =>
      analysis.hours.lines
        .map((line, index) => ({ line, number: index + 1 }))
        .filter(({ line }) => line.apart === apart)
        .map(({ line, number }) => ({ number, date: line.date, hours: line.minutes }));
    const printed = (part: RegExp) =>
      sheets
        .filter((sheet) => part.test(sheet.part))
        .flatMap(({ rows }) => rows.map(({ number, date, hours }) => ({ number, date, hours })));
    expect(printed(/^PART 1/)).toEqual(expected(false));
    expect(printed(/^PART 2/)).toEqual(expected(true));
  });

  test("on each sheet, what is brought forward and its rows make what is carried forward", async () => {
    const sheets = await ledger(data);
    expect(sheets.length).toBeGreaterThan(1);
    let part = "";
    let carried = 0;
    for (const sheet of sheets) {
      if (sheet.part !== part) carried = 0;
      part = sheet.part;
      expect(sheet.brought).toBe(carried);
      let running = sheet.brought;
      for (const row of sheet.rows) {
        running += row.hours;
        expect(row.total).toBe(running);
      }
      expect(sheet.sheet).toBe(running - sheet.brought);
      expect(sheet.carried).toBe(running);
      carried = sheet.carried;
    }
    const ends = sheets.filter(({ ends: last }) => last).map(({ carried: total }) => total);
    expect(ends).toEqual([analysis.hours.total.build, analysis.hours.total.apart]);
  });

  test("sheets are numbered through, and nothing runs out of the frame", async () => {
    const pages = await pdfPieces(data);
    pages.forEach((pieces, index) => {
      expect(pieces.map(({ text }) => text)).toContain(`sheet ${index + 1} of ${pages.length}`);
    });
    const document = await open(data);
    const [, , width = 0, height = 0] = (await document.getPage(1)).view;
    await document.destroy();
    for (const { x, y } of pages.flat()) {
      expect(x).toBeGreaterThan(56);
      expect(x).toBeLessThan(width - 28);
      expect(y).toBeGreaterThan(18);
      expect(y).toBeLessThan(height - 28);
    }
  });
});

describe("the eventful build", () => {
  const analysis = eventfulAnalysis();

  test("marks late entries, amended values, the next day and study apart", async () => {
    const text = (await pdfText(await logbook(analysis))).join("\n").replaceAll(/\s+/g, " ");
    expect(text).toContain("LATE ENTRY: written 2026-03-19, 4 days after");
    expect(text).toContain(
      "AMENDED: hours was 1:15, now 1:45 (amended 2026-03-15: forgot the clean-up)",
    );
    expect(text).toContain("ends next day");
    expect(text).toContain("PART 2: STUDY AND SHOP, COUNTED APART");
  });

  test("the title sheet has identity, totals, edition, caution and digest", async () => {
    const [title = ""] = await pdfText(await logbook(analysis, "A4", "public"));
    for (const text of [
      "SB-1",
      "0001",
      "N000XX",
      "amateur-built",
      "Ada Sample",
      `${hoursText(analysis.hours.total.build)} (${analysis.hours.total.build} minutes)`,
      "Public edition: an edition of the record",
      "licensed person govern",
      "01234567 89abcdef 01234567",
    ]) {
      expect(title).toContain(text);
    }
  });

  test("the contents point at the sheets where the parts begin", async () => {
    const pages = await pdfPieces(await logbook(analysis));
    const listed = (pages[0] ?? []).flatMap((piece) => {
      const line = lineOf(pages[0] ?? [], piece);
      const [, number] = /^sheet (\d+)$/.exec(line[1] ?? "") ?? [];
      return line[0] === piece.text && number !== undefined
        ? [[piece.text, Number(number)] as const]
        : [];
    });
    expect(listed.map(([part]) => part)).toEqual([
      "Part 1: hours of the build",
      "Part 2: study and shop, counted apart",
      "Part 3: totals",
      "Signatures",
    ]);
    for (const [part, number] of listed) {
      expect(pages[number - 1]?.map(({ text }) => text)).toContain(part.toUpperCase());
    }
  });

  test("the boxes for signatures are empty and say so", async () => {
    const last = (await pdfPieces(await logbook(analysis))).at(-1) ?? [];
    const texts = last.map(({ text }) => text);
    expect(texts).toContain("Signatures and stamp, left empty by the program");
    for (const label of ["Builder", "Looked at by", "Name", "Signature", "Date", "Stamp"]) {
      expect(texts).toContain(label);
    }
    const top = last.find(({ text }) => text === "Builder")?.y ?? 0;
    const inBoxes = last.filter(({ y }) => y <= top && y > 100).map(({ text }) => text);
    expect(inBoxes.sort()).toEqual(
      [
        "Builder",
        "Name",
        "Signature",
        "Date",
        "Looked at by",
        "Name and standing",
        "Number and kind of licence, if any",
        "Signature",
        "Date",
        "Stamp",
        "empty",
      ].sort(),
    );
  });

  test("totals by assembly, person, role, kind, month and step are those of the analysis", async () => {
    const pages = await pdfPieces(await logbook(analysis));
    const totals = pages.filter((pieces) => pieces.some(({ text }) => text === "PART 3: TOTALS"));
    const lines = totals.flatMap((pieces) =>
      pieces.map((piece) => lineOf(pieces, piece).join(" ")),
    );
    const of = (hours: { build: number } | undefined) => hoursText(hours?.build ?? -1);
    expect(lines).toContain(
      `empennage – ${of(analysis.hours.byAssemblyRolledUp.get("empennage"))} – 1:30`,
    );
    expect(
      lines.some(
        (line) =>
          line.startsWith("Ada Sample builder 2") &&
          line.endsWith(of(analysis.hours.byPerson.get("ada"))),
      ),
    ).toBe(true);
    expect(
      lines.some(
        (line) =>
          line.startsWith("paid help –") &&
          line.endsWith(of(analysis.hours.byRole.get("paid help"))),
      ),
    ).toBe(true);
    expect(lines).toContain(
      `2026-03 3 ${of(analysis.hours.byMonth.get("2026-03"))} ${of(analysis.hours.total)} 2:00`,
    );
    expect(lines).toContain(
      `HS-07 Rivet the tail ribs stabilizer 14:00 ${of(analysis.hours.byStep.get("HS-07"))} –`,
    );
  });

  test("is tagged, titled, dated by the day of judgement and says it is PDF/UA", async () => {
    const document = await open(await logbook(analysis));
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const { info, metadata } = await document.getMetadata();
    expect(info).toMatchObject({
      Title: "Hours logbook, SB-1, serial 0001, N000XX",
      CreationDate: "D:20260325000000Z",
      PDFFormatVersion: "1.7",
      Language: "en",
    });
    expect(metadata.getRaw()).toContain("<pdfuaid:part>1</pdfuaid:part>");
    const page = await document.getPage(2);
    const tree = JSON.stringify(await page.getStructTree());
    for (const role of ["Document", "H1", "Table", "TR", "TH", "TD"]) {
      expect(tree).toContain(`"role":"${role}"`);
    }
    expect((await document.getOutline()).map(({ title }) => title)).toContain("Part 3: totals");
    await document.destroy();
  });
});

test("names with letters beyond Latin-1 are printed, others are spelled out", async () => {
  const analysis = analyze(
    smallBuild({
      project: project({ title: "Łoś & <Żuraw>", summary: "Ø 3/32 ≤ ⌀ 0.1 → ✓ Ж 中" }),
      people: register(person({ name: "Wiesław Żółkiewski-Đukić" })),
      days: [day({ sessions: [session()] })],
    }),
    asOf("2026-03-20"),
  );
  const data = await logbook(analysis);
  const [title = ""] = await pdfText(data);
  const joined = title.replaceAll(" ", "");
  expect(joined).toContain("Łoś&<Żuraw>");
  expect(joined).toContain("WiesławŻółkiewski-Đukić");
  expect(joined).toContain("Ø3/32<=dia.0.1->[check][U+0416][U+4E2D]");
  const document = await open(data);
  const { info, metadata } = await document.getMetadata();
  expect(info).toMatchObject({ Subject: expect.stringContaining("Łoś & <Żuraw>.") });
  expect(metadata.getRaw()).toContain("Łoś &amp; &lt;Żuraw&gt;.");
  await document.destroy();
});

test("a build without a day is a book without entries", async () => {
  const sheets = await ledger(await logbook(analyze(smallBuild(), asOf("2026-03-20"))));
  expect(sheets).toEqual([
    { part: "PART 1: HOURS OF THE BUILD", brought: 0, rows: [], sheet: 0, carried: 0, ends: true },
  ]);
});

test("a remark longer than a sheet goes on over sheets, and every word is printed", async () => {
  const why = Array.from({ length: 1500 }, (_, index) => `word${index}`).join(" ");
  const analysis = analyze(
    smallBuild({
      days: [
        day({
          sessions: [session(), session({ minutes: 15 })],
          amendments: [{ ...amendment, why }],
        }),
      ],
    }),
    asOf("2026-03-20"),
  );
  const data = await logbook(analysis);
  const words = (await pdfText(data)).join(" ").match(/\bword\d+\b/g) ?? [];
  expect(words).toEqual(why.split(" "));
  const sheets = await ledger(data);
  expect(sheets.length).toBeGreaterThan(1);
  expect(sheets.at(-1)?.carried).toBe(75);
});

const amendment = {
  date: "2026-03-14",
  day: "2026-03-14",
  field: "sessions[1].hours",
  was: "0:30",
  now: "1:00",
  span: { file: "content/days/2026-03-14.md", line: 9, column: 1, length: 1, text: "x" },
} as const;

test("three thousand rows take seconds", { timeout: 60_000 }, async () => {
  const analysis = longAnalysis(1000);
  expect(analysis.hours.lines.length).toBe(3000);
  const begun = performance.now();
  const data = await logbook(analysis);
  const seconds = (performance.now() - begun) / 1000;
  expect(seconds).toBeLessThan(30);
  expect(data.length).toBeLessThan(8_000_000);
});
