// A template is laid on metal: what is measured here is what a ruler would find on the paper.

import { describe, expect, test } from "vitest";
import type { TemplatePaper } from "../../../../src/present/pages/template-files.ts";
import { templatePdf } from "../../../../src/write/exports/templates/template-pdf.ts";
import {
  type DrawnCurve,
  type DrawnPage,
  type Place,
  pdfPaths,
} from "../../../support/pdf-paths.ts";
import { open, pdfText } from "../../../support/pdf-text.ts";
import { templateFrom, templatesFrom } from "../../../support/templates.ts";

const papers: readonly TemplatePaper[] = ["A4", "Letter"];
/** Millimetres that a mark may be off. */
const near = 0.1;

const short = `
title: Upper flange
step: W-1
drawing: W-01 rev B
sheet: 0.032 in
row:
  length: 6.000 in
  fastener: AN470AD4-5
  edge: 2.5 D
  side: 0.30 in
  width: 0.75 in
  count: 12
  keep-outs: [{ from: 2.95 in, to: 3.05 in, clear: 0.05 in, what: stringer }]`;
const long = `
title: Main spar
row: { length: 96.238 in, diameter: 1/8 in, hole: No. 40, edge: 5 D, side: 0.32 in, count: 118 }`;
const hatch = `
title: Hatch
cut-out: { shape: rectangle, length: 8 in, width: 5 1/2 in, corner-hole: 7/8 in }`;

const sizeOf = ({ left, right }: DrawnCurve) => right - left;
const centreOf = ({ left, right, top, bottom }: DrawnCurve): Place => [
  (left + right) / 2,
  (top + bottom) / 2,
];
const circlesOf = ({ curves }: DrawnPage, diameter: number) =>
  curves.filter((curve) => Math.abs(sizeOf(curve) - diameter) < 0.02).map(centreOf);

/** Every mark of a row in millimetres from its left end, put together by the join marks alone. */
function together(pages: readonly DrawnPage[], hole: number): number[] {
  const found: number[] = [];
  let shift = 0;
  pages.forEach((page, index) => {
    const joins = [...new Set(circlesOf(page, 4).map(([x]) => x.toFixed(3)))]
      .map(Number)
      .sort((a, b) => a - b);
    const before = index > 0 ? joins[0] : undefined;
    const behind = index < pages.length - 1 ? joins.at(-1) : undefined;
    // `shift` is where the join lies on the whole.
    const whole = (x: number) => x - (before ?? leftEnd(page)) + shift;
    found.push(...circlesOf(page, hole).map(([x]) => whole(x)));
    if (behind !== undefined) shift = whole(behind);
  });
  return found
    .toSorted((a, b) => a - b)
    .filter((x, index, all) => x - (all[index - 1] ?? -9) > near);
}

/** The upright at the left end of the piece: the leftmost one that is neither frame nor bar. */
function leftEnd({ lines }: DrawnPage): number {
  const uprights = lines
    .filter(({ from, to }) => from[0] === to[0] && from[0] > 19.1 && Math.abs(from[1] - to[1]) > 8)
    .map(({ from }) => from[0]);
  return Math.min(...uprights);
}

describe.each(papers)("on %s", (paper) => {
  test("the marks of a row are where they have to be", async () => {
    const [page, ...more] = await pdfPaths(await templatePdf(templateFrom(short), paper));
    if (!page) throw new Error("no sheet");
    expect(more).toEqual([]);
    const end = leftEnd(page);
    const marks = circlesOf(page, 25.4 / 8);
    expect(marks).toHaveLength(12);
    marks.forEach(([x, y], index) => {
      const place = 0.3125 + (index * (6 - 2 * 0.3125)) / 11;
      expect(Math.abs(x - end - place * 25.4)).toBeLessThan(near);
      expect(Math.abs(y - (marks[0]?.[1] ?? 0))).toBeLessThan(0.001);
      // A cross through the centre, both ways.
      for (const way of [0, 1] as const) {
        const arms = page.lines.filter(
          ({ from, to }) =>
            from[way] === to[way] &&
            Math.abs((from[0] + to[0]) / 2 - x) < 0.01 &&
            Math.abs((from[1] + to[1]) / 2 - y) < 0.01,
        );
        expect(arms.length).toBeGreaterThan(0);
      }
    });
  });

  test("the edges of the piece lie as far from the row as they have to", async () => {
    const [page] = await pdfPaths(await templatePdf(templateFrom(short), paper));
    if (!page) throw new Error("no sheet");
    const [, line = 0] = circlesOf(page, 25.4 / 8)[0] ?? [];
    const across = page.lines
      .filter(
        ({ from, to }) => from[1] === to[1] && Math.abs(Math.abs(to[0] - from[0]) - 152.4) < near,
      )
      .map(({ from }) => from[1] - line)
      .toSorted((a, b) => a - b);
    const wanted = [-(0.75 - 0.3) * 25.4, 0, 0.3 * 25.4];
    expect(across).toHaveLength(3);
    across.forEach((y, index) => {
      expect(Math.abs(y - (wanted[index] ?? 99))).toBeLessThan(near);
    });
  });

  test("a long row comes together by its join marks", async () => {
    const pages = await pdfPaths(await templatePdf(templateFrom(long), paper));
    expect(pages).toHaveLength(paper === "A4" ? 10 : 11);
    const marks = together(pages, 0.098 * 25.4);
    expect(marks).toHaveLength(118);
    marks.forEach((x, index) => {
      const place = 0.625 + (index * (96.238 - 1.25)) / 117;
      expect(Math.abs(x - place * 25.4)).toBeLessThan(near);
    });
  });

  test("each join is on both of its sheets, with the strip around it", async () => {
    const pages = await pdfPaths(await templatePdf(templateFrom(long), paper));
    pages.forEach((page, index) => {
      const marks = circlesOf(page, 4);
      const sides = (index > 0 ? 1 : 0) + (index < pages.length - 1 ? 1 : 0);
      expect(marks).toHaveLength(2 * sides);
      for (const [x] of marks) expect(Math.min(x - 19, page.width - 8 - x)).toBeGreaterThan(9.9);
    });
  });

  test("a cut-out has its size, its corners and the holes drilled first", async () => {
    const [page, ...more] = await pdfPaths(await templatePdf(templateFrom(hatch), paper));
    if (!page) throw new Error("no sheet");
    expect(more).toEqual([]);
    const [outline, ...holes] = page.curves;
    expect(outline && sizeOf(outline)).toBeCloseTo(203.2, 1);
    expect(outline && outline.bottom - outline.top).toBeCloseTo(139.7, 1);
    expect(holes).toHaveLength(4);
    for (const hole of holes) {
      expect(sizeOf(hole)).toBeCloseTo(22.225, 1);
      const [x, y] = centreOf(hole);
      const [left, top] = [x - (outline?.left ?? 0), y - (outline?.top ?? 0)];
      for (const [place, size] of [
        [left, 203.2],
        [top, 139.7],
      ] as const)
        expect(Math.min(Math.abs(place - 11.1125), Math.abs(size - place - 11.1125))).toBeLessThan(
          near,
        );
    }
  });

  test("the bars are true: 100 mm and 4 in lying, 50 mm standing", async () => {
    const pages = await pdfPaths(await templatePdf(templateFrom(long), paper));
    for (const { lines } of pages) {
      const along = (size: number, way: 0 | 1) =>
        lines.filter(({ from, to }) => Math.abs(Math.abs(to[way] - from[way]) - size) < 0.01);
      const [lying] = along(101.6, 0);
      const [standing] = along(50, 1);
      if (!lying || !standing) throw new Error("a bar is missing");
      const zero = Math.min(lying.from[0], lying.to[0]);
      const foot = Math.max(standing.from[1], standing.to[1]);
      const ticks = lines.filter(
        ({ from, to }) => from[0] === to[0] && from[1] === lying.from[1] && to[1] !== from[1],
      );
      for (const wanted of [0, 5, 50, 95, 100, 25.4, 76.2, 101.6])
        expect(ticks.some(({ from }) => Math.abs(from[0] - zero - wanted) < near)).toBe(true);
      const rungs = lines.filter(
        ({ from, to }) => from[1] === to[1] && from[0] === standing.from[0],
      );
      for (const wanted of [0, 5, 25, 50])
        expect(rungs.some(({ from }) => Math.abs(foot - from[1] - wanted) < near)).toBe(true);
    }
  });

  test("every sheet says what it is and what to do before use", async () => {
    const texts = await pdfText(await templatePdf(templateFrom(long), paper));
    texts.forEach((text, index) => {
      const words = text.replace(/\s+/g, " ");
      expect(words).toContain(`sheet ${index + 1} of ${texts.length}`);
      expect(words).toContain("Measure the bars before use");
      expect(words).toContain("Print at 100 %, without fitting to the page");
      expect(words).toContain("Main spar");
      expect(words).toContain("layout 1 of 14 March 2026");
      expect(words).toContain("SM-1, serial 0001");
      expect(words).toContain("a licensed person govern");
      expect(words).toContain(
        "Taped together: 96.238 in from end to end, 94.988 in from the first mark to the last",
      );
      if (index > 0) expect(words).toContain(`join to sheet ${index}`);
    });
    const [page] = await pdfPaths(await templatePdf(templateFrom(long), paper));
    const [width, height] = paper === "A4" ? [297, 210] : [279.4, 215.9];
    expect([page?.width, page?.height].map((size) => size?.toFixed(1))).toEqual(
      [width, height].map((size) => size?.toFixed(1)),
    );
  });
});

test("the same layout gives the same bytes", async () => {
  const [one, two] = await Promise.all([
    templatePdf(templateFrom(short), "A4"),
    templatePdf(templateFrom(short), "A4"),
  ]);
  expect(Buffer.compare(Buffer.from(one), Buffer.from(two))).toBe(0);
});

test("the file has a title, a language, and its drawing in words", async () => {
  const document = await open(await templatePdf(templateFrom(short), "A4"));
  const { info } = await document.getMetadata();
  expect(info).toMatchObject({
    Title: "Upper flange, full size on A4",
    Creator: "Witness Mark",
    Language: "en",
  });
  const tree = JSON.stringify(await (await document.getPage(1)).getStructTree());
  expect(tree).toContain("Upper flange at full size. 12 × AN470AD4-5 (1/8 in), 0.4886 in apart");
  expect(tree).toContain("Scale bars: 100 mm and 4 in lying, 50 mm standing");
  expect(tree).toContain('"role":"H1"');
  await document.destroy();
});

test("a tall cut-out stands, and one larger than a sheet is parted both ways", async () => {
  const tall = await pdfPaths(
    await templatePdf(
      templateFrom("title: Tall\ncut-out: { shape: slot, length: 230 mm, width: 30 mm }"),
      "A4",
    ),
  );
  expect(tall.map(({ width }) => width.toFixed(0))).toEqual(["297"]);
  const standing = await pdfPaths(
    await templatePdf(
      templateFrom(
        "title: Tall\ncut-out: { shape: rectangle, length: 100 mm, width: 220 mm, corner: 10 mm }",
      ),
      "A4",
    ),
  );
  expect(standing.map(({ width }) => width.toFixed(0))).toEqual(["210"]);
  const large = await pdfPaths(
    await templatePdf(
      templateFrom("title: Large\ncut-out: { shape: circle, diameter: 20 in }"),
      "A4",
    ),
  );
  expect(large.length).toBeGreaterThanOrEqual(6);
  for (const page of large) {
    const outline = page.curves.find((curve) => Math.abs(sizeOf(curve) - 508) < 0.05);
    expect(outline && outline.bottom - outline.top).toBeCloseTo(508, 1);
    expect(circlesOf(page, 4).length).toBeGreaterThanOrEqual(4);
  }
});

test("a piece of which no side is known is drawn with open edges", async () => {
  const [page] = await pdfPaths(
    await templatePdf(
      templateFrom("title: A\nrow: { length: 4 in, diameter: 3/16 in, edge: 2 D, count: 1 }"),
      "A4",
    ),
  );
  if (!page) throw new Error("no sheet");
  const [mark, ...more] = circlesOf(page, (3 * 25.4) / 16);
  expect(more).toEqual([]);
  expect(Math.abs((mark?.[0] ?? 0) - leftEnd(page) - 50.8)).toBeLessThan(near);
});

describe("which layouts have a template", () => {
  const round = "title: Round\ncut-out: { shape: circle, diameter: 2 in }";
  const misfit = "title: Misfit\nrow: { length: 0.1 in, diameter: 1/8 in, edge: 2 D, count: 2 }";

  test("those that can be laid out", () => {
    expect(templatesFrom([round, misfit]).map(({ layout }) => layout.title)).toEqual(["Round"]);
  });

  test("in the public edition only those of public days", () => {
    expect(templatesFrom([round], "private: true\n")).toEqual([]);
    expect(templatesFrom([round], "private: true\n", "private")).toHaveLength(1);
  });
});
