import { createHash } from "node:crypto";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, test } from "vitest";
import { openJournal } from "../../../src/cli/journal.ts";
import type { Analysis } from "../../../src/compute/analysis.ts";
import { analyze } from "../../../src/compute/analyze.ts";
import type { Build } from "../../../src/model/build.ts";
import type { Day } from "../../../src/model/day.ts";
import { bookSections } from "../../../src/present/book/book-sections.ts";
import { dateText } from "../../../src/present/format/dates.ts";
import { hoursText } from "../../../src/present/format/hours.ts";
import { recordIndex } from "../../../src/present/pages/record-index.ts";
import type { Edition } from "../../../src/present/record/edition.ts";
import { privateEdition, publicEdition } from "../../../src/present/record/public-edition.ts";
import { hoursTable } from "../../../src/present/tables/hours.ts";
import type { BookImprint } from "../../../src/write/exports/book/book-context.ts";
import { type BookWork, printBook } from "../../../src/write/exports/book/book-pdf.ts";
import { pageRuns } from "../../../src/write/exports/book/wording.ts";
import { writeBook } from "../../../src/write/exports/book/write-book.ts";
import { csvText } from "../../../src/write/exports/csv-text.ts";
import type { PrintPicture } from "../../../src/write/photos/print-pictures.ts";
import { hiddenMetadata } from "../../../src/write/published-bytes.ts";
import {
  eventfulAnalysis,
  eventfulBuild,
  longAnalysis,
  privateWords,
} from "../../support/eventful-build.ts";
import { open, type PlacedText, pdfPieces, pdfText } from "../../support/pdf-text.ts";
import { portionAnalysis, splitsOf, taskList } from "../../support/portioned.ts";
import { addFiles, filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { asOf, day, hold, session, smallBuild, span } from "../../support/small-build.ts";
import { locatedJpeg, plainJpeg, stored } from "../../support/small-photos.ts";
import { readSmall, smallRegisters } from "../../support/temporary-journal.ts";

const imprint: BookImprint = {
  paper: "A4",
  programVersion: "0.1.0",
  recordDigest: "0123456789abcdef".repeat(4),
  sections: bookSections,
};

interface Wish {
  readonly edition?: Edition;
  readonly imprint?: Partial<BookImprint>;
  readonly work?: Partial<BookWork>;
}

async function book(analysis: Analysis, { edition = "private", ...wish }: Wish = {}) {
  const bits: Uint8Array[] = [];
  const record = recordIndex({
    analysis,
    diagnostics: analysis.diagnostics,
    pictures: new Map(),
    edition,
  });
  await printBook(record, {
    imprint: { ...imprint, ...wish.imprint },
    pictures: new Map(),
    put: async (bit) => {
      bits.push(bit);
    },
    ...wish.work,
  });
  return Buffer.concat(bits);
}

/** A build of one day. */
function oneDay(contents: Partial<Day>, more: Partial<Build> = {}): Analysis {
  return analyze(smallBuild({ days: [day(contents)], ...more }), asOf("2026-03-20"));
}

/** All words of the book with single spaces, and none where only the style of the words changes. */
async function words(data: Uint8Array): Promise<string> {
  const text = (await pdfText(data)).join(" ");
  return text.replaceAll(/\s+/g, " ").replaceAll(/ (?=[,.;])/g, "");
}

/** The files of photographs in the book, as they lie in it. */
function photographsIn(data: Buffer): Buffer[] {
  const found: Buffer[] = [];
  for (let at = data.indexOf("/DCTDecode"); at !== -1; at = data.indexOf("/DCTDecode", at + 1)) {
    const begin = data.indexOf("stream\n", at) + "stream\n".length;
    found.push(data.subarray(begin, data.indexOf("\nendstream", begin)));
  }
  return found;
}

/** Pieces at one height, left to right: a line as the eye reads it. */
function lineOf(pieces: readonly PlacedText[], at: PlacedText): string[] {
  return pieces
    .filter(({ y }) => Math.abs(y - at.y) < 1)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

/** An entry as the margin of the log announces it. */
interface Announced {
  readonly page: number;
  readonly number: number;
  readonly of: number;
  readonly date: string;
}

function announced(pages: readonly PlacedText[][]): Announced[] {
  return pages.flatMap((pieces, index) =>
    pieces.flatMap((piece, at) => {
      const [, number, of] = /^Entry (\d+) of (\d+)$/.exec(piece.text) ?? [];
      // Weekday and date are drawn next, below each other in the margin.
      const date = pieces[at + 2]?.text ?? "";
      return number === undefined
        ? []
        : [{ page: index + 1, number: Number(number), of: Number(of), date }];
    }),
  );
}

function minutes(text: string | undefined): number {
  const [, hours, rest] = /^(\d+):(\d\d)$/.exec(text ?? "") ?? [];
  if (hours === undefined || rest === undefined) throw new Error(`not hours: ${text}`);
  return Number(hours) * 60 + Number(rest);
}

/** Minutes of a strip: `12:30 + 1:00 apart`. */
function strip(text: string | undefined): { build: number; apart: number } {
  const [build, apart] = (text ?? "").replace(" apart", "").split(" + ");
  return { build: minutes(build), apart: apart === undefined ? 0 : minutes(apart) };
}

/** The pages that a cell of the index names. */
function named(text: string): number[] {
  if (text === "–") return [];
  return text.split(",").flatMap((run) => {
    const [first = Number.NaN, last = first] = run.split("–").map(Number);
    return Number.isNaN(first)
      ? []
      : Array.from({ length: last - first + 1 }, (_, step) => first + step);
  });
}

/** The rows of an index: what stands in the first column, and the pages in the last. */
function indexRows(pages: readonly PlacedText[][], part: string): Map<string, number[]> {
  const rows = new Map<string, number[]>();
  for (const pieces of pages) {
    if (!pieces.some(({ text }) => text === part.toUpperCase())) continue;
    const head = pieces.find(({ text }) => text === "PAGES");
    if (!head) throw new Error("an index without its head");
    const left = Math.min(...pieces.filter(({ y }) => y === head.y).map(({ x }) => x));
    const body = pieces.filter(({ y }) => y < head.y - 1 && y > 100);
    const inFirst = (piece: PlacedText) => piece.x < head.x - 60 && piece.x < left + 50;
    const isName = (piece: PlacedText) => inFirst(piece) && lineOf(body, piece).length > 1;
    const names = body.filter(isName);
    names.forEach((name, index) => {
      const below = names[index + 1]?.y ?? 0;
      const cell = body
        .filter(({ x, y }) => Math.abs(x - head.x) < 2 && y <= name.y + 1 && y > below + 1)
        .map(({ text }) => text);
      rows.set(name.text, named(cell.join(" ")));
    });
  }
  return rows;
}

/** What a day names, as the index has to list it. */
function namesOf(each: Day): (string | undefined)[] {
  return [
    ...each.sessions,
    ...each.readings,
    ...each.cures,
    ...each.holds,
    ...each.releases,
    ...each.deviations,
    ...each.squawks,
    ...each.inspections,
    ...each.photos,
    ...each.layouts,
  ].map(({ step }) => step);
}

/** The public book of the sample journal, made once. */
let demoBook: Promise<Buffer> | undefined;

const demo = openJournal({ journal: "site-demo" }).analysis;
if (!demo) throw new Error("the sample journal cannot be read");

describe.each([
  ["A4", "the sample journal", demo, "public"],
  ["Letter", "a long build", longAnalysis(90), "private"],
] as const)("on %s, %s", (paper, _, analysis, edition) => {
  let data: Buffer;
  let pages: PlacedText[][];
  beforeAll(async () => {
    const made = book(analysis, { edition, imprint: { paper } });
    if (analysis === demo) demoBook = made;
    data = await made;
    pages = await pdfPieces(data);
  });

  test("every day stands in the log once and in order", () => {
    const { days } = analysis.build;
    expect(announced(pages).map(({ number, of, date }) => [number, of, date])).toEqual(
      days.map(({ date }, index) => [index + 1, days.length, dateText(date)]),
    );
  });

  test("pages are numbered through, and nothing runs out of the frame", async () => {
    pages.forEach((pieces, index) => {
      expect(pieces.map(({ text }) => text)).toContain(`page ${index + 1} of ${pages.length}`);
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

  test("what is brought forward and the entries of a page make what is carried forward", () => {
    const log = pages.filter((pieces) => pieces.some(({ text }) => text === "Brought forward"));
    const { byDate } = analysis.hours;
    const dates = new Map(analysis.build.days.map(({ date }) => [dateText(date), date]));
    let carried = { build: 0, apart: 0 };
    log.forEach((pieces, index) => {
      const brought = pieces.find(({ text }) => text === "Brought forward");
      const foot = pieces.find(({ text }) => /begins? on this page$/.test(text));
      if (!brought || !foot) throw new Error("a page of the log without its strips");
      expect(strip(lineOf(pieces, brought).at(-1))).toEqual(carried);
      const [, here, says, total] = lineOf(pieces, foot);
      const begun = announced([pieces]).map(({ date }) => byDate.get(dates.get(date) ?? ""));
      const sum = {
        build: begun.reduce((all, hours) => all + (hours?.build ?? 0), 0),
        apart: begun.reduce((all, hours) => all + (hours?.apart ?? 0), 0),
      };
      expect(strip(here)).toEqual(sum);
      carried = { build: carried.build + sum.build, apart: carried.apart + sum.apart };
      expect(strip(total)).toEqual(carried);
      expect(says).toBe(index === log.length - 1 ? "Total" : "Carried forward");
    });
    expect(carried).toEqual(analysis.hours.total);
  });

  test("the total is the one that the rows of the CSV file add up to", () => {
    const rows = parse<Record<string, string>>(csvText(hoursTable, analysis), {
      bom: true,
      columns: true,
    });
    const total = rows
      .filter(({ counted }) => counted === "build")
      .reduce((sum, row) => sum + Number(row.minutes), 0);
    const cover = (pages[0] ?? []).map(({ text }) => text).join(" ");
    expect(cover).toContain(`Hours of the build ${hoursText(total)} (${total} minutes)`);
  });

  test("the index names exactly the pages on which the entries begin that name a step", () => {
    const dates = new Map(analysis.build.days.map((each) => [dateText(each.date), each]));
    const begins = announced(pages);
    const rows = indexRows(pages, "Index by step");
    expect([...rows.keys()]).toEqual([...analysis.build.steps.keys()]);
    for (const [step, listed] of rows) {
      const expected = begins
        .filter(({ date }) => namesOf(dates.get(date) ?? day()).includes(step))
        .map(({ page }) => page);
      expect([step, listed]).toEqual([step, [...new Set(expected)]]);
    }
  });

  test("the index of assemblies names the pages of what is booked to each", () => {
    const { build } = analysis;
    const dates = new Map(build.days.map((each) => [dateText(each.date), each]));
    const begins = announced(pages);
    const rows = indexRows(pages, "Index by assembly");
    let looked = 0;
    for (const { id, title } of build.assemblies.values()) {
      const listed = rows.get(title);
      // A title that takes several lines does not stand in one piece.
      if (!listed) continue;
      looked += 1;
      const booked = begins.filter(({ date }) =>
        dates.get(date)?.sessions.some((each) => each.assembly === id),
      );
      for (const { page } of booked) expect(listed).toContain(page);
      if (booked.length === 0) continue;
      for (const page of listed) expect(begins.map((each) => each.page)).toContain(page);
    }
    expect(looked).toBeGreaterThan(build.assemblies.size - 3);
  });

  test("the contents name the pages on which parts and months begin", () => {
    const [, contents = []] = pages;
    const listed = contents.flatMap((piece) => {
      const line = lineOf(contents, piece);
      return line[0] === piece.text && /^\d+$/.test(line[1] ?? "")
        ? [[piece.text, Number(line[1])] as const]
        : [];
    });
    expect(listed.map(([name]) => name)).toEqual(
      expect.arrayContaining(["Log", "Index by assembly", "Index by step", "Hours", "Signatures"]),
    );
    for (const [name, page] of listed) {
      const texts = (pages[page - 1] ?? []).map(({ text }) => text);
      expect(texts.includes(name) || texts.includes(name.toUpperCase())).toBe(true);
    }
  });
});

test("the public book of the sample journal has nothing private", async () => {
  const shown = await words(await (demoBook ?? book(demo, { edition: "public" })));
  const secret = /Quillwort|thistledown|not in the mood for company|estate sale|Philippa|\bPip\b/;
  expect(shown).not.toMatch(secret);
  expect(shown).toContain("Private day: its hours are shown and nothing else");
  expect(shown).toContain("Public edition: an edition of the record, not the whole of it.");
});

test("a layout is named where it was typed, and stands drawn up with sizes and rules", async () => {
  const shown = await words(await (demoBook ?? book(demo, { edition: "public" })));
  expect(demo.layouts.length).toBeGreaterThan(0);
  for (const { layout, checks, row } of demo.layouts) {
    const { number, title } = layout;
    expect(shown).toContain(`Layout ${number}, ${title}, is drawn up below.`);
    expect(shown).toContain(`LAYOUT ${number}: ${title.toUpperCase()}`);
    for (const { what } of checks) expect(shown).toContain(what);
    if (row?.ok) expect(shown).toContain(`${row.positions.length}: `);
  }
});

describe("the eventful build", () => {
  const analysis = eventfulAnalysis();

  test("in public has nothing private; in private everything", async () => {
    const shown = await words(await book(analysis, { edition: "public" }));
    for (const word of privateWords) expect(shown).not.toContain(word);
    expect(shown).not.toMatch(/\bjon\b|J\.S\.|airframe mechanic/);
    const whole = await words(await book(analysis));
    for (const word of privateWords) expect(whole).toContain(word);
  });

  test("says of an entry when, where, under which conditions, who, how and with whose help", async () => {
    const log = await words(await book(analysis, { imprint: { sections: ["log"] } }));
    for (const text of [
      "Entry 1 of 3 Saturday 14 March 2026",
      "place: shop",
      "61 °F 48 % humidity",
      "written 14 March 2026, 21:40",
      "18:40–21:05 stabilizer: HS-07 Rivet the tail ribs (riveted) lot: Tank sealant, lot 1",
      "Jon Secretperson (paid help)",
      "23:10–01:20 ends next day",
      "3:30 1:45 × 2",
      "Help: Jon Secretperson, paid help, 1:45.",
      "0.3 in: 0.14 in over",
      "0.121875 in (1.3 D) to 0.159375 in (1.7 D)",
      "limit of the manual: Builder's manual (2025), sheet 5-2",
      "Rivet gauge, U 0.001 in (k = 2)",
      "deviation D-014",
      "Planned 1.0 in block Done 0.75 in block Why first rib sits further aft",
      "OPEN: nothing decided yet",
      "both skins off two heads to re-drive held",
      "NEXT HS-08 drive the second row",
    ]) {
      expect(log).toContain(text);
    }
  });

  test("marks late entries, and shows corrections at both ends", async () => {
    const log = await words(await book(analysis, { imprint: { sections: ["log"] } }));
    expect(log).toContain("written 19 March 2026, 20:00 LATE ENTRY: 4 days after the day");
    expect(log).toContain(
      "session 2, hours: was 1:15, now 1:45. Why: forgot the clean-up; corrected by entry 2, 15 March 2026.",
    );
    expect(log).toContain(
      "session 2, hours: was 1:15, now 1:45. Why: forgot the clean-up; in entry 1, 14 March 2026.",
    );
    expect(log).toContain("CORRECTED LATER: hours");
  });

  test("marks hours that were entered later from a file", async () => {
    const build = eventfulBuild();
    const days = build.days.map((each, index) =>
      index === 0 ? { ...each, imported: "old log.csv", late: 12 } : each,
    );
    const log = await words(
      await book(analyze({ ...build, days }, analysis.asOf), { imprint: { sections: ["log"] } }),
    );
    expect(log).toContain(
      "LATE ENTRY: 12 days after the day ENTERED LATER: hours from old log.csv",
    );
    expect(log.match(/ENTERED LATER/g)).toHaveLength(1);
  });

  test("an entry without a title is called what its sheet is called", async () => {
    const build = eventfulBuild();
    const [first, ...rest] = build.days;
    if (!first) throw new Error("no days");
    const titled = async (prose: string) => {
      const days = [
        { ...first, title: "", prose, sessions: [first.sessions[0]].flatMap((each) => each ?? []) },
        ...rest,
      ];
      const changed = analyze({ ...build, days }, analysis.asOf);
      return pdfPieces(await book(changed, { imprint: { sections: ["log"] } }));
    };
    const pieces = async (prose: string) => (await titled(prose)).flat().map(({ text }) => text);
    expect(await pieces("Drove the whole row.\n")).toContain("Drove the whole row.");
    const booked = build.assemblies.get(first.sessions[0]?.assembly ?? "")?.title ?? "";
    expect(booked).not.toBe("");
    expect((await titled("")).flat().find(({ text }) => text === booked)?.x).toBeGreaterThan(100);
  });

  test("fields for hands are empty in every section that has them", async () => {
    const sections = ["hours", "inspections", "deviations", "signatures"] as const;
    const pages = await pdfPieces(await book(analysis, { imprint: { sections } }));
    let fields = 0;
    for (const pieces of pages) {
      const column = pieces.find(({ text }) => text === "SIGN OR STAMP");
      if (column) {
        fields += 1;
        const below = pieces.filter(({ x, y }) => x > column.x - 2 && y < column.y && y > 105);
        expect(below).toEqual([]);
      }
      for (const label of pieces.filter(({ text }) =>
        ["Looked through by", "Signature"].includes(text),
      )) {
        fields += 1;
        const inside = pieces.filter(
          ({ x, y }) => Math.abs(x - label.x) < 100 && y < label.y - 1 && y > label.y - 22,
        );
        expect(inside).toEqual([]);
      }
      const initials = pieces.find(({ text }) => text === "Initials");
      if (!initials) throw new Error("a page without its field for initials");
      const inside = pieces.filter(
        ({ x, y }) => x >= initials.x && x < initials.x + 50 && y < initials.y - 1 && y > 40,
      );
      expect(inside).toEqual([]);
    }
    expect(fields).toBeGreaterThan(5);
    const text = pages.flat().map((piece) => piece.text);
    expect(text.join(" ")).not.toMatch(/\bapproved\b|\bairworthy\b/i);
  });

  test("is tagged, titled, dated by the day of judgement and says it is PDF/UA", async () => {
    const document = await open(await book(analysis));
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const { info, metadata } = await document.getMetadata();
    expect(info).toMatchObject({
      Title: "Book of the build, SB-1, serial 0001, N000XX",
      CreationDate: "D:20260325000000Z",
      Language: "en",
    });
    expect(metadata.getRaw()).toContain("<pdfuaid:part>1</pdfuaid:part>");
    const trees = await Promise.all(
      [3, 4, 5].map(async (number) => (await document.getPage(number)).getStructTree()),
    );
    const tree = JSON.stringify(trees);
    for (const role of ["Document", "H1", "H2", "H3", "H4", "Table", "TH", "L", "LI", "LBody"]) {
      expect(tree).toContain(`"role":"${role}"`);
    }
    const outline = await document.getOutline();
    const log = outline.find(({ title }) => title === "Log");
    expect(log?.items.map(({ title }) => title)).toEqual(["March 2026"]);
    await document.destroy();
  });
});

describe("photographs", () => {
  const photo = (file: string, alt?: string) => ({
    date: "2026-03-14",
    file,
    caption: `caption of ${file}`,
    ...(alt === undefined ? {} : { alt }),
    step: "HS-07",
    shows: ["ada"],
    private: false,
    span: span({ line: 3, text: file }),
  });
  const files = ["located.jpg", "turned.jpg", "gone.jpg", "plain.jpg"];
  const analysis = oneDay({
    photos: files.map((file) =>
      photo(file, file === "plain.jpg" ? "a plain grey field" : undefined),
    ),
  });
  const record = recordIndex({
    analysis,
    diagnostics: [],
    pictures: new Map(),
    edition: "private",
  });

  const originals: Record<string, Uint8Array> = {};
  beforeAll(async () => {
    originals["located.jpg"] = await locatedJpeg();
    originals["turned.jpg"] = await stored(6);
    originals["plain.jpg"] = await plainJpeg(3);
  });

  function shop(): string {
    const folder = scratchFolder();
    addFiles(join(folder, "journal", "photos"), originals);
    return folder;
  }

  const write = (
    folder: string,
    more: { signal?: AbortSignal; progress?: (text: string) => void } = {},
  ) =>
    writeBook(join(folder, "out", "book.pdf"), record, imprint, {
      photosFolder: join(folder, "journal", "photos"),
      cacheFolder: join(folder, "cache"),
      ...more,
    });

  test("stand in the book without what a camera writes beside them", async () => {
    const folder = shop();
    const { bytes, sha256, pages, diagnostics } = await write(folder);
    const data = readFileSync(join(folder, "out", "book.pdf"));
    expect(data.length).toBe(bytes);
    expect(createHash("sha256").update(data).digest("hex")).toBe(sha256);
    const inside = photographsIn(data);
    expect(inside.map((jpeg) => jpeg.subarray(0, 3).toString("hex"))).toEqual(
      Array(3).fill("ffd8ff"),
    );
    expect(inside.flatMap(hiddenMetadata)).toEqual([]);
    expect(hiddenMetadata(await locatedJpeg())).not.toEqual([]);
    expect(diagnostics.map(({ code, message }) => [code, message])).toEqual([
      ["unreadable-photo", "photo `gone.jpg` is not in the `photos` folder"],
    ]);
    const text = await words(data);
    for (const file of files) expect(text).toContain(`caption of ${file}`);
    expect(text).toContain("The photograph gone.jpg could not be read.");
    expect(text).toContain("Shows Ada Sample.");
    const document = await open(data);
    expect(document.numPages).toBe(pages);
    const trees = await Promise.all(
      Array.from({ length: pages }, async (_, index) =>
        (await document.getPage(index + 1)).getStructTree(),
      ),
    );
    const tree = JSON.stringify(trees);
    expect(tree.match(/"role":"Figure"/g)).toHaveLength(3);
    expect(tree).toContain("a plain grey field");
    await document.destroy();
  });

  test("make the same bytes, from the cache or not", async () => {
    const folder = shop();
    await write(folder);
    const first = readFileSync(join(folder, "out", "book.pdf"));
    await write(folder);
    expect(readFileSync(join(folder, "out", "book.pdf")).equals(first)).toBe(true);
    const other = shop();
    await write(other);
    expect(readFileSync(join(other, "out", "book.pdf")).equals(first)).toBe(true);
  });

  test("an interrupted book leaves the old one and nothing beside it", async () => {
    const folder = shop();
    await write(folder);
    const old = readFileSync(join(folder, "out", "book.pdf"));
    for (const moment of [/^photograph 2/, /^planning entry 1/, /^page 2/]) {
      const controller = new AbortController();
      const progress = (text: string) => {
        if (moment.test(text)) controller.abort(new Error("enough"));
      };
      await expect(write(folder, { signal: controller.signal, progress })).rejects.toThrow(
        "enough",
      );
      expect(readFileSync(join(folder, "out", "book.pdf")).equals(old)).toBe(true);
      expect(filesIn(join(folder, "out"))).toEqual(["book.pdf"]);
    }
  });

  test("a picture that goes from the cache meanwhile is a problem of the machine", async () => {
    const folder = shop();
    const progress = (text: string) => {
      if (text.startsWith("page 1 ")) rmSync(join(folder, "cache"), { recursive: true });
    };
    await expect(write(folder, { progress })).rejects.toMatchObject({
      kind: "missing",
      exitCode: 3,
    });
    expect(existsSync(join(folder, "out", "book.pdf"))).toBe(false);
  });

  test("of one day, no more than one is in memory at a time", async () => {
    let held = 0;
    let most = 0;
    const jpeg = await plainJpeg(1, 64, 48);
    const picture: PrintPicture = {
      width: 64,
      height: 48,
      bytes: async () => {
        held += 1;
        most = Math.max(most, held);
        queueMicrotask(() => {
          held -= 1;
        });
        return jpeg;
      },
    };
    const many = Array.from({ length: 24 }, (_, index) => `${index}.jpg`);
    await book(oneDay({ photos: many.map((file) => photo(file)) }), {
      work: { pictures: new Map(many.map((file) => [file, picture])) },
    });
    expect(most).toBe(1);
  });
});

describe("prose", () => {
  const of = async (prose: string) =>
    words(await book(oneDay({ prose }), { imprint: { sections: ["log"] } }));

  test("keeps headings, lists, quotes, code, tables and every word", async () => {
    const text = await of(
      "# What came of it\n\nTwo **bold**, one *stressed* word.\n\n1. first\n2. second\n   - inside\n\n> Measure twice.\n\n```\nA   12\n```\n\n| row | holes |\n|---|--:|\n| B | 14 |\n\n[sheet](https://sheets.example/5)\n",
    );
    for (const part of [
      "What came of it Two bold, one stressed word.",
      "1. first 2. second • inside",
      "Measure twice.",
      "A 12",
      "ROW HOLES B 14",
      "sheet (https://sheets.example/5)",
    ]) {
      expect(text).toContain(part);
    }
  });

  test("of any length goes on over pages, every word once", async () => {
    const list = Array.from({ length: 2500 }, (_, index) => `word${index}`);
    const prose = `${list.slice(0, 1200).join(" ")}\n\n- ${list.slice(1200, 1800).join(" ")}\n\n> ${list.slice(1800).join(" ")}\n`;
    expect((await of(prose)).match(/\bword\d+\b/g)).toEqual(list);
  });

  test("code keeps its columns, and lines too long go on below", async () => {
    const data = await book(
      oneDay({ prose: `\`\`\`\nab   cd\n     ef\n${"x".repeat(300)}\n\`\`\`\n` }),
      { imprint: { sections: ["log"] } },
    );
    const pieces = (await pdfPieces(data)).flat();
    const at = (text: string) => pieces.find((piece) => piece.text === text)?.x ?? Number.NaN;
    expect(at("cd")).toBeGreaterThan(at("ab"));
    expect(at("ef")).toBeCloseTo(at("cd"), 3);
    const long = pieces.filter(({ text }) => /^x+$/.test(text)).map(({ text }) => text);
    expect(long.length).toBeGreaterThan(1);
    expect(long.join("")).toBe("x".repeat(300));
  });
});

describe("sections", () => {
  test("only those chosen are printed", async () => {
    const analysis = eventfulAnalysis();
    const parts = async (sections: BookImprint["sections"]) => {
      const document = await open(await book(analysis, { imprint: { sections } }));
      const titles = (await document.getOutline()).map(({ title }) => title);
      await document.destroy();
      return titles;
    };
    expect(await parts(["log"])).toEqual(["Log"]);
    expect(await parts(["cover", "hours"])).toEqual(["Cover", "Contents", "Hours"]);
    expect(await parts(["lots", "rules"])).toEqual(["Lots and instruments", "Drawings and rules"]);
    expect(await parts(bookSections)).toEqual([
      "Cover",
      "Contents",
      "Log",
      "Index by assembly",
      "Index by step",
      "Hours",
      "Help received",
      "Inspections",
      "Deviations from the drawings",
      "Lots and instruments",
      "Drawings and rules",
      "Seals of months",
      "Signatures",
    ]);
  });

  test("without the log, other parts name the entry in place of the page", async () => {
    const analysis = eventfulAnalysis();
    const sections = ["inspections"] as const;
    expect(await words(await book(analysis, { imprint: { sections } }))).toContain(
      "2026-03-14 entry 1",
    );
  });

  test("all help received stands in the book, with totals, whether there is a register or not", async () => {
    const at = (date: string, who: string, hours: string) => ({
      [`days/${date}.md`]: `---\ndate: ${date}\nsessions: [{ assembly: spar, step: W-1, who: [${who}], hours: "${hours}", kind: assemble }]\n---\nDrilled it.\n`,
    });
    const files = {
      "people.yaml": `${smallRegisters["people.yaml"]}  - { id: kit, name: Kit Marsh, role: paid help }\n  - { id: mo, name: Mo Reed, role: instruction }\n`,
      ...at("2026-03-14", "kit", "1:15"),
      ...at("2026-03-15", "kit, jon", "2:00"),
      ...at("2026-03-20", "kit", "0:20"),
      ...at("2026-03-21", "mo", "0:45"),
    };
    const register = `help:
  - { id: P-1, who: kit, kind: paid help, from: 2026-03-14, to: 2026-03-15, what: drove rivets, invoice: B-77 }
  - { id: P-2, who: kit, kind: paid help, from: 2026-03-15, what: set the tail }
`;
    const printed = async (more: Readonly<Record<string, string>>, edition: Edition) => {
      const { build } = readSmall({ ...files, ...more });
      if (!build) throw new Error("not read");
      const analysis = analyze(build, asOf("2026-12-31"));
      const { analysis: edited } =
        edition === "public" ? publicEdition(analysis, []) : privateEdition(analysis, []);
      return words(await book(edited, { edition, imprint: { sections: ["help"] } }));
    };
    const listed = await printed({ "help.yaml": register }, "private");
    // Two rows tell of the same session, which is in the total once: 1:15 + 2:00 + 0:20.
    expect(listed).toMatch(/P-1 2026-03-14 to 2026-03-15 .*drove rivets .*invoice B-77 – 3:15 –/);
    expect(listed).toMatch(/P-2 2026-03-15 .*set the tail .*– 2:00 –/);
    expect(listed).toMatch(/– 2026-03-20 entry 3 Kit Marsh W-1 .* – 0:20 – Total 3:35 –/);
    expect(listed).toMatch(
      /Unpaid help .* 2:00 – Total 2:00 – Instruction .*Mo Reed .*Total 0:45 –/,
    );
    expect(await printed({ "help.yaml": register }, "public")).not.toContain("B-77");
    const alone = await printed({}, "private");
    expect(alone).toContain("Total 3:35 –");
    expect(alone).toContain("Total 2:00 –");
    expect(alone).toContain("Total 0:45 –");
  });

  test("hours of a person and month lead to the pages of their entries", async () => {
    const at = (date: string, who: string) => ({
      [`days/${date}.md`]: `---\ndate: ${date}\nsessions: [{ assembly: spar, who: [${who}], hours: "1:00", kind: assemble }]\n---\n${"Drilled it. ".repeat(400)}\n`,
    });
    const { build } = readSmall({
      ...at("2026-03-14", "ada"),
      ...at("2026-03-15", "jon"),
      ...at("2026-03-16", "ada"),
    });
    if (!build) throw new Error("not read");
    const analysis = analyze(build, asOf("2026-12-31"));
    const pages = await pdfPieces(
      await book(analysis, { imprint: { sections: ["log", "hours"] } }),
    );
    const [first, second, last] = announced(pages).map(({ page }) => page);
    expect(new Set([first, second, last]).size).toBe(3);
    const led = pages.flat().flatMap(({ text }) => /^p\. (.*)$/.exec(text)?.[1] ?? []);
    expect(led.map(named)).toEqual([[first, last], [second]]);
    const alone = await words(await book(analysis, { imprint: { sections: ["hours"] } }));
    expect(alone).not.toContain("p. ");
  });

  test("gaps and contradictions of tasks stand before the list of all tasks", async () => {
    const analysis = portionAnalysis(
      `${splitsOf("F1 kit 1, source: x", "F2 paid 0.5, assembly 0.5", "F3 assembly 1")}claims: [{ task: F1, steps: [W-1] }]\n`,
      taskList("F1", "F2", "F3"),
    );
    const sections = ["log", "index"] as const;
    const text = await words(await book(analysis, { imprint: { sections } }));
    const after = text.slice(text.indexOf("Tasks of the list"));
    const gaps = after.indexOf("Gaps and contradictions");
    const all = after.indexOf("All tasks");
    expect(gaps).toBeGreaterThan(0);
    expect(all).toBeGreaterThan(gaps);
    const wanting = after.slice(gaps, all);
    expect(wanting).toMatch(/ F2 .* F3 /);
    expect(wanting).not.toContain("F1");
    expect(after.slice(all)).toMatch(/ F1 .* F2 .* F3 /);
  });

  test("an index of tasks is printed when there is a sheet, with the pages of the evidence", async () => {
    const at = (date: string) =>
      `---\ndate: ${date}\nsessions: [{ assembly: spar, step: W-1, who: [ada], hours: "1:00", kind: assemble }]\n---\n${"Drilled it. ".repeat(400)}\n`;
    const analysis = portionAnalysis(
      `${splitsOf("F1 assembly 1", "F2 assembly 1", "F3 kit 1, source: x")}claims: [{ task: F1, steps: [W-1] }]\n`,
      taskList("F1", "F2", "F3", "F4"),
      {
        "days/2026-03-14.md": at("2026-03-14"),
        "days/2026-03-15.md": "---\ndate: 2026-03-15\n---\nThought about it.\n",
        "days/2026-03-16.md": at("2026-03-16"),
      },
    );
    const pages = await pdfPieces(await book(analysis));
    const rows = indexRows(pages, "Index by checklist task");
    const [first, , last] = announced(pages);
    expect(rows.get("F1")).toEqual([first?.page, last?.page]);
    expect(first?.page).not.toBe(last?.page);
    expect([rows.get("F2"), rows.get("F3"), rows.get("F4")]).toEqual([[], [], []]);
    const text = pages.flat().map((piece) => piece.text);
    // Among the gaps and in the list of all tasks.
    expect(text.filter((piece) => piece === "no photograph")).toHaveLength(2);
    expect(text.join(" ")).toContain("2 of these lack");
    expect(text.join(" ")).toContain("not divided yet");
  });
});

test("sealed months carry their seals, in the log, on the cover and in a list", async () => {
  const digest = "fedcba9876543210".repeat(4);
  const seal = {
    month: "2026-03",
    designation: "SB-1",
    serial: "0001",
    version: "0.1.0",
    inMonth: { build: 60, apart: 0 },
    toDate: { build: 60, apart: 0 },
    entries: [{ path: "days/2026-03-14.md", digest }],
    photos: [],
    digest,
    span: span(),
    minutesSpan: span(),
  };
  const text = await words(await book(oneDay({ sessions: [session()] }, { seals: [seal] })));
  expect(text).toContain("1 entry, 1:00 hours of the build, sealed fedcba987654");
  expect(text).toContain("1; the newest is March 2026, fedcba987654");
  expect(text).toContain("fedcba98 76543210 fedcba98 76543210");
});

test("stretches without an entry are named, so that nobody looks for a lost page", async () => {
  const days = ["2026-03-01", "2026-03-08", "2026-03-16"].map((date) => day({ date }));
  const text = await words(await book(analyze(smallBuild({ days }), asOf("2026-03-20"))));
  expect(text).toContain("7 days without an entry");
  expect(text).not.toContain("6 days without an entry");
});

test("what is held is followed to its release", async () => {
  const build = eventfulBuild();
  const text = await words(await book(analyze(build, asOf("2026-03-25"))));
  expect(text).toContain("H-1 on HS-08: 24 clecos, row A; released 15 March 2026.");
  const open_ = oneDay({ holds: [hold({ count: 3 })] });
  expect(await words(await book(open_))).toContain("3 clecos. Still held.");
});

test("a build without a day is a book without entries", async () => {
  const text = await words(await book(analyze(smallBuild(), asOf("2026-03-20"))));
  expect(text).toContain("There are no entries.");
  expect(text).toContain("Hours of the build 0:00 (0 minutes)");
});

test.each([
  [[], ""],
  [[7], "7"],
  [[9, 7, 7], "7, 9"],
  [[3, 4], "3, 4"],
  [[3, 4, 5, 9, 10, 11, 12], "3–5, 9–12"],
])("pages %j are written %j", (pages, text) => {
  expect(pageRuns(pages)).toBe(text);
});
