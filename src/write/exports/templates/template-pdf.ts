import type { TemplatePaper } from "../../../present/pages/template-files.ts";
import type { Template } from "../../../present/templates/template.ts";
import { inks } from "../paper/inks.ts";
import { beginPdf } from "../paper/pdf-document.ts";
import { type Mark, type Pen, type PlacedLine, Sheet, tagged, untagged } from "../paper/sheet.ts";
import type { Typesetter } from "../paper/typesetter.ts";
import { type PartDrawing, partDrawing } from "./part-drawing.ts";
import { measureFirst, scaleBars } from "./scale-bars.ts";
import { millimetre, type TemplateFormat, templateFormat } from "./template-paper.ts";
import { type Tile, type Tiling, tiling } from "./tiles.ts";

const overlap = 20 * millimetre;
const small = { face: "small", size: 8 } as const;
const tiny = { face: "small", size: 6.6 } as const;

/**
 * A layout at full size, to be printed, laid on the metal and marked through: over as many
 * sheets as it takes, with marks to lay them together by, and bars to be measured on each. The
 * same layout gives the same bytes.
 */
export async function templatePdf(template: Template, paper: TemplatePaper): Promise<Uint8Array> {
  const part = partDrawing(template);
  const { format, parted } = fewestSheets(part, paper);
  const { setter, print } = await beginPdf(
    {
      title: `${template.layout.title}, full size on ${paper}`,
      subject: `${template.project}, ${template.from}. ${template.summary}`,
      // The day of the entry: what is drawn does not depend on when it is.
      asOf: template.layout.date,
      program: "Witness Mark",
    },
    format.format,
  );
  const sheets = parted.tiles.map((tile, index) => {
    const sheet = new Sheet(template.layout.title, index > 0);
    sheet.around(format.frame, 1);
    sheet.across(format.frame.left, format.frame.right, format.block.top, 0.8);
    sheet.down(format.block.left, format.block.top, format.block.bottom, 0.5);
    sheet.down(format.area.left, format.area.top, format.area.bottom, 0.3);
    sheet.marks.push(
      ...titleBlock(template, format, index + 1, parted, setter),
      scaleBars(format),
      tileFigure(template, part, { format, parted, tile }),
    );
    return sheet;
  });
  return print(sheets);
}

interface Choice {
  readonly format: TemplateFormat;
  readonly parted: Tiling;
}

// Lying unless standing takes fewer sheets.
function fewestSheets({ bounds }: PartDrawing, paper: TemplatePaper): Choice {
  const whole = { width: bounds.right - bounds.left, height: bounds.bottom - bounds.top };
  const [lying, standing] = [true, false].map((isLying): Choice => {
    const format = templateFormat(paper, isLying);
    const { left, top, right, bottom } = format.area;
    return {
      format,
      parted: tiling(whole, { width: right - left, height: bottom - top }, overlap),
    };
  });
  if (!lying || !standing) throw new RangeError("a sheet lies or stands");
  return standing.parted.tiles.length < lying.parted.tiles.length ? standing : lying;
}

function titleBlock(
  template: Template,
  { block, bars }: TemplateFormat,
  number: number,
  { tiles }: Tiling,
  setter: Typesetter,
): Mark[] {
  const total = tiles.length;
  const width = block.right - block.left - 12;
  const x = block.left + 6;
  const lines: PlacedLine[] = [];
  let y = block.top + 14;
  const [head] = setter.wrap(template.layout.title, { face: "bold", size: 10 }, width - 76);
  if (head) lines.push({ line: head, x, y });
  const count = setter.line(`sheet ${number} of ${total}`, { face: "bold", size: 9 });
  const corner = { line: count, x: block.right - 6 - count.width, y };
  const put = (text: string, style: typeof small | typeof tiny, most: number) => {
    for (const line of setter.wrap(text, style, width).slice(0, most)) {
      y += style.size * 1.24;
      lines.push({ line, x, y });
    }
  };
  y += 1;
  put(`${template.aircraft}; ${template.from}; ${template.of}`, small, 1);
  put(template.summary, small, 2);
  if (total > 1) put(`Taped together: ${template.whole}. Measure it before use.`, small, 1);
  put(`${template.caution} The drawing governs; a template is an aid to marking out.`, tiny, 4);
  const warning = setter
    .wrap(measureFirst, { face: "bold", size: 6.8 }, bars.right - bars.left - 12)
    .map((line, index) => ({ line, x: bars.left + 6, y: bars.top + 59 + index * 9 }));
  const first = number === 1;
  // The other sheets repeat it, and are not read out again.
  const [title, ...rest] = lines;
  return [
    ...(first
      ? [tagged("H1", title ? [title] : []), tagged("P", rest), tagged("P", warning)]
      : [untagged([...lines, ...warning], "Pagination")]),
    tagged("P", [corner]),
  ];
}

interface Window extends Choice {
  readonly tile: Tile;
}

function tileFigure(template: Template, part: PartDrawing, window: Window): Mark {
  const { area } = window.format;
  return (pen) => {
    const { doc } = pen;
    const figure = doc.struct("Figure", {
      alt: `${template.layout.title} at full size${
        window.parted.tiles.length > 1 ? ", one part of it" : ""
      }. ${template.summary}`,
      bbox: [area.left, area.top, area.right, area.bottom],
    });
    pen.root.add(figure);
    figure.add(() => {
      const { x, y } = zeroOf(part, window);
      doc.save();
      doc.rect(area.left, area.top, area.right - area.left, area.bottom - area.top).clip();
      doc.strokeColor(inks.ink).fillColor(inks.ink);
      part.draw(pen, x, y);
      joins(pen, part, window);
      doc.restore();
    });
    figure.end();
  };
}

// Where the part's own zero is on the sheet. What fits is put in the middle.
function zeroOf({ bounds }: PartDrawing, { format: { area }, parted, tile }: Window) {
  const spare = (room: number, size: number, parts: number) => (parts > 1 ? 0 : (room - size) / 2);
  const across = spare(area.right - area.left, bounds.right - bounds.left, parted.columns);
  const down = spare(area.bottom - area.top, bounds.bottom - bounds.top, parted.rows);
  return {
    x: area.left + across - bounds.left - tile.left,
    y: area.top + down - bounds.top - tile.top,
  };
}

/** The lines on which two sheets meet, with two marks on each that have to cover each other. */
function joins({ doc, setter }: Pen, part: PartDrawing, window: Window): void {
  const { format, parted, tile } = window;
  const { area } = format;
  const { bounds } = part;
  const { x, y } = zeroOf(part, window);
  const inset = 5 * millimetre;
  const at = (column: number, row: number) => row * parted.columns + column + 1;
  const [top, bottom] = [
    Math.max(area.top, y + bounds.top) + inset,
    Math.min(area.bottom, y + bounds.bottom) - inset,
  ];
  const [left, right] = [
    Math.max(area.left, x + bounds.left) + inset,
    Math.min(area.right, x + bounds.right) - inset,
  ];
  parted.joinsAcross.forEach((join, index) => {
    if (index !== tile.column && index !== tile.column - 1) return;
    const place = x + bounds.left + join;
    const other = at(index === tile.column ? index + 1 : index, tile.row);
    dashed(doc, [place, top - inset], [place, bottom + inset]);
    for (const height of [top, bottom]) registerMark(doc, place, height);
    const text = setter.line(`join to sheet ${other}`, tiny);
    setter.draw(text, place + (index === tile.column ? -text.width - 9 : 9), bottom + inset - 2);
  });
  parted.joinsDown.forEach((join, index) => {
    if (index !== tile.row && index !== tile.row - 1) return;
    const place = y + bounds.top + join;
    const other = at(tile.column, index === tile.row ? index + 1 : index);
    dashed(doc, [left - inset, place], [right + inset, place]);
    for (const way of [left, right]) registerMark(doc, way, place);
    const text = setter.line(`join to sheet ${other}`, tiny);
    setter.draw(text, left + 14, place + (index === tile.row ? 8 : -3));
  });
}

function dashed(
  doc: PDFKit.PDFDocument,
  from: readonly [number, number],
  to: readonly [number, number],
): void {
  doc.lineWidth(0.3).dash(1, { space: 2 });
  doc.moveTo(from[0], from[1]).lineTo(to[0], to[1]).stroke();
  doc.undash();
}

/** A cross in a circle. */
function registerMark(doc: PDFKit.PDFDocument, x: number, y: number): void {
  const arm = 3.5 * millimetre;
  doc.lineWidth(0.35);
  doc
    .moveTo(x - arm, y)
    .lineTo(x + arm, y)
    .stroke();
  doc
    .moveTo(x, y - arm)
    .lineTo(x, y + arm)
    .stroke();
  doc.circle(x, y, 2 * millimetre).stroke();
}
