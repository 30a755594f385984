// Colours as eyes see them: how far two lie apart, and what is left of them for eyes that lack a
// kind of cone. Written from the publications named at each function.

export type Rgb = readonly [red: number, green: number, blue: number];
export type Lab = readonly [L: number, a: number, b: number];

/** Kinds of eyes. */
export const eyes = ["normal", "protan", "deutan", "tritan"] as const;
export type Eyes = (typeof eyes)[number];

// G. M. Machado, M. M. Oliveira, L. A. F. Fernandes: A Physiologically-based Model for Simulation
// of Color Vision Deficiency, IEEE Transactions on Visualization and Computer Graphics 15 (2009),
// 1291-1298; matrices for severity 1.0, applied to linear RGB.
const machado: Readonly<Record<Exclude<Eyes, "normal">, readonly (readonly number[])[]>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** A hexadecimal colour as linear RGB, 0 to 1 (IEC 61966-2-1). */
export function linearRgb(hex: string): Rgb {
  const channel = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/** What eyes of a kind make of a colour; clipped to what a screen can show. */
export function seenBy(kind: Eyes, rgb: Rgb): Rgb {
  if (kind === "normal") return rgb;
  const clipped = (row: readonly number[] = []) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, each, index) => sum + each * (rgb[index] ?? 0), 0),
      ),
    );
  const [red, green, blue] = machado[kind];
  return [clipped(red), clipped(green), clipped(blue)];
}

/** CIE 1976 L*a*b* under D65. */
export function lab([r, g, b]: Rgb): Lab {
  const x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = (0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883;
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))];
}

/**
 * CIEDE2000 with all factors one, as in G. Sharma, W. Wu, E. N. Dalal: The CIEDE2000
 * Color-Difference Formula, Color Research and Application 30 (2005), 21-30.
 */
export function difference([L1, a1, b1]: Lab, [L2, a2, b2]: Lab): number {
  const degrees = (radians: number) => (radians * 180) / Math.PI;
  const radians = (angle: number) => (angle * Math.PI) / 180;
  const mean = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const G = 0.5 * (1 - Math.sqrt(mean ** 7 / (mean ** 7 + 25 ** 7)));
  const [p1, p2] = [a1 * (1 + G), a2 * (1 + G)];
  const [C1, C2] = [Math.hypot(p1, b1), Math.hypot(p2, b2)];
  const hue = (a: number, b: number) =>
    a === 0 && b === 0 ? 0 : (degrees(Math.atan2(b, a)) + 360) % 360;
  const [h1, h2] = [hue(p1, b1), hue(p2, b2)];
  const grey = C1 * C2 === 0;
  const gap = h2 - h1;
  const turn = grey ? 0 : gap > 180 ? gap - 360 : gap < -180 ? gap + 360 : gap;
  const dL = L2 - L1;
  const dC = C2 - C1;
  const dH = 2 * Math.sqrt(C1 * C2) * Math.sin(radians(turn / 2));
  const L = (L1 + L2) / 2;
  const C = (C1 + C2) / 2;
  const sum = h1 + h2;
  const h = grey
    ? sum
    : Math.abs(gap) <= 180
      ? sum / 2
      : sum < 360
        ? (sum + 360) / 2
        : (sum - 360) / 2;
  const T =
    1 -
    0.17 * Math.cos(radians(h - 30)) +
    0.24 * Math.cos(radians(2 * h)) +
    0.32 * Math.cos(radians(3 * h + 6)) -
    0.2 * Math.cos(radians(4 * h - 63));
  const SL = 1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2);
  const SC = 1 + 0.045 * C;
  const SH = 1 + 0.015 * C * T;
  const RC = 2 * Math.sqrt(C ** 7 / (C ** 7 + 25 ** 7));
  const RT = -Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2)))) * RC;
  return Math.sqrt((dL / SL) ** 2 + (dC / SC) ** 2 + (dH / SH) ** 2 + RT * (dC / SC) * (dH / SH));
}

/** Contrast of WCAG 2.2, 1 to 21. */
export function contrast(one: string, other: string): number {
  const luminance = (hex: string) => {
    const [r, g, b] = linearRgb(hex);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
