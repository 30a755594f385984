import { type ShareSheet, shareSize } from "../../present/share/share-sheet.ts";
import type { Lettering } from "../lettering.ts";

// The light colours of layouts/assets/tokens.css: what shares a link shows it on any ground.
const colours = {
  ground: "#f6f3ea",
  vellum: "#fffdf7",
  ink: "#16222e",
  second: "#46535f",
  line: "#76828c",
  dye: "#21409a",
  redline: "#a3201a",
} as const;

const { width, height } = shareSize;
const frame = { left: 40, top: 40, right: width - 40, bottom: height - 40 } as const;
const ruler = { left: 90, right: width - 90, base: 428, tallest: 130 } as const;
const block = { top: 486 } as const;

/** A share sheet as an SVG drawing without a word of text: letters are outlines. */
export function sheetDrawing(sheet: ShareSheet, { path, widthOf }: Lettering): string {
  const shapes: string[] = [];
  const fill = (d: string, colour: string) => {
    if (d !== "") shapes.push(`<path d="${d}" fill="${colour}"/>`);
  };
  const rule = (d: string, colour: string, thick: number) =>
    shapes.push(`<path d="${d}" fill="none" stroke="${colour}" stroke-width="${thick}"/>`);
  const box = (x: number, y: number, w: number, h: number) => `M${x} ${y}h${w}v${h}h${-w}z`;

  fill(box(0, 0, width, height), colours.ground);
  fill(
    box(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
    colours.vellum,
  );
  rule(box(22, 22, width - 44, height - 44), colours.line, 1.5);
  rule(
    box(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
    colours.ink,
    3.5,
  );
  // Zones of the margin, as a drawing has them.
  for (let zone = 1; zone < 8; zone++) {
    const x = Math.round((width * zone) / 8);
    rule(`M${x} 22v18M${x} ${height - 40}v18`, colours.line, 1.5);
  }

  fill(
    path(sheet.over, { face: "small", size: 34, x: ruler.left, y: 112, width: 1010 }),
    colours.second,
  );
  const size = Math.min(104, (104 * 1020) / Math.max(1, widthOf(sheet.title, "caps", 104)));
  fill(
    path(sheet.title, {
      face: "caps",
      size: Math.max(56, size),
      x: ruler.left - 3,
      y: 212,
      width: 1024,
    }),
    colours.ink,
  );

  for (const { at, length } of sheet.ticks) {
    const x = round(ruler.left + at * (ruler.right - ruler.left));
    const tall = Math.max(10, Math.round(length * ruler.tallest));
    rule(`M${x} ${ruler.base}v${-tall}`, colours.dye, 9);
  }
  drawDimension(sheet, { path, widthOf }, fill, rule);

  rule(`M${frame.left} ${block.top}H${frame.right}`, colours.ink, 2.5);
  const columns = [frame.left, 500, 660, 1000] as const;
  sheet.cells.slice(0, 3).forEach(({ label, value }, index) => {
    const x = columns[index] ?? frame.left;
    const end = columns[index + 1] ?? frame.right;
    fill(path(label, { face: "small", size: 24, x: x + 22, y: block.top + 36 }), colours.second);
    fill(
      path(value, { face: "text", size: 29, x: x + 22, y: block.top + 76, width: end - x - 34 }),
      colours.ink,
    );
    rule(`M${end} ${block.top}V${frame.bottom}`, colours.line, 1.5);
  });
  // The mark: a nut with a stripe of paint across it.
  const [x, y] = [(1000 + frame.right) / 2, (block.top + frame.bottom) / 2];
  rule(
    `M${x} ${y - 34}l29 17v34l-29 17l-29 -17v-34zM${x - 17} ${y}a17 17 0 1 0 34 0a17 17 0 1 0 -34 0`,
    colours.ink,
    3,
  );
  rule(`M${x + 9} ${y - 40}L${x - 9} ${y + 40}`, colours.redline, 9);

  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${shapes.join("")}</svg>`;
}

function drawDimension(
  { figure, says, from, to }: ShareSheet,
  { path, widthOf }: Lettering,
  fill: (d: string, colour: string) => void,
  rule: (d: string, colour: string, thick: number) => void,
): void {
  const { left, right, base } = ruler;
  rule(`M${left} ${base}H${right}`, colours.ink, 2);
  rule(`M${left} ${base - 18}v36M${right} ${base - 18}v36`, colours.ink, 2);
  fill(`M${left} ${base}l20 -6v12zM${right} ${base}l-20 -6v12z`, colours.ink);
  fill(path(from, { face: "small", size: 26, x: left + 12, y: base + 42 }), colours.second);
  fill(
    path(to, { face: "small", size: 26, x: right - 12, y: base + 42, anchor: "end" }),
    colours.second,
  );
  const words = ` ${says}`;
  const wide = widthOf(figure, "bold", 34);
  const whole = wide + widthOf(words, "small", 30);
  const x = (left + right) / 2 - whole / 2;
  fill(path(figure, { face: "bold", size: 34, x, y: base + 44 }), colours.ink);
  fill(path(words, { face: "small", size: 30, x: x + wide, y: base + 44 }), colours.second);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
