import type { EnvelopeChart, EnvelopeMark } from "../../../present/pages/views/envelope-chart.ts";
import { faintRule, inks, wash } from "../paper/inks.ts";
import type { Pages } from "../paper/pages.ts";
import type { Pen, PlacedLine } from "../paper/sheet.ts";
import { drawLines } from "../paper/sheet.ts";
import type { Box } from "../paper/sheet-format.ts";
import type { Typesetter } from "../paper/typesetter.ts";

const height = 230;
const label = { face: "text", size: 6.6 } as const;
const number = { face: "bold", size: 7.4 } as const;

/** The envelope chart on paper: one figure with its words, drawn in black so that it copies. */
export function envelopeFigure(pages: Pages, chart: EnvelopeChart, setter: Typesetter): void {
  pages.room(height + 50);
  pages.space(14);
  const { left } = pages.column;
  const box = { left: left + 30, top: pages.y, right: pages.right, bottom: pages.y + height };
  const lines = labelsOf(chart, box, setter);
  pages.sheet.marks.push((pen) => {
    const figure = pen.doc.struct("Figure", { alt: chart.summary });
    pen.root.add(figure);
    figure.add(() => {
      drawChart(pen, chart, box);
      drawLines(pen.setter, lines);
    });
    figure.end();
  });
  pages.space(height + 16);
  pages.paragraph(
    `Upwards the weight (${chart.units.weight}), to the right the centre of gravity aft of the datum (${chart.units.arm}). A dot is a loading case with its number, a cross one outside the limits, the square E the empty aircraft. The tables hold the same numbers.`,
    { face: "small", size: 7.6 },
  );
}

function placeIn({ left, top, right, bottom }: Box) {
  return {
    x: (thousandths: number) => left + ((right - left) * thousandths) / 1000,
    y: (thousandths: number) => top + ((bottom - top) * thousandths) / 1000,
  };
}

function labelsOf(chart: EnvelopeChart, box: Box, setter: Typesetter): PlacedLine[] {
  const { x, y } = placeIn(box);
  return [
    ...chart.weights.map((each) => {
      const line = setter.line(each.label, label);
      return { line, x: box.left - 5 - line.width, y: y(each.y) + 2.4 };
    }),
    ...chart.arms.map((each) => {
      const line = setter.line(each.label, label);
      return { line, x: x(each.x) - line.width / 2, y: box.bottom + 10 };
    }),
    ...chart.marks.map((mark) => {
      const line = setter.line(mark.label, number);
      const at = mark.late ? x(mark.x) - 6 - line.width : x(mark.x) + 6;
      return { line, x: at, y: y(mark.y) - 3 };
    }),
  ];
}

function drawChart({ doc }: Pen, chart: EnvelopeChart, box: Box): void {
  const { x, y } = placeIn(box);
  const points = (corners: string) =>
    corners.split(" ").map((corner) => {
      const [left = 0, top = 0] = corner.split(",").map(Number);
      return [x(left), y(top)] as const;
    });
  if (chart.area !== undefined) {
    doc.polygon(...points(chart.area).map(([left, top]) => [left, top])).fill(wash);
  }
  doc.lineWidth(0.3).strokeColor(faintRule);
  for (const each of chart.weights) {
    doc.moveTo(box.left, y(each.y)).lineTo(box.right, y(each.y)).stroke();
  }
  for (const each of chart.arms) {
    doc.moveTo(x(each.x), box.top).lineTo(x(each.x), box.bottom).stroke();
  }
  doc.lineWidth(1.4).strokeColor(inks.ink);
  for (const line of chart.lines) {
    points(line).forEach(([left, top], index) => {
      if (index === 0) doc.moveTo(left, top);
      else doc.lineTo(left, top);
    });
    doc.stroke();
  }
  for (const mark of chart.marks) drawMark(doc, mark.kind, x(mark.x), y(mark.y));
  doc.fillColor(inks.ink).strokeColor(inks.ink);
}

function drawMark(doc: PDFKit.PDFDocument, kind: EnvelopeMark["kind"], x: number, y: number): void {
  if (kind === "inside") doc.circle(x, y, 2.6).fill(inks.ink);
  else if (kind === "empty") {
    doc
      .lineWidth(1)
      .rect(x - 2.6, y - 2.6, 5.2, 5.2)
      .fillAndStroke("#ffffff", inks.ink);
  } else {
    doc.lineWidth(1.6).strokeColor(inks.red);
    doc
      .moveTo(x - 3.4, y - 3.4)
      .lineTo(x + 3.4, y + 3.4)
      .stroke();
    doc
      .moveTo(x + 3.4, y - 3.4)
      .lineTo(x - 3.4, y + 3.4)
      .stroke();
  }
}
