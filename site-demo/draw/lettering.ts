/**
 * Draughtsman's single-stroke letters on a grid 4 wide and 6 high, top left
 * at the origin. Each stroke is a run of points; `~` strokes are not needed:
 * bows are drawn with corners and rounded by the pen.
 */
const strokes: Readonly<Record<string, string>> = {
  A: "0,6 2,0 4,6|0.7,4 3.3,4",
  B: "0,6 0,0 2.8,0 3.6,0.8 3.6,2 2.8,3 0,3|2.8,3 4,3.8 4,5.2 3,6 0,6",
  C: "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5",
  D: "0,0 0,6 2.5,6 4,4.5 4,1.5 2.5,0 0,0",
  E: "4,0 0,0 0,6 4,6|0,3 3,3",
  F: "4,0 0,0 0,6|0,3 3,3",
  G: "4,1 3,0 1,0 0,1 0,5 1,6 3,6 4,5 4,3 2.4,3",
  H: "0,0 0,6|4,0 4,6|0,3 4,3",
  I: "2,0 2,6|1,0 3,0|1,6 3,6",
  J: "3.4,0 3.4,5 2.4,6 1,6 0,5",
  K: "0,0 0,6|4,0 0,3.6|1.4,2.6 4,6",
  L: "0,0 0,6 4,6",
  M: "0,6 0,0 2,3.4 4,0 4,6",
  N: "0,6 0,0 4,6 4,0",
  O: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0",
  P: "0,6 0,0 3,0 4,0.9 4,2.3 3,3.2 0,3.2",
  Q: "1,0 3,0 4,1 4,5 3,6 1,6 0,5 0,1 1,0|2.5,4.5 4.2,6.4",
  R: "0,6 0,0 3,0 4,0.9 4,2.2 3,3.1 0,3.1|2.2,3.1 4,6",
  S: "4,1 3,0 1,0 0,1 0,2.2 1,3 3,3 4,3.8 4,5 3,6 1,6 0,5",
  T: "0,0 4,0|2,0 2,6",
  U: "0,0 0,5 1,6 3,6 4,5 4,0",
  V: "0,0 2,6 4,0",
  W: "0,0 1,6 2,2.4 3,6 4,0",
  X: "0,0 4,6|4,0 0,6",
  Y: "0,0 2,3 4,0|2,3 2,6",
  Z: "0,0 4,0 0,6 4,6",
  "0": "1,0 3,0 4,1.2 4,4.8 3,6 1,6 0,4.8 0,1.2 1,0",
  "1": "0.8,1.2 2,0 2,6",
  "2": "0,1.2 1,0 3,0 4,1 4,2 0,6 4,6",
  "3": "0,0 4,0 2,2.4 3,2.6 4,3.6 4,5 3,6 1,6 0,5",
  "4": "3,6 3,0 0,4 4,4",
  "5": "3.8,0 0.4,0 0,2.8 1,2.3 3,2.3 4,3.3 4,5 3,6 1,6 0,5",
  "6": "3.6,0.4 2.6,0 1.2,0.4 0,2.4 0,5 1,6 3,6 4,5 4,3.6 3,2.7 1,2.7 0,3.6",
  "7": "0,0 4,0 1.4,6",
  "8": "1,0 3,0 3.8,0.9 3.8,2 3,2.8 1,2.8 0.2,2 0.2,0.9 1,0|1,2.8 0,3.8 0,5 1,6 3,6 4,5 4,3.8 3,2.8",
  "9": "4,2.4 3,3.3 1,3.3 0,2.4 0,1 1,0 3,0 4,1 4,3.6 2.8,5.6 1.4,6 0.4,5.6",
  "-": "0.8,3 3.2,3",
  ".": "1.9,5.8 2.1,6",
  ",": "2.1,5.6 1.6,6.8",
  "/": "4,-0.4 0,6.4",
  ":": "1.9,1.8 2.1,2|1.9,4.8 2.1,5",
  "°": "1.4,0 2.4,0 2.4,1 1.4,1 1.4,0",
  "+": "2,1.2 2,4.8|0.2,3 3.8,3",
  "'": "2,0 2,1.4",
  " ": "",
};

/**
 * Words as SVG strokes.
 *
 * @param x Left end of the line.
 * @param y Top of the capitals.
 * @param height Of the capitals.
 */
export function lettered(
  words: string,
  x: number,
  y: number,
  height: number,
  { color = "#20242a", pen = 0.12, slant = 0, sway = 0 } = {},
): string {
  const k = height / 6;
  let at = x;
  let path = "";
  for (const letter of words.toUpperCase()) {
    for (const stroke of (strokes[letter] ?? "").split("|")) {
      const points = stroke.split(" ").filter(Boolean);
      points.forEach((point, i) => {
        const [px = 0, py = 0] = point.split(",").map(Number);
        const wobble = sway ? Math.sin(at * 0.7 + py * 2.1) * sway * height : 0;
        path += `${i ? "L" : "M"}${(at + px * k + (6 - py) * k * slant).toFixed(2)} ${(y + py * k + wobble).toFixed(2)}`;
      });
    }
    at += letter === "." || letter === "'" || letter === ":" ? 3.4 * k : 5.6 * k;
  }
  return `<path d="${path}" fill="none" stroke="${color}" stroke-width="${(height * pen).toFixed(2)}" stroke-linecap="round" stroke-linejoin="round"/>`;
}

/** How wide the words come out. */
export function letteredWidth(words: string, height: number): number {
  return [...words].reduce(
    (sum, letter) => sum + (".':".includes(letter) ? 3.4 : 5.6) * (height / 6),
    0,
  );
}

const segments: Readonly<Record<string, string>> = {
  "0": "abcdef",
  "1": "bc",
  "2": "abged",
  "3": "abgcd",
  "4": "fgbc",
  "5": "afgcd",
  "6": "afgedc",
  "7": "abc",
  "8": "abcdefg",
  "9": "abcdfg",
  "-": "g",
  " ": "",
};

/**
 * A number as a seven-segment display shows it, as SVG; unlit segments show
 * faintly when `ghost` is a colour.
 *
 * @param x Right end of the number.
 */
export function sevenSegment(
  number: string,
  x: number,
  y: number,
  height: number,
  { color = "#16190f", ghost = "" } = {},
): string {
  const width = height * 0.52;
  const pen = height * 0.115;
  const places: { digit: string; dot: boolean; colon: boolean }[] = [];
  for (const c of number) {
    const last = places[places.length - 1];
    if (c === "." && last) last.dot = true;
    else if (c === ":" && last) last.colon = true;
    else places.push({ digit: c, dot: false, colon: false });
  }
  let out = "";
  places.forEach(({ digit, dot, colon }, i) => {
    const left = x - (places.length - i) * (width + height * 0.3);
    const bars: Record<string, [number, number, number, number]> = {
      a: [0.1, 0, 0.9, 0],
      g: [0.1, 0.5, 0.9, 0.5],
      d: [0.1, 1, 0.9, 1],
      f: [0, 0.08, 0, 0.42],
      e: [0, 0.58, 0, 0.92],
      b: [1, 0.08, 1, 0.42],
      c: [1, 0.58, 1, 0.92],
    };
    for (const [name, [x0, y0, x1, y1]] of Object.entries(bars)) {
      const on = (segments[digit] ?? "").includes(name);
      const stroke = on ? color : ghost;
      if (!stroke) continue;
      const lean = (v: number) => (1 - v) * height * 0.07;
      out += `<path d="M${(left + x0 * width + lean(y0)).toFixed(2)} ${(y + y0 * height).toFixed(2)}L${(left + x1 * width + lean(y1)).toFixed(2)} ${(y + y1 * height).toFixed(2)}" stroke="${stroke}" stroke-width="${pen.toFixed(2)}" stroke-linecap="round"/>`;
    }
    for (const at of [...(dot ? [1] : []), ...(colon ? [0.3, 0.72] : [])]) {
      out += `<circle cx="${(left + width + height * 0.14).toFixed(2)}" cy="${(y + height * (at === 1 ? 1.03 : at)).toFixed(2)}" r="${(pen * 0.66).toFixed(2)}" fill="${color}"/>`;
    }
  });
  return out;
}
