import type { CutOut } from "../../../model/layout.ts";
import { lengthText } from "../../format/layout-lengths.ts";

/** A cut-out drawn to scale. All numbers are in pixels from the top left. */
export interface CutOutDrawing {
  readonly kind: "cut-out";
  readonly width: number;
  readonly height: number;
  /** The sheet around it, of which no edge is drawn. */
  readonly sheet: Rectangle;
  /** Outline of the opening. */
  readonly outline: string;
  readonly centre: readonly [x: number, y: number];
  /** Half of its length and of its width, for the centre lines. */
  readonly reach: readonly [x: number, y: number];
  /** Holes drilled in the corners first. */
  readonly holes: readonly { readonly x: number; readonly y: number; readonly r: number }[];
  readonly along: {
    readonly from: number;
    readonly to: number;
    readonly y: number;
    readonly text: string;
  };
  /** Absent for a circle, which one dimension describes. */
  readonly across?: {
    readonly from: number;
    readonly to: number;
    readonly x: number;
    readonly text: string;
  };
  /** A leader to the corner, and what is written at its end. */
  readonly leader?: {
    readonly path: string;
    readonly lines: readonly { readonly text: string; readonly x: number; readonly y: number }[];
  };
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const frame = 320;
const room = { width: 196, height: 136 } as const;
const left = 26;
const top = 22;

/** Draws a cut-out. */
export function cutOutDrawing({ shape, length, width, corner, cornerHole }: CutOut): CutOutDrawing {
  const [long, wide] = [length, width].map((each) => metres(each.length));
  const scale = Math.min(room.width / (long ?? 1), room.height / (wide ?? 1));
  const [w, h] = [tenth((long ?? 1) * scale), tenth((wide ?? 1) * scale)];
  const r = Math.min(tenth(metres(corner.length) * scale), w / 2, h / 2);
  const box = { x: left + tenth((room.width - w) / 2), y: top, width: w, height: h };
  const right = tenth(box.x + w);
  const bottom = tenth(box.y + h);
  const centre = [tenth(box.x + w / 2), tenth(box.y + h / 2)] as const;
  const radius = lengthText(corner.length.amount, corner.length.unit.symbol);
  const words =
    shape === "circle"
      ? []
      : shape === "slot"
        ? ["ends rounded", `R ${radius}`]
        : [`R ${radius}`, "4 corners"];
  return {
    kind: "cut-out",
    width: frame,
    height: Math.ceil(bottom + 46),
    sheet: {
      x: box.x - 18,
      y: box.y - 18,
      width: w + 36,
      height: h + 36,
    },
    outline: outlineOf(box, r),
    centre,
    reach: [tenth(w / 2), tenth(h / 2)],
    holes: cornerHole
      ? [box.x + r, right - r].flatMap((x) =>
          [box.y + r, bottom - r].map((y) => ({ x: tenth(x), y: tenth(y), r })),
        )
      : [],
    along: {
      from: box.x,
      to: right,
      y: bottom + 32,
      text: shape === "circle" ? `dia. ${length.typed}` : length.typed,
    },
    ...(shape === "circle"
      ? {}
      : { across: { from: box.y, to: bottom, x: right + 32, text: width.typed } }),
    ...(words.length > 0 ? { leader: leaderOf(box, r, centre, words) } : {}),
  };
}

// Clockwise from the end of the upper left corner, with arcs that are exact quarters.
function outlineOf({ x, y, width, height }: Rectangle, r: number): string {
  const [across, down] = [tenth(width - 2 * r), tenth(height - 2 * r)];
  const arc = (dx: number, dy: number) => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return [
    `M${tenth(x + r)} ${y}h${across}${arc(r, r)}`,
    `v${down}${arc(-r, r)}`,
    `h${-across}${arc(-r, -r)}`,
    `v${-down}${arc(r, -r)}z`,
  ].join("");
}

// From the middle of the upper left arc to words inside, above the centre line.
function leaderOf(
  box: Rectangle,
  r: number,
  [middle, waist]: readonly [number, number],
  words: readonly string[],
): NonNullable<CutOutDrawing["leader"]> {
  const inset = r * (1 - Math.SQRT1_2);
  const from = [tenth(box.x + inset), tenth(box.y + inset)] as const;
  const y = tenth(Math.max(box.y + 24, waist - 18));
  const x = tenth(middle);
  return {
    path: `M${from[0]} ${from[1]}L${tenth(x - 38)} ${tenth(y - 4)}h6`,
    lines: words.map((text, index) => ({ text, x: tenth(x - 28), y: y + index * 15 })),
  };
}

// Only for drawing: comparisons are made exactly, elsewhere.
function metres({ amount, unit }: CutOut["length"]["length"]): number {
  return Number(amount.mul(unit.factor));
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
