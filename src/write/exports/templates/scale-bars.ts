import type { Mark, Pen } from "../paper/sheet.ts";
import type { TemplateFormat } from "./template-paper.ts";
import { millimetre } from "./template-paper.ts";

const inch = 72;
const label = { face: "text", size: 6 } as const;

/** What has to be measured before a template is used. */
export const measureFirst =
  "Measure the bars before use: 100 mm and 4 in lying, 50 mm standing. If one of them is not true, do not use this sheet. Print at 100 %, without fitting to the page.";

/**
 * Bars to be measured on every sheet, along and across: a printer may shrink one way and not
 * the other.
 */
export function scaleBars({ bars, upright }: TemplateFormat): Mark {
  return (pen) => {
    const figure = pen.doc.struct("Figure", {
      alt: "Scale bars: 100 mm and 4 in lying, 50 mm standing",
      bbox: [upright.left, upright.top, bars.right, bars.bottom],
    });
    pen.root.add(figure);
    figure.add(() => {
      lying(pen, bars.left + 6 * millimetre, bars.top + 9 * millimetre);
      standing(pen, upright.left + 6.5 * millimetre, upright.bottom - 8 * millimetre);
    });
    figure.end();
  };
}

// Millimetres above the line, inches below it, both from the same zero.
function lying({ doc, setter }: Pen, x: number, y: number): void {
  doc.lineWidth(0.5);
  doc
    .moveTo(x, y)
    .lineTo(x + 4 * inch, y)
    .stroke();
  for (let step = 0; step <= 100; step += 5) {
    const tall = step % 50 === 0 ? 9 : step % 10 === 0 ? 6 : 3;
    doc
      .moveTo(x + step * millimetre, y)
      .lineTo(x + step * millimetre, y - tall)
      .stroke();
  }
  for (let eighth = 0; eighth <= 32; eighth += 1) {
    const tall = eighth % 8 === 0 ? 9 : eighth % 4 === 0 ? 6 : 3;
    doc
      .moveTo(x + (eighth * inch) / 8, y)
      .lineTo(x + (eighth * inch) / 8, y + tall)
      .stroke();
  }
  const write = (text: string, at: number, base: number) => {
    const line = setter.line(text, label);
    setter.draw(line, at - line.width / 2, base);
  };
  write("0", x, y - 11);
  write("50", x + 50 * millimetre, y - 11);
  write("100 mm", x + 100 * millimetre, y - 11);
  for (const each of [1, 2, 3]) write(`${each}`, x + each * inch, y + 15.5);
  write("4 in", x + 4 * inch, y + 15.5);
}

function standing({ doc, setter }: Pen, x: number, foot: number): void {
  doc.lineWidth(0.5);
  doc
    .moveTo(x, foot)
    .lineTo(x, foot - 50 * millimetre)
    .stroke();
  for (let step = 0; step <= 50; step += 5) {
    const y = foot - step * millimetre;
    const long = step % 50 === 0 ? 8 : step % 10 === 0 ? 5 : 3;
    doc
      .moveTo(x, y)
      .lineTo(x - long, y)
      .stroke();
  }
  setter.draw(setter.line("0", label), x + 2, foot + 2);
  setter.draw(setter.line("50", label), x + 1.5, foot - 50 * millimetre + 2);
  setter.draw(setter.line("mm", label), x + 1.5, foot - 50 * millimetre + 9);
}
