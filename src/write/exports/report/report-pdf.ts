import { hoursText } from "../../../present/format/hours.ts";
import type { MonthReport, ReportPhoto } from "../../../present/report/month-report.ts";
import { hoursOrDash } from "../logbook/wording.ts";
import { Pages } from "../paper/pages.ts";
import type { PaperColumn } from "../paper/paper-table.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import { drawLines } from "../paper/sheet.ts";
import { type SheetFormat, sheetFormat } from "../paper/sheet-format.ts";
import { planTitleBlock } from "../paper/title-block.ts";
import type { Typesetter } from "../paper/typesetter.ts";

/** As wide as A4 and as tall as Letter: printed on either at full size. */
export function reportFormat(): SheetFormat {
  const [a4, letter] = [sheetFormat("A4"), sheetFormat("Letter")];
  const narrow = { left: a4.frame.left, right: a4.frame.right };
  return {
    ...letter,
    width: a4.width,
    frame: { ...letter.frame, ...narrow },
    band: { ...letter.band, ...narrow },
    body: { ...letter.body, ...narrow },
    titleBlock: { ...letter.titleBlock, ...narrow },
  };
}

/** How much of each list is printed; what does not fit is counted instead. */
interface Room {
  readonly assemblies: number;
  readonly days: number;
  readonly lines: number;
  readonly photoHeight: number;
}

// From generous to tight: the first that leaves one sheet is taken.
const rooms: readonly Room[] = [
  { assemblies: 12, days: 31, lines: 8, photoHeight: 118 },
  { assemblies: 10, days: 31, lines: 6, photoHeight: 84 },
  { assemblies: 8, days: 16, lines: 6, photoHeight: 100 },
  { assemblies: 8, days: 16, lines: 4, photoHeight: 76 },
  { assemblies: 6, days: 12, lines: 4, photoHeight: 92 },
  { assemblies: 5, days: 9, lines: 3, photoHeight: 80 },
  { assemblies: 4, days: 6, lines: 2, photoHeight: 64 },
];

const small = { face: "small", size: 8.2 } as const;
const plain = { face: "text", size: 8.2 } as const;

/**
 * A month on one sheet. The same report gives the same bytes.
 * @param pictureBytes Gives a picture of the site by its url.
 * @throws Error when even the least of a month takes more than a sheet.
 */
export async function reportPdf(
  report: MonthReport,
  pictureBytes: (url: string) => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const format = reportFormat();
  const { setter, print } = await beginPdf(
    {
      title: `Progress report, ${report.title}, ${report.aircraft}`,
      subject: `${report.project}. ${report.edition}`,
      asOf: report.asOf,
      program: "Witness Mark",
    },
    format,
  );
  for (const room of rooms) {
    const pages = planned(report, room, { format, setter, pictureBytes });
    const [sheet] = pages.sheets;
    if (!sheet || pages.sheets.length > 1) continue;
    planTitleBlock(
      sheet,
      1,
      1,
      {
        aircraft: report.aircraft,
        project: report.project,
        book: "Progress report, public edition",
        edition: "public",
        asOf: report.asOf,
        digest: report.seal ?? "not sealed",
        digestLabel: "Seal of the month begins",
        caution: report.caution,
        figure: { label: "Hours this month", value: report.figure },
      },
      format,
      setter,
    );
    return print([sheet]);
  }
  throw new Error(`the report of ${report.month} does not fit on a sheet`);
}

interface Paper {
  readonly format: SheetFormat;
  readonly setter: Typesetter;
  readonly pictureBytes: (url: string) => Promise<Uint8Array>;
}

function planned(report: MonthReport, room: Room, paper: Paper): Pages {
  const { format, setter } = paper;
  const pages = new Pages(setter, format, "Progress report");
  pages.heading(report.title, 60, 24);
  pages.paragraph(report.sentence, { face: "bold", size: 9.4 });
  ruler(pages, report, setter);
  hoursTable(pages, report, room);
  daysTable(pages, report, room);
  if (report.photos.length > 0) photos(pages, report.photos, room, paper);
  halves(pages, report, room);
  return pages;
}

function ruler(pages: Pages, { ticks, from, to, sentence }: MonthReport, setter: Typesetter): void {
  const height = 34;
  pages.space(6);
  const { left, right } = pages.column;
  const base = pages.y + height;
  const words = [
    { line: setter.line(from, { face: "small", size: 7.4 }), x: left + 4, y: base + 9 },
  ];
  const end = setter.line(to, { face: "small", size: 7.4 });
  words.push({ line: end, x: right - 4 - end.width, y: base + 9 });
  pages.sheet.marks.push((pen) => {
    const { doc } = pen;
    const alt = `The days of the month as ticks, each as tall as its hours. ${sentence}`;
    const box: [number, number, number, number] = [left, base - height, right, base + 10];
    const figure = doc.struct("Figure", { alt, bbox: box });
    pen.root.add(figure);
    figure.add(() => {
      doc.lineWidth(0.8).moveTo(left, base).lineTo(right, base).stroke();
      for (const x of [left, right]) {
        doc
          .moveTo(x, base - 6)
          .lineTo(x, base + 6)
          .stroke();
      }
      doc.lineWidth(3.2);
      for (const tick of ticks) {
        const x = left + tick.at * (right - left);
        doc
          .moveTo(x, base)
          .lineTo(x, base - Math.max(3, tick.length * height))
          .stroke();
      }
      drawLines(pen.setter, words);
    });
    figure.end();
  });
  pages.space(height + 12);
}

function hoursTable(pages: Pages, report: MonthReport, { assemblies: most }: Room): void {
  const { kinds, assemblies, total } = report;
  const shown = assemblies.length > most ? assemblies.slice(0, most - 1) : assemblies;
  const rest = assemblies.slice(shown.length);
  const others = {
    title: `${rest.length} others`,
    byKind: kinds.map((_, at) => rest.reduce((sum, { byKind }) => sum + (byKind[at] ?? 0), 0)),
    build: rest.reduce((sum, { build }) => sum + build, 0),
  };
  const rows = [...shown, ...(rest.length > 0 ? [others] : []), total];
  const width = 52;
  pages.heading("Hours by assembly and kind", 60, 10.5);
  pages.table({
    title: "Hours by assembly and kind",
    columns: [
      words("Assembly", pages.width - width * (kinds.length + 1)),
      ...kinds.map((kind) => numbers(kind, width)),
      numbers("Building", width),
    ],
    rows: rows.map(({ title, byKind, build }, index) => {
      const bold = index === rows.length - 1;
      return {
        cells: [
          { text: title, bold },
          ...byKind.map((minutes) => ({ text: hoursOrDash(minutes), bold })),
          { text: hoursOrDash(build), bold: true },
        ],
      };
    }),
    filled: false,
    none: "no hours",
  });
}

function daysTable(pages: Pages, { days }: MonthReport, { days: most }: Room): void {
  const shown = days.length > most ? days.slice(0, most - 1) : days;
  const rest = days.slice(shown.length);
  const minutes = rest.reduce((sum, each) => sum + each.minutes, 0);
  pages.heading("Days", 50, 10.5);
  pages.table({
    title: "Days",
    columns: [words("Day", 44), words("What", pages.width - 44 - 52), numbers("Hours", 52)],
    rows: [
      ...shown.map(({ date, title, hours }) => ({
        cells: [{ text: date }, { text: title }, { text: hours }],
      })),
      ...(rest.length === 0
        ? []
        : [
            {
              cells: [
                { text: "later" },
                { text: `${rest.length} more, on the site` },
                { text: hoursText(minutes) },
              ],
            },
          ]),
    ],
    filled: false,
    none: "none",
  });
}

function photos(
  pages: Pages,
  all: readonly ReportPhoto[],
  { photoHeight }: Room,
  { setter, pictureBytes }: Paper,
): void {
  const gap = 8;
  const width = (pages.width - 2 * gap) / 3;
  pages.room(photoHeight + 28);
  pages.space(10);
  const top = pages.y;
  all.forEach((photo, index) => {
    const left = pages.column.left + index * (width + gap);
    pages.sheet.marks.push(async ({ doc, root, setter: pen }) => {
      const bytes = await pictureBytes(photo.url);
      const box: [number, number, number, number] = [left, top, left + width, top + photoHeight];
      const figure = doc.struct("Figure", { alt: photo.alt, bbox: box });
      root.add(figure);
      figure.add(() => {
        doc.save().rect(left, top, width, photoHeight).clip();
        doc.image(Buffer.from(bytes), left, top, {
          cover: [width, photoHeight],
          align: "center",
          valign: "center",
        });
        doc.restore();
        doc.lineWidth(0.5).rect(left, top, width, photoHeight).stroke();
      });
      figure.end();
      const caption = doc.struct("P");
      root.add(caption);
      const lines = setter.wrap(photo.caption, { face: "small", size: 7.4 }, width).slice(0, 2);
      caption.add(() =>
        drawLines(
          pen,
          lines.map((line, at) => ({ line, x: left, y: top + photoHeight + 9 + at * 8.6 })),
        ),
      );
      caption.end();
    });
  });
  pages.space(photoHeight + 14);
}

/** What was measured, what is open and what comes next, one below the other. */
function halves(pages: Pages, report: MonthReport, { lines: most }: Room): void {
  const { readings, outside, photographs, openAt, open, next } = report;
  pages.heading("Readings and photographs", 30, 10.5);
  pages.paragraph(`${readings} ${photographs}.`, plain);
  list(pages, outside, most, "outside");
  pages.heading(`Open on ${openAt}`, 30, 10.5);
  if (open.length === 0) pages.paragraph("Nothing.", plain);
  list(pages, open, most, "open");
  pages.heading("Next", 30, 10.5);
  if (next.length === 0) pages.paragraph("Nothing was noted on the last day.", plain);
  list(pages, next, most, "to do");
}

function list(pages: Pages, items: readonly string[], most: number, word: string): void {
  const shown = items.length > most ? items.slice(0, most - 1) : items;
  for (const item of shown) {
    pages.styled([{ text: `–  ${item}`, style: small }], { advance: 10.4, gap: 0.6 });
  }
  if (shown.length < items.length) {
    const more = items.length - shown.length;
    pages.styled([{ text: `–  and ${more} more ${word}`, style: small }], {
      advance: 10.4,
      gap: 0.6,
    });
  }
}

function words(heading: string, width: number): PaperColumn {
  return { heading, width, align: "left", face: "small" };
}

function numbers(heading: string, width: number): PaperColumn {
  return { heading, width, align: "right", face: "text" };
}
