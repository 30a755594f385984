import type { CutOut, FastenerRow, StatedLength } from "../../../model/layout.ts";
import type { Quantity } from "../../../model/quantity.ts";
import type { Template } from "../../../present/templates/template.ts";
import type { Pen } from "../paper/sheet.ts";
import type { Box } from "../paper/sheet-format.ts";
import { millimetre } from "./template-paper.ts";

/**
 * A part at full size. Its own zero is the left end of a row on the row's line, or the middle of
 * a cut-out; points count to the right and downwards.
 */
export interface PartDrawing {
  /** Everything that has to be on paper. */
  readonly bounds: Box;
  /** Draws it with its zero at a place of the sheet. */
  readonly draw: (pen: Pen, x: number, y: number) => void;
}

const line = { firm: 0.7, fine: 0.3, faint: 0.25 } as const;
const words = { face: "small", size: 7 } as const;
const cross = 3.2 * millimetre;
/** Room kept free around a part. */
const around = 7 * millimetre;
/** How far a piece is drawn to a side of which nothing is said. */
const unsaid = 11 * millimetre;

/** The part of a template, drawn at full size. */
export function partDrawing(template: Template): PartDrawing {
  return template.row
    ? rowDrawing(
        template.piece,
        template.row.positions.map((place) => pointsOf(place, template.piece)),
      )
    : cutOutDrawing(template.piece);
}

/** A length in points of 1/72 in. */
export function inPoints({ amount, unit }: Quantity): number {
  return Number(amount.mul(unit.factor).mul(72).div("0.0254"));
}

function pointsOf(amount: Quantity["amount"], { length }: FastenerRow): number {
  return inPoints({ ...length.length, amount });
}

function rowDrawing(piece: FastenerRow, places: readonly number[]): PartDrawing {
  const length = inPoints(piece.length.length);
  const side = piece.side && inPoints(piece.side.length);
  const width = piece.width && inPoints(piece.width.length);
  const near = side ?? unsaid;
  const far = side !== undefined && width !== undefined ? width - side : Math.max(near, unsaid);
  const hole = inPoints(piece.hole?.length ?? piece.diameter) / 2;
  const pitch = places.length > 1 ? (places[1] ?? 0) - (places[0] ?? 0) : length;
  const every = [1, 2, 5, 10, 20, 50, 100].find((each) => each * pitch > 5 * millimetre) ?? 100;
  return {
    bounds: { left: -around, right: length + around, top: -far - around, bottom: near + around },
    draw: ({ doc, setter }, x, y) => {
      const rule = (weight: number, from: Point, to: Point, dash?: readonly number[]) => {
        doc.lineWidth(weight);
        if (dash) doc.dash(dash[0] ?? 1, { space: dash[1] ?? 1 });
        doc
          .moveTo(x + from[0], y + from[1])
          .lineTo(x + to[0], y + to[1])
          .stroke();
        if (dash) doc.undash();
      };
      for (const { from, to, clear } of piece.keepOuts) {
        const [start, end] = [inPoints(from), inPoints(to)];
        hatched(doc, { left: x + start, right: x + end, top: y - far, bottom: y + near });
        const margin = clear && inPoints(clear.length);
        if (margin === undefined) continue;
        for (const edge of [start - margin, end + margin])
          rule(line.faint, [edge, -far], [edge, near], [2, 2]);
      }
      rule(line.firm, [0, -far], [0, near]);
      rule(line.firm, [length, -far], [length, near]);
      const open = [1, 3] as const;
      rule(
        side === undefined ? line.faint : line.firm,
        [0, near],
        [length, near],
        side === undefined ? open : undefined,
      );
      const ends = side !== undefined && width !== undefined;
      rule(ends ? line.firm : line.faint, [0, -far], [length, -far], ends ? undefined : open);
      rule(line.faint, [0, 0], [length, 0], [6, 2]);
      places.forEach((place, index) => {
        rule(line.fine, [place - cross, 0], [place + cross, 0]);
        rule(line.fine, [place, -cross], [place, cross]);
        doc
          .lineWidth(line.fine)
          .circle(x + place, y, hole)
          .stroke();
        const isEnd = index === 0 || index === places.length - 1;
        if (!isEnd && (index + 1) % every !== 0) return;
        const number = setter.line(`${index + 1}`, words);
        setter.draw(number, x + place + 1.5, y - cross - 1.5);
      });
      piece.keepOuts.forEach(({ from, to, what }, index) => {
        const text = setter.line(`K${index + 1}${what === undefined ? "" : `: ${what}`}`, words);
        const middle = x + (inPoints(from) + inPoints(to)) / 2;
        setter.draw(text, middle - text.width / 2, y - far - 3);
      });
      setter.draw(setter.line("left end", words), x + 2, y + near + 8);
      const right = setter.line("right end", words);
      setter.draw(right, x + length - right.width - 2, y + near + 8);
    },
  };
}

type Point = readonly [x: number, y: number];

function cutOutDrawing({ shape, length, width, corner, cornerHole }: CutOut): PartDrawing {
  const [w, h, r] = [length, width, corner].map((each) => inPoints(each.length) / 2);
  const [across = 0, down = 0, radius = 0] = [w, h, (r ?? 0) * 2];
  const reach = 4 * millimetre;
  return {
    bounds: {
      left: -across - around,
      right: across + around,
      top: -down - around,
      bottom: down + around,
    },
    draw: ({ doc, setter }, x, y) => {
      doc.lineWidth(line.firm);
      if (shape === "circle") doc.circle(x, y, across).stroke();
      else doc.roundedRect(x - across, y - down, 2 * across, 2 * down, radius).stroke();
      doc.lineWidth(line.faint).dash(6, { space: 2 });
      doc
        .moveTo(x - across - reach, y)
        .lineTo(x + across + reach, y)
        .stroke();
      doc
        .moveTo(x, y - down - reach)
        .lineTo(x, y + down + reach)
        .stroke();
      doc.undash();
      for (const [left, top] of cornersOf(shape, across - radius, down - radius)) {
        doc.lineWidth(line.fine);
        doc
          .moveTo(x + left - cross, y + top)
          .lineTo(x + left + cross, y + top)
          .stroke();
        doc
          .moveTo(x + left, y + top - cross)
          .lineTo(x + left, y + top + cross)
          .stroke();
        if (cornerHole) doc.circle(x + left, y + top, radius).stroke();
      }
      const text = setter.line(sizeWords(shape, length, width, corner, cornerHole), words);
      setter.draw(text, x + 6, y - 6);
    },
  };
}

// The centres that the outline is struck from.
function cornersOf(shape: CutOut["shape"], across: number, down: number): Point[] {
  if (shape === "circle") return [[0, 0]];
  if (shape === "slot")
    return [
      [-across, 0],
      [across, 0],
    ];
  return [
    [-across, -down],
    [across, -down],
    [-across, down],
    [across, down],
  ];
}

function sizeWords(
  shape: CutOut["shape"],
  length: StatedLength,
  width: StatedLength,
  corner: StatedLength,
  hole: StatedLength | undefined,
): string {
  if (shape === "circle") return `dia. ${length.typed}`;
  const radius = hole ? `corners drilled ${hole.typed} first` : `R ${corner.typed}`;
  return `${length.typed} × ${width.typed}, ${shape === "slot" ? "round ends" : radius}`;
}

function hatched(doc: PDFKit.PDFDocument, { left, top, right, bottom }: Box): void {
  doc.save();
  doc.rect(left, top, right - left, bottom - top).clip();
  doc.lineWidth(line.faint);
  const height = bottom - top;
  for (let x = left - height; x < right; x += 4) doc.moveTo(x, bottom).lineTo(x + height, top);
  doc.stroke();
  doc.restore();
  doc
    .lineWidth(line.fine)
    .rect(left, top, right - left, height)
    .stroke();
}
