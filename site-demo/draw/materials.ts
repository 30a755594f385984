import { layered, noise, scatter } from "./noise.ts";
import type { Pattern, Spot, Surface } from "./surface.ts";
import { hex, type Rgb, smoothstep } from "./vector.ts";

/** How much of a detail with so many bumps to the inch survives at this distance. */
function kept(inches: number, perInch: number): number {
  return 1 - smoothstep(0.25, 0.9, inches * perInch);
}

function tint(spot: Spot, by: number): void {
  spot.r *= by;
  spot.g *= by;
  spot.b *= by;
}

function blend(spot: Spot, to: Rgb, share: number): void {
  spot.r += (to[0] - spot.r) * share;
  spot.g += (to[1] - spot.g) * share;
  spot.b += (to[2] - spot.b) * share;
}

/** Does one pattern and then the next. */
export function both(first: Pattern, second: Pattern): Pattern {
  return (u, v, spot, inches) => {
    first(u, v, spot, inches);
    second(u, v, spot, inches);
  };
}

/** The fine lines of rolled or brushed metal, along u; `fineness` lines to the inch. */
export function brushed(seed: number, fineness = 26, strength = 1): Pattern {
  return (u, v, spot, inches) => {
    const coarse = kept(inches, fineness * 0.35);
    const fine = kept(inches, fineness);
    const streak =
      noise(u * fineness * 0.018, v * fineness * 0.35, seed) * 0.55 * coarse +
      noise(u * fineness * 0.05, v * fineness, seed + 3) * 0.45 * fine;
    const wave = noise(u * 0.11, v * 0.13, seed + 5);
    const smudge = layered(u * 0.5, v * 0.5, 3, seed + 7);
    spot.tiltV += streak * 0.05 * strength;
    spot.tiltU += wave * 0.008;
    spot.tiltV += noise(u * 0.09, v * 0.16, seed + 6) * 0.012;
    const near = kept(inches, 4);
    spot.roughness += smudge * 0.05 * near + Math.abs(streak) * 0.05 * strength;
    tint(spot, 1 + streak * 0.07 * strength + smudge * 0.025 * near);
  };
}

/** Bare sheet from the mill. */
export function aluminium(seed = 1, fineness = 26): Surface {
  return {
    color: [0.8, 0.81, 0.825],
    roughness: 0.3,
    metal: true,
    pattern: brushed(seed, fineness),
  };
}

/** Machined or extruded stock, a little darker and smoother than sheet. */
export function machined(seed = 2): Surface {
  return {
    color: [0.72, 0.73, 0.75],
    roughness: 0.24,
    metal: true,
    pattern: brushed(seed, 60, 0.7),
  };
}

export const steel: Surface = {
  color: [0.52, 0.53, 0.55],
  roughness: 0.25,
  metal: true,
  pattern: brushed(11, 50, 0.6),
};
export const darkSteel: Surface = { color: [0.2, 0.205, 0.215], roughness: 0.38, metal: true };
export const chrome: Surface = { color: [0.78, 0.79, 0.8], roughness: 0.1, metal: true };
export const brass: Surface = { color: hex("#c79a43"), roughness: 0.26, metal: true };
export const copper: Surface = { color: hex("#c2693a"), roughness: 0.28, metal: true };
export const cadmium: Surface = { color: hex("#c5b06a"), roughness: 0.3, metal: true };
export const rivetMetal: Surface = { color: [0.76, 0.77, 0.76], roughness: 0.27, metal: true };
export const goldRivet: Surface = { color: hex("#cdbb86"), roughness: 0.3, metal: true };

/** The trade's colours for the four sizes. */
export const clecoColor: Readonly<Record<string, Surface>> = {
  "3/32": { color: [0.74, 0.76, 0.79], roughness: 0.26, metal: true },
  "1/8": { color: hex("#c4673a"), roughness: 0.26, metal: true },
  "5/32": { color: [0.05, 0.052, 0.058], roughness: 0.3, metal: false },
  "3/16": { color: hex("#d0a244"), roughness: 0.25, metal: true },
};

/** Yellow-green primer, sprayed: a fine orange peel, thin at the edges. */
export function primer(seed = 3, shade = "#7f8a48"): Surface {
  return {
    color: hex(shade),
    roughness: 0.62,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const peel = kept(inches, 30);
      spot.tiltU += noise(u * 30, v * 30, seed) * 0.06 * peel;
      spot.tiltV += noise(u * 30, v * 30, seed + 1) * 0.06 * peel;
      const cloud = layered(u * 0.35, v * 0.35, 4, seed + 2);
      tint(spot, 1 + cloud * 0.14);
      spot.g *= 1 + noise(u * 0.2, v * 0.2, seed + 4) * 0.03;
    },
  };
}

/** Aluminium still in its blue-white protective film, with a few blisters and a stripe down the roll. */
export function filmed(seed = 4): Surface {
  return {
    color: hex("#8db4e6"),
    roughness: 0.34,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const wrinkle = layered(u * 0.6, v * 0.25, 4, seed);
      spot.tiltU += wrinkle * 0.05;
      spot.tiltV += layered(u * 0.3, v * 0.8, 4, seed + 9) * 0.05;
      tint(spot, 1 + wrinkle * 0.06);
      const across = Math.abs(((v / 3.2) % 1) + (v < 0 ? 1 : 0) - 0.5);
      blend(spot, hex("#6d9ad8"), smoothstep(0.46, 0.49, across) * 0.5 * kept(inches, 2));
      const blister = noise(u * 1.7, v * 1.7, seed + 3);
      if (blister > 0.62) spot.tiltU += (blister - 0.62) * 0.8 * noise(u * 6, v * 6, seed);
    },
  };
}

/** Boards along u, each with its own grain. */
export function boards(
  seed: number,
  { light = "#c89a62", dark = "#8f6236", width = 5.5, worn = 0.5, gap = true } = {},
): Surface {
  const [pale, deep] = [hex(light), hex(dark)];
  return {
    color: pale,
    roughness: 0.58,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const board = Math.floor(v / width);
      const own = scatter(board, seed);
      const across = v / width - board;
      const along = u + own * 340;
      const knotU = (along / 31 + own) % 1;
      // Rings bend round a knot that most boards carry somewhere.
      const ku = (knotU - 0.5) * 31;
      const kv = (across - 0.3 - own * 0.4) * width;
      const knot = Math.exp(-(ku * ku) / 9 - (kv * kv) / 1.6) * (own > 0.35 ? 1 : 0);
      const bend = layered(along * 0.045, v * 0.22 + own * 9, 3, seed + board) * 1.9 + knot * 2.6;
      const rings = (v * 1.15 + bend + own * 7) * 1.35;
      const ring = Math.abs((((rings % 1) + 1) % 1) - 0.5) * 2;
      const late = smoothstep(0.45, 0.98, ring) * kept(inches, 1.6);
      const fibre = noise(along * 0.55, v * 24, seed + 2) * kept(inches, 12);
      const pore = noise(along * 1.3, v * 55, seed + 5) * kept(inches, 28);
      blend(spot, deep, Math.min(0.9, late * 0.36 + knot * 0.5 + 0.12 + own * 0.16));
      tint(spot, 0.9 + own * 0.18 + fibre * 0.09 + pore * 0.07);
      spot.tiltV += fibre * 0.04 + pore * 0.05;
      const stain = layered(u * 0.09, v * 0.09, 4, seed + 31);
      tint(spot, 1 - smoothstep(0.18, 0.5, stain) * 0.28 * worn);
      const scratch = noise(u * 0.25 + v * 2.2, v * 5 - u * 0.9, seed + 51);
      if (scratch > 0.8) tint(spot, 1 - (scratch - 0.8) * worn * 1.2 * kept(inches, 4));
      spot.roughness += stain * 0.12 - 0.05;
      if (gap) {
        const edge = Math.min(across, 1 - across) * width;
        const dark = 1 - smoothstep(0.015, 0.06 + inches * 0.6, edge);
        tint(spot, 1 - 0.75 * dark * Math.min(1, 0.09 / (inches + 0.02)));
      }
    },
  };
}

/** Birch plywood or hardboard with a faint figure. */
export function plywood(seed: number, color = "#d2b083"): Surface {
  return {
    color: hex(color),
    roughness: 0.66,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const figure = layered(u * 0.05, v * 0.5, 4, seed);
      const band = Math.abs(((v * 0.35 + figure * 2.2) % 1) - 0.5);
      tint(spot, 0.94 + figure * 0.1 + band * 0.1);
      tint(spot, 1 + noise(u * 0.4, v * 20, seed + 2) * 0.05 * kept(inches, 10));
    },
  };
}

/** A self-healing mat or painted top: even, with a little wear. */
export function matte(color: string, seed = 9, roughness = 0.78): Surface {
  return {
    color: hex(color),
    roughness,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const wear = layered(u * 0.3, v * 0.3, 4, seed);
      tint(spot, 1 + wear * 0.09 + noise(u * 40, v * 40, seed + 3) * 0.05 * kept(inches, 24));
    },
  };
}

/** A cutting mat with its one-inch squares. */
export function cuttingMat(seed = 21): Surface {
  const line = hex("#9fc7b0");
  return {
    color: hex("#24594a"),
    roughness: 0.74,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const reach = 0.018 + inches * 0.5;
      const near = (x: number) => Math.abs(x - Math.round(x));
      const on = Math.max(1 - smoothstep(0, reach, near(u)), 1 - smoothstep(0, reach, near(v)));
      blend(spot, line, on * 0.5 * Math.min(1, 0.03 / (inches + 0.001)));
      tint(spot, 1 + layered(u * 0.4, v * 0.4, 3, seed) * 0.1);
    },
  };
}

export function concrete(seed = 5): Surface {
  return {
    color: hex("#9b9791"),
    roughness: 0.72,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const cloud = layered(u * 0.022, v * 0.022, 5, seed);
      tint(spot, 1 + cloud * 0.3 + noise(u * 2.5, v * 2.5, seed + 3) * 0.06 * kept(inches, 2));
      const stain = layered(u * 0.012 + 9, v * 0.012, 4, seed + 13);
      tint(spot, 1 - smoothstep(0.2, 0.5, stain) * 0.28);
      spot.roughness -= smoothstep(0.1, 0.4, cloud) * 0.25;
      const joint =
        Math.min(Math.abs(u / 96 - Math.round(u / 96)), Math.abs(v / 96 - Math.round(v / 96))) * 96;
      tint(spot, 1 - 0.5 * (1 - smoothstep(0.12, 0.4 + inches, joint)));
    },
  };
}

/** A plain coat of paint. */
export function paint(color: string, roughness = 0.5): Surface {
  return { color: hex(color), roughness, metal: false };
}

export function rubber(color = "#1d1e20"): Surface {
  return { color: hex(color), roughness: 0.7, metal: false };
}

/** Cloth: soft and fuzzy, with folds too fine to model. */
export function cloth(color: string, seed = 7): Surface {
  return {
    color: hex(color),
    roughness: 0.95,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const fold = layered(u * 0.35, v * 0.18, 3, seed);
      spot.tiltU += fold * 0.22;
      spot.tiltV += noise(u * 0.2, v * 0.4, seed + 2) * 0.12;
      tint(spot, 1 + fold * 0.1 + noise(u * 14, v * 14, seed + 4) * 0.05 * kept(inches, 8));
    },
  };
}

export function paper(color = "#efe9da", seed = 8): Surface {
  return {
    color: hex(color),
    roughness: 0.9,
    metal: false,
    thin: 0.15,
    pattern: (u, v, spot) => {
      tint(spot, 1 + layered(u * 0.3, v * 0.3, 3, seed) * 0.03);
    },
  };
}

/** Brown wrapping paper, creased. */
export function kraft(seed = 12): Surface {
  return {
    color: hex("#b98f5e"),
    roughness: 0.88,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const crease = layered(u * 0.22, v * 0.22, 4, seed);
      spot.tiltU += crease * 0.2;
      spot.tiltV += layered(u * 0.22 + 40, v * 0.22, 4, seed + 5) * 0.2;
      tint(spot, 1 + crease * 0.07 + noise(u * 30, v * 4, seed + 8) * 0.05 * kept(inches, 15));
    },
  };
}

/** Cream masking tape, finely crinkled across. */
export function maskingTape(seed = 14, color = "#e2cf9c"): Surface {
  return {
    color: hex(color),
    roughness: 0.74,
    metal: false,
    pattern: (u, v, spot, inches) => {
      const crinkle = noise(u * 22, v * 3, seed) * kept(inches, 12);
      spot.tiltU += crinkle * 0.12;
      tint(spot, 1 + crinkle * 0.05 + layered(u * 0.5, v * 0.5, 2, seed + 2) * 0.04);
    },
  };
}

/** Tank sealant: dark, tacky while wet, duller when cured. */
export function sealant(wet: boolean): Surface {
  return {
    color: hex(wet ? "#3d3f42" : "#55585a"),
    roughness: wet ? 0.16 : 0.5,
    metal: false,
    pattern: (u, v, spot) => {
      spot.tiltU += layered(u * 2.2, v * 2.2, 2, 3) * (wet ? 0.05 : 0.06);
      spot.tiltV += layered(u * 2.2 + 9, v * 2.2, 2, 4) * (wet ? 0.05 : 0.06);
    },
  };
}

/** A scribed line from one place on the surface to another, inches. */
export type Scribed = readonly [u0: number, v0: number, u1: number, v1: number];

/** Bare metal brushed with blue layout dye over a patch, with bright lines scribed through it. */
export function dyed(
  metal: Surface,
  patch: {
    readonly u: number;
    readonly v: number;
    readonly width: number;
    readonly height: number;
  },
  lines: readonly Scribed[],
  { seed = 1, wet = false, line = 0.006 }: { seed?: number; wet?: boolean; line?: number } = {},
): Surface {
  const dye = hex("#1c3896");
  return {
    ...metal,
    metal: false,
    color: hex("#a9adb2"),
    roughness: 0.36,
    pattern: (u, v, spot, inches) => {
      metal.pattern?.(u, v, spot, inches);
      const ragged = layered(u * 1.1, v * 4.5, 3, seed) * 0.22;
      const brush = noise(u * 0.7, v * 14, seed + 4);
      const x = Math.abs(u - patch.u) - patch.width / 2 + ragged;
      const y = Math.abs(v - patch.v) - patch.height / 2 + noise(u * 2, v, seed + 8) * 0.07;
      const cover = (1 - smoothstep(-0.08, 0.08, x)) * (1 - smoothstep(-0.04, 0.05, y));
      if (cover <= 0) return;
      blend(
        spot,
        dye,
        cover * Math.min(1, 0.84 + brush * 0.16 + layered(u, v, 2, seed + 5) * 0.12),
      );
      spot.roughness = (wet ? 0.1 : 0.4) + brush * 0.05;
      spot.tiltV += brush * (wet ? 0.05 : 0.02);
      for (const [u0, v0, u1, v1] of lines) {
        const du = u1 - u0;
        const dv = v1 - v0;
        const t = Math.min(1, Math.max(0, ((u - u0) * du + (v - v0) * dv) / (du * du + dv * dv)));
        const off = Math.hypot(u - u0 - du * t, v - v0 - dv * t);
        const reach = line + inches * 0.6;
        if (off > reach * 2) continue;
        const on =
          (1 - smoothstep(reach * 0.4, reach * 1.3, off)) * Math.min(1, (line * 2.4) / reach);
        blend(spot, [0.9, 0.9, 0.93], on);
        spot.roughness += (0.25 - spot.roughness) * on;
      }
    },
  };
}

/** A picture as a surface: `image` covers u and v from 0 to 1. */
export interface Image {
  readonly width: number;
  readonly height: number;
  /** Linear red, green, blue. */
  readonly data: Float32Array;
}

/** Lays a picture over a face so many inches wide; what is finer than the pixels is averaged away. */
export function printed(
  image: Image,
  faceWidth: number,
  roughness = 0.85,
  more: Partial<Surface> = {},
): Surface {
  const levels: Image[] = [image];
  for (let last = image; last.width > 8 && last.height > 8; ) {
    last = halved(last);
    levels.push(last);
  }
  return {
    color: [1, 1, 1],
    roughness,
    metal: false,
    ...more,
    pattern: (u, v, spot, inches) => {
      const texels = (inches / faceWidth) * image.width;
      const level = Math.min(
        levels.length - 1,
        Math.max(0, Math.round(Math.log2(Math.max(1, texels)))),
      );
      const from = levels[level] ?? image;
      const x = Math.min(from.width - 1.001, Math.max(0, u * from.width - 0.5));
      const y = Math.min(from.height - 1.001, Math.max(0, v * from.height - 0.5));
      const ix = Math.floor(x);
      const iy = Math.floor(y);
      const fx = x - ix;
      const fy = y - iy;
      const at = (iy * from.width + ix) * 3;
      const down = at + (iy + 1 < from.height ? from.width * 3 : 0);
      const d = from.data;
      const value = (c: number) => {
        const top = (d[at + c] as number) * (1 - fx) + (d[at + 3 + c] as number) * fx;
        const low = (d[down + c] as number) * (1 - fx) + (d[down + 3 + c] as number) * fx;
        return top * (1 - fy) + low * fy;
      };
      spot.r *= value(0);
      spot.g *= value(1);
      spot.b *= value(2);
    },
  };
}

function halved(image: Image): Image {
  const width = image.width >> 1;
  const height = image.height >> 1;
  const data = new Float32Array(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      for (let c = 0; c < 3; c++) {
        const at = (y * 2 * image.width + x * 2) * 3 + c;
        data[(y * width + x) * 3 + c] =
          ((image.data[at] as number) +
            (image.data[at + 3] as number) +
            (image.data[at + image.width * 3] as number) +
            (image.data[at + image.width * 3 + 3] as number)) /
          4;
      }
    }
  }
  return { width, height, data };
}
