import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { open } from "./pdf-text.ts";

/** A place on a page, in millimetres from its top left. */
export type Place = readonly [x: number, y: number];

/** A straight line that was drawn. */
export interface DrawnLine {
  readonly from: Place;
  readonly to: Place;
}

/** A closed path of curves, such as a circle, by what it fills. */
export interface DrawnCurve {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What is drawn on one page of a file, text left out. */
export interface DrawnPage {
  /** In millimetres. */
  readonly width: number;
  readonly height: number;
  readonly lines: readonly DrawnLine[];
  readonly curves: readonly DrawnCurve[];
}

const millimetre = 25.4 / 72;
type Matrix = readonly [number, number, number, number, number, number];

/** The lines and curves of every page, as a viewer would place them. */
export async function pdfPaths(data: Uint8Array): Promise<DrawnPage[]> {
  const document = await open(data);
  const pages: DrawnPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [left = 0, low = 0, right = 0, high = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const lines: DrawnLine[] = [];
    const curves: DrawnCurve[] = [];
    let matrix: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    fnArray.forEach((operator, index) => {
      const args: readonly unknown[] = argsArray[index] ?? [];
      if (operator === OPS.save) kept.push(matrix);
      else if (operator === OPS.restore) matrix = kept.pop() ?? matrix;
      else if (operator === OPS.transform) matrix = after(matrix, args as unknown as Matrix);
      else if (operator === OPS.constructPath) {
        const [data] = args[1] as [Float32Array | null];
        const place = (x = 0, y = 0): Place => {
          const [a, b, c, d, e, f] = matrix;
          return [
            (a * x + c * y + e - left) * millimetre,
            (high - (b * x + d * y + f)) * millimetre,
          ];
        };
        if (data) trace(data, place, lines, curves);
      }
    });
    pages.push({
      width: (right - left) * millimetre,
      height: (high - low) * millimetre,
      lines,
      curves,
    });
  }
  await document.destroy();
  return pages;
}

function after([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix {
  return [
    a * p + c * q,
    b * p + d * q,
    a * r + c * s,
    b * r + d * s,
    a * t + c * u + e,
    b * t + d * u + f,
  ];
}

// As pdf.js packs a path: 0 move, 1 line, 2 curve with two handles, 3 with one, 4 close.
function trace(
  data: Float32Array,
  place: (x?: number, y?: number) => Place,
  lines: DrawnLine[],
  curves: DrawnCurve[],
): void {
  let here: Place = [0, 0];
  let start: Place = here;
  let curved: Place[] = [];
  for (let at = 0; at < data.length; ) {
    const kind = data[at];
    if (kind === 4) {
      if (curved.length === 0) lines.push({ from: here, to: start });
      at += 1;
      continue;
    }
    const size = kind === 2 ? 7 : kind === 3 ? 5 : 3;
    const end = place(data[at + size - 2], data[at + size - 1]);
    if (kind === 0) start = end;
    else if (kind === 1) lines.push({ from: here, to: end });
    else curved = [...curved, here, end];
    here = end;
    at += size;
  }
  if (curved.length === 0) return;
  const [xs, ys] = [curved.map(([x]) => x), curved.map(([, y]) => y)];
  curves.push({
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  });
}
