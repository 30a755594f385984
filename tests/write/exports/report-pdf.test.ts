import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type MonthReport, monthReports } from "../../../src/present/report/month-report.ts";
import { reportFormat, reportPdf } from "../../../src/write/exports/report/report-pdf.ts";
import { writeReports } from "../../../src/write/exports/report/write-reports.ts";
import { open, pdfText } from "../../support/pdf-text.ts";
import { filesIn, scratchFolder } from "../../support/scratch-folder.ts";
import { shownJournal } from "../../support/shown-journal.ts";
import { plainJpeg } from "../../support/small-photos.ts";
import { entry, marchFile } from "../../support/temporary-journal.ts";

const [quiet] = monthReports(
  shownJournal({
    [marchFile]: entry(
      'sessions: [{ assembly: wing, who: [ada], hours: "1:30", kind: assemble }]\nnext: [paint it]\n',
    ),
  }),
);
if (!quiet) throw new Error("there is no report");
const pictures = () => plainJpeg(1, 480, 320);
const long = "A long line about what was done that day and why it took as long as it did".repeat(2);

/** A month with more of everything than a sheet can hold. */
const crowded: MonthReport = {
  ...quiet,
  kinds: ["fabricate", "assemble", "inspect", "rework", "study", "shop"],
  assemblies: Array.from({ length: 40 }, (_, at) => ({
    title: `Assembly ${at + 1}`,
    byKind: [60, 60, 60, 60, 60, 60],
    build: 240,
  })),
  total: { title: "Together", byKind: [2400, 2400, 2400, 2400, 2400, 2400], build: 9600 },
  days: Array.from({ length: 31 }, (_, at) => ({
    date: `Sat ${at + 1}`,
    title: long,
    hours: "5:00",
    minutes: 300,
  })),
  outside: Array.from({ length: 30 }, () => long),
  open: Array.from({ length: 30 }, () => long),
  next: Array.from({ length: 30 }, () => long),
  photos: Array.from({ length: 3 }, (_, at) => ({
    url: `photos/${at}.jpg`,
    width: 480,
    height: 320,
    alt: `Picture ${at}`,
    caption: long,
  })),
};

test.each([
  ["a quiet month", quiet],
  ["a month with more of everything than fits", crowded],
])("%s is one sheet, tagged, of a size that A4 and Letter both take", async (_, report) => {
  const bytes = await reportPdf(report, pictures);
  const document = await open(bytes);
  expect(document.numPages).toBe(1);
  const [, , width = 0, height = 0] = (await document.getPage(1)).view;
  expect(width).toBeLessThanOrEqual(595.28);
  expect(height).toBeLessThanOrEqual(792);
  expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
  await document.destroy();
  const { body } = reportFormat();
  expect(body.right).toBeLessThan(595);
});

test("what does not fit is counted, and the hours still add up", async () => {
  const [text = ""] = await pdfText(await reportPdf(crowded, pictures));
  const shown = [...text.matchAll(/Assembly \d+/g)].length;
  expect(text).toContain(`${40 - shown} others`);
  const [, more = "0"] = /(\d+) more, on the site/.exec(text) ?? [];
  expect([...text.matchAll(/Sat \d+/g)].length + Number(more)).toBe(31);
  expect(text).toMatch(/and \d+ more open/);
});

test("says the month, that it is the public edition, and that nothing is certified", async () => {
  const [text = ""] = await pdfText(await reportPdf(quiet, pictures));
  for (const words of ["March 2026", "1:30", "paint it", "public edition", "A small aeroplane"]) {
    expect(text).toContain(words);
  }
  expect(text).toContain("Nothing here is signed, certified or accepted");
  expect(text).not.toMatch(/approved/i);
});

test("the same report gives the same bytes, and is printed once", async () => {
  const folder = scratchFolder();
  const options = { cacheFolder: join(folder, "cache") };
  mkdirSync(join(folder, "one/photos"), { recursive: true });
  for (const { url } of crowded.photos) writeFileSync(join(folder, "one", url), await pictures());
  expect(await writeReports(join(folder, "one"), [crowded, quiet], options)).toBe(2);
  expect(await writeReports(join(folder, "two"), [crowded, quiet], options)).toBe(0);
  expect(filesIn(join(folder, "two"))).toEqual(["2026/03/report.pdf"]);
  const [a, b] = [await reportPdf(quiet, pictures), await reportPdf(quiet, pictures)];
  expect(Buffer.compare(a, b)).toBe(0);
});
